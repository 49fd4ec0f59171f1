// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.List;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.loomwright.workbench.app.Ids;

/** Starts the study {@link StudyKind#COMPARISON} after asking whether the arrangements are sized first; shows its chart too. */
public final class ComparisonHandler extends StudyHandler {
    /** The handler. */
    public ComparisonHandler() {
        super(StudyKind.COMPARISON);
    }

    @Override
    Study study(StudySource source, Shell shell) {
        List<ComparedSide> sides = source.sides();
        if (sides.size() < 2) {
            MessageDialog.openInformation(shell, StudyKind.COMPARISON.shown(), Messages.Comparison_one);
            return null;
        }
        SizingDialog dialog = SizingDialog.comparison(shell);
        if (dialog.open() != Window.OK) {
            return null;
        }
        show(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), Ids.COMPARISON);
        return new ComparisonRun(source.file(), sides, dialog.objective(), source.stock());
    }
}
