// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.loomwright.engine.sizing.SizingOptions;

/** Starts the study {@link StudyKind#SIZING} after asking what is to be least. */
public final class SizingHandler extends StudyHandler {
    /** The handler. */
    public SizingHandler() {
        super(StudyKind.SIZING);
    }

    @Override
    Study study(StudySource source, Shell shell) {
        SizingDialog dialog = SizingDialog.sizing(shell);
        return dialog.open() != Window.OK ? null : new SizingRun(source.file(), source.arrangement(), source.snapshot(),
                new SizingOptions(dialog.objective(), dialog.openPersonChoices(), source.stock(), true), source.state());
    }
}
