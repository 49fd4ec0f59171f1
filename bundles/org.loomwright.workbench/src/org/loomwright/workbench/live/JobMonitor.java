// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.util.BasicMonitor;

/** The engine's monitor over a job's: progress and cancel. May be asked by several threads. */
public final class JobMonitor extends BasicMonitor {
    private final IProgressMonitor job;

    /** Over the monitor of a job. */
    public JobMonitor(IProgressMonitor job) {
        this.job = job;
    }

    @Override
    public boolean isCanceled() {
        return job.isCanceled();
    }

    @Override
    public synchronized void worked(int work) {
        job.worked(work);
    }
}
