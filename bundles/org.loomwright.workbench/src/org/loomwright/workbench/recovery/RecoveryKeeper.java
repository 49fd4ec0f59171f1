// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.live.OwnerThread;

/**
 * Keeps a copy of an open vehicle's work while it is not saved: a few seconds after a change, then every few seconds while
 * changes go on. What is to be written is made in the document's thread, written in the background. Once there is nothing to
 * save any more, or the vehicle is closed, the copy is gone.
 */
final class RecoveryKeeper {
    /** From a change to its copy, ms. */
    static final int INTERVAL_MS = 3000;

    private final VehicleDocument document;
    private final OwnerThread owner;
    private final RecoveryFolder folder;
    private final FileWatch watch;
    private final Path place;
    private final VehicleDocument.Listener listener = this::changed;
    private final List<Path> superseded = new ArrayList<>();
    private final Job job = new Job("Recovery copy") {
        @Override
        protected IStatus run(IProgressMonitor monitor) {
            write();
            return Status.OK_STATUS;
        }
    };
    private boolean due;
    /** What is to be written next; guarded by this. */
    private RecoveryCopy next;
    /** There is nothing to save any more; guarded by this. */
    private boolean drop;
    /** Guarded by this. */
    private boolean closed;

    RecoveryKeeper(VehicleDocument document, OwnerThread owner, RecoveryFolder folder, FileWatch watch) {
        this.document = document;
        this.owner = owner;
        this.folder = folder;
        this.watch = watch;
        place = folder.place(watch.file());
        job.setSystem(true);
        job.setPriority(Job.DECORATE);
        document.listen(listener);
    }

    /** Where this copy is kept. */
    Path place() {
        return place;
    }

    /** The work of an older copy is in the document now: that one goes as soon as there is a copy of this. */
    void supersede(Path older) {
        synchronized (this) {
            superseded.add(older);
        }
        copy();
    }

    /** The vehicle is closed: saved, or its changes are given up. */
    void close() {
        document.unlisten(listener);
        synchronized (this) {
            closed = true;
            next = null;
        }
        folder.delete(place);
    }

    private void changed(VehicleDocument.Change change) {
        if (change != VehicleDocument.Change.MODEL && change != VehicleDocument.Change.DIRTY) {
            return;
        }
        if (!document.dirty()) {
            synchronized (this) {
                next = null;
                drop = true;
            }
            job.schedule();
        } else if (!due) {
            due = true;
            owner.later(INTERVAL_MS, () -> {
                due = false;
                copy();
            });
        }
    }

    private void copy() {
        synchronized (this) {
            if (closed || !document.dirty()) {
                return;
            }
        }
        try {
            RecoveryCopy made = new RecoveryCopy(watch.file(), document.unsavedChanges(), document.lastChange(),
                    document.lastChanged(), watch.known(), document.content());
            synchronized (this) {
                next = made;
                drop = false;
            }
            job.schedule();
        } catch (IOException impossible) {
            ILog.of(RecoveryKeeper.class).warn("no recovery copy of " + watch.file() + " could be made", impossible);
        }
    }

    private void write() {
        RecoveryCopy taken;
        List<Path> older;
        boolean gone;
        synchronized (this) {
            taken = next;
            next = null;
            gone = drop;
            drop = false;
            older = List.copyOf(superseded);
        }
        if (gone) {
            folder.delete(place);
        } else if (taken != null) {
            try {
                folder.write(place, taken);
                older.forEach(folder::delete);
                synchronized (this) {
                    superseded.removeAll(older);
                }
            } catch (IOException problem) {
                ILog.of(RecoveryKeeper.class).error("the recovery copy of " + watch.file() + " could not be written", problem);
            }
        }
        synchronized (this) {
            if (!closed) {
                return;
            }
        }
        // closed while it was written
        folder.delete(place);
    }
}
