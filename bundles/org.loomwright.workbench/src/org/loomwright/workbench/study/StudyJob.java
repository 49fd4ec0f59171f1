// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.concurrent.CancellationException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.loomwright.workbench.live.JobMonitor;

/** Makes one study in the background, with progress; can be cancelled. */
public final class StudyJob extends Job {
    /** What all of them belong to. */
    public static final Object FAMILY = StudyJob.class;
    private final Study study;

    /** A study of a file. */
    StudyJob(Study study, IFile file) {
        super(NLS.bind(Messages.Study_job, study.kind().shown(), file.getName()));
        this.study = study;
        setUser(true);
    }

    @Override
    public boolean belongsTo(Object family) {
        return family == FAMILY;
    }

    @Override
    protected IStatus run(IProgressMonitor progress) {
        try {
            StudyOutcome outcome = study.run(new JobMonitor(SubMonitor.convert(progress, getName(), study.work())));
            if (progress.isCanceled()) {
                return Status.CANCEL_STATUS;
            }
            StudyResults.current().publish(outcome);
            return Status.OK_STATUS;
        } catch (OperationCanceledException | CancellationException stopped) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException fault) {
            return Status.error(NLS.bind(Messages.Study_failed, getName()), fault);
        }
    }
}
