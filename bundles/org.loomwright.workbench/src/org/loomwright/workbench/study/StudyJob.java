// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.osgi.util.NLS;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.ProtectionRules;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.earth.EarthStudy;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.nets.NetFinder;

/** Makes one study in the background, with progress; can be cancelled. */
public final class StudyJob extends Job {
    private final StudyKind kind;
    private final IFile file;
    private final String arrangement;
    private final AssemblyResult assembled;

    /** A study of a vehicle as it stood when it was asked for. */
    public StudyJob(StudyKind kind, IFile file, String arrangement, AssemblyResult assembled) {
        super(NLS.bind(Messages.Study_job, kind.shown(), file.getName()));
        this.kind = kind;
        this.file = file;
        this.arrangement = arrangement;
        this.assembled = assembled;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor progress) {
        Plan plan = assembled.plan();
        Monitor monitor = BasicMonitor.toMonitor(SubMonitor.convert(progress, getName(),
                plan.cases().size() + plan.bonds().size() + ProtectionRules.count()));
        try {
            List<SolvedCase> solved = new ArrayList<>();
            for (Plan.Case state : plan.cases()) {
                solved.add(CaseSolver.solve(plan, state, monitor));
                monitor.worked(1);
            }
            StudyOutcome outcome = study(plan, solved, monitor);
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

    private StudyOutcome study(Plan plan, List<SolvedCase> solved, Monitor monitor) {
        if (kind == StudyKind.EARTH) {
            CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), assembled.problems());
            EarthTable table = EarthStudy.of(context, monitor);
            return new StudyOutcome(kind, file, arrangement, plan, table.result(), table);
        }
        CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), assembled.problems(),
                new SharedStudies(monitor));
        return new StudyOutcome(kind, file, arrangement, plan, ProtectionRules.judge(context, monitor), null);
    }
}
