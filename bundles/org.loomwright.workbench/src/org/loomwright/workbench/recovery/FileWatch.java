// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;

/**
 * Notices when another program changes a file that is open here: when the workspace hears of it, and whenever a window comes to
 * the front. Belongs to the thread of the display.
 */
final class FileWatch {
    private final Path file;
    private final IFile resource;
    private final Display display;
    private final Runnable changed;
    private final IResourceChangeListener workspace = this::heard;
    private final Listener front = event -> look();
    private FileState known;
    private boolean closed;

    /**
     * A watch over a file as it is now.
     *
     * @param resource the same file in the workspace; null when it is outside
     * @param changed  what to do when the file is not as it is known
     */
    FileWatch(Path file, IFile resource, Display display, Runnable changed) {
        this.file = file;
        this.resource = resource;
        this.display = display;
        this.changed = changed;
        known = now();
        ResourcesPlugin.getWorkspace().addResourceChangeListener(workspace, IResourceChangeEvent.POST_CHANGE);
        display.addFilter(SWT.Activate, front);
    }

    /** The file. */
    Path file() {
        return file;
    }

    /** The file as it was when it was last read, written, or decided on here. */
    FileState known() {
        return known;
    }

    /** The file as it is. One that cannot be read at the moment counts as unchanged. */
    FileState now() {
        try {
            return FileState.of(file);
        } catch (IOException unreadable) {
            ILog.of(FileWatch.class).warn(file + " could not be looked at", unreadable);
            return known == null ? FileState.NONE : known;
        }
    }

    /** The file as it is now is known from here on. */
    void know() {
        known = now();
    }

    /** Looks at the disk; tells when the file is not as it is known. */
    void look() {
        if (!closed && !now().equals(known)) {
            refresh();
            changed.run();
        }
    }

    /** Ends the watch. */
    void close() {
        closed = true;
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(workspace);
        if (!display.isDisposed()) {
            display.removeFilter(SWT.Activate, front);
        }
    }

    private void heard(IResourceChangeEvent event) {
        if (resource != null && event.getDelta() != null && event.getDelta().findMember(resource.getFullPath()) != null
                && !display.isDisposed()) {
            display.asyncExec(this::look);
        }
    }

    /** Lets the workspace know too, so that the check on save and the tree follow. */
    private void refresh() {
        if (resource == null || resource.isSynchronized(IResource.DEPTH_ZERO)) {
            return;
        }
        Job job = new Job("Refresh") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    resource.refreshLocal(IResource.DEPTH_ZERO, monitor);
                    return Status.OK_STATUS;
                } catch (CoreException problem) {
                    return problem.getStatus();
                }
            }
        };
        job.setSystem(true);
        job.schedule();
    }
}
