// SPDX-License-Identifier: EPL-2.0
package org.eclipse.help.ui.internal.views;

import org.eclipse.jface.dialogs.DialogTray;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * Stands in for the tray of the help system, which this product does not carry. The cheat sheets name it in their byte code and
 * use it only for a sheet inside a modal dialog; the workbench opens sheets in their view.
 */
public class HelpTray extends DialogTray {
    @Override
    protected Control createContents(Composite parent) {
        return new Composite(parent, SWT.NONE);
    }

    /** The part with the pages: there is none. */
    public ReusableHelpPart getHelpPart() {
        return null;
    }
}
