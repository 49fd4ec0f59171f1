// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;

/** Applies one proposal in the editor of the vehicle, where it can be undone. */
final class MendResolution implements IMarkerResolution2 {
    private final String mend;

    MendResolution(String mend) {
        this.mend = mend;
    }

    @Override
    public String getLabel() {
        return mend;
    }

    @Override
    public String getDescription() {
        return mend;
    }

    @Override
    public Image getImage() {
        return null;
    }

    @Override
    public void run(IMarker marker) {
        FindingKey finding = FindingKey.of(marker);
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        try {
            IEditorPart editor = IDE.openEditor(page, (IFile) marker.getResource());
            FindingTarget target = Adapters.adapt(editor, FindingTarget.class);
            if (target == null || !target.mend(finding, mend)) {
                MessageDialog.openInformation(page.getWorkbenchWindow().getShell(), Messages.Mend_title, Messages.Mend_gone);
            }
        } catch (PartInitException problem) {
            ILog.of(MendResolution.class).log(problem.getStatus());
        }
    }
}
