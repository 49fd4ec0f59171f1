// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Analyses a model again after each change, in the background. A change cancels what is running; a result that belongs to an
 * older state of the model is dropped. All methods are called in the thread that owns the model, and results are given there.
 */
public final class LiveLoop {
    /** Quiet after a change before the analysis begins, ms: one edit often brings several notifications. */
    public static final int QUIET_MS = 40;

    private final OwnerThread owner;
    private final Supplier<Snapshot> snapshots;
    private final Consumer<Analysis> listener;
    private long revision;
    private Job running;
    private boolean stopped;

    /**
     * A loop.
     *
     * @param snapshots makes a snapshot, in the owner's thread
     * @param listener  takes results, in the owner's thread
     */
    public LiveLoop(OwnerThread owner, Supplier<Snapshot> snapshots, Consumer<Analysis> listener) {
        this.owner = owner;
        this.snapshots = snapshots;
        this.listener = listener;
    }

    /** The state of the model, counted by its changes. */
    public long revision() {
        return revision;
    }

    /** True while an analysis is due or running. */
    public boolean busy() {
        return running != null;
    }

    /** Tells that the model changed, or that another part of it is looked at. */
    public void changed() {
        cancel();
        long changed = ++revision;
        owner.later(QUIET_MS, () -> {
            if (changed == revision && !stopped) {
                start(changed);
            }
        });
    }

    /** Ends the loop; nothing is told afterwards. */
    public void stop() {
        stopped = true;
        revision++;
        cancel();
    }

    private void cancel() {
        if (running != null) {
            running.cancel();
            running = null;
        }
    }

    private void start(long at) {
        Snapshot snapshot;
        try {
            snapshot = snapshots.get();
        } catch (RuntimeException fault) {
            listener.accept(Analyst.failed(at, fault));
            return;
        }
        running = new Job("Analysis") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                return analyse(at, snapshot, monitor);
            }
        };
        running.setSystem(true);
        running.setPriority(Job.SHORT);
        running.schedule();
    }

    private IStatus analyse(long at, Snapshot snapshot, IProgressMonitor monitor) {
        Analysis analysis;
        try {
            analysis = Analyst.analyse(at, snapshot, new JobMonitor(monitor));
        } catch (CancellationException cancelled) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException fault) {
            analysis = Analyst.failed(at, fault);
        }
        Analysis made = analysis;
        owner.post(() -> publish(made));
        return Status.OK_STATUS;
    }

    private void publish(Analysis analysis) {
        if (analysis.revision() == revision && !stopped) {
            running = null;
            listener.accept(analysis);
        }
    }
}
