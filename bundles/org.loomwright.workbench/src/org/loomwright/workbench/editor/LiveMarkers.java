// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.widgets.Display;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.workbench.markers.FindingMarkers;

/**
 * Keeps the markers of a file in step with an editor that has unsaved changes. What the file itself has to say comes back when
 * the editor is closed without saving.
 */
final class LiveMarkers {
    private static final int QUIET_MS = 300;
    private final VehicleDocument document;
    private final IFile file;
    private final Display display;
    private final VehicleDocument.Listener listener = this::changed;
    private boolean ahead;
    private int due;

    LiveMarkers(VehicleDocument document, IFile file, Display display) {
        this.document = document;
        this.file = file;
        this.display = display;
        document.listen(listener);
    }

    private void changed(VehicleDocument.Change change) {
        if (change == VehicleDocument.Change.ANALYSIS && (document.dirty() || ahead)) {
            int mine = ++due;
            display.timerExec(QUIET_MS, () -> {
                if (mine == due && document.fresh() && document.analysis().worked()) {
                    write();
                }
            });
        }
    }

    private void write() {
        ahead = document.dirty();
        String arrangement = document.analysis().context().plan().arrangement();
        List<Finding> findings = document.findings();
        schedule(monitor -> FindingMarkers.sync(file, arrangement, findings, new Designations(arrangement)));
    }

    /** Lets go; markers of changes that were given up are made anew from the file. */
    void close() {
        due++;
        document.unlisten(listener);
        if (ahead && file.exists()) {
            schedule(file::touch);
        }
    }

    private interface Change {
        void run(IProgressMonitor monitor) throws CoreException;
    }

    private void schedule(Change change) {
        WorkspaceJob job = new WorkspaceJob("Findings of " + file.getName()) {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                if (file.exists()) {
                    change.run(monitor);
                }
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setRule(file.getWorkspace().getRuleFactory().modifyRule(file));
        job.schedule();
    }
}
