// SPDX-License-Identifier: EPL-2.0
package org.eclipse.help.ui.internal.views;

import org.eclipse.ui.forms.IFormPart;

/** Stands in for a part of the help system; see {@link HelpTray}. */
public interface IHelpPart extends IFormPart {
}
