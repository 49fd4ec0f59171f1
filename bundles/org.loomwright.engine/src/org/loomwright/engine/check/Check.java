// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.LoadVerdict;
import org.loomwright.engine.result.StudyResult;

/** The check: runs the rules over a plan in all its operating states. */
public final class Check {
    /** Name of the study. */
    public static final String STUDY = "check";

    private Check() {
    }

    /**
     * Solves the cases of a plan and checks them.
     *
     * @param plan     the plan
     * @param problems what could not be assembled; empty for none
     * @param options  cases wanted; the others are neither solved nor judged
     * @param monitor  progress and cancel
     * @return findings, verdicts on the loads, and an explainer of figures
     * @throws java.util.concurrent.CancellationException when the monitor is cancelled
     * @throws org.loomwright.engine.assembly.Practice.MissingLimitException when the practice lacks a limit
     */
    public static StudyResult run(Plan plan, List<AssemblyProblem> problems, CheckOptions options, Monitor monitor) {
        List<Plan.Case> wanted = plan.cases().stream().filter(state -> options.wants(state.name())).toList();
        List<SolvedCase> solved = CaseSolver.solveAll(plan, wanted, monitor);
        return over(new CheckContext(plan, solved, NetFinder.find(plan), problems, new SharedStudies(monitor)), options,
                monitor);
    }

    /**
     * Checks cases that are solved already.
     *
     * @param context what to look at
     * @param options cases wanted; the others are left out
     * @param monitor progress and cancel
     * @return findings, verdicts on the loads, and an explainer of figures
     */
    public static StudyResult over(CheckContext context, CheckOptions options, Monitor monitor) {
        List<SolvedCase> wanted = context.cases().stream().filter(solved -> options.wants(solved.state().name())).toList();
        CheckContext looked = context.withCases(wanted);
        ForkJoinTask<List<LoadVerdict>> verdicts = ForkJoinPool.commonPool().submit(() -> new Verdicts(looked).all());
        List<Finding> findings;
        try {
            findings = new RuleRun(RuleCatalogue.standard()).findings(looked, monitor);
        } catch (RuntimeException problem) {
            verdicts.cancel(true);
            throw problem;
        }
        return new StudyResult(STUDY, context.plan().vehicle(), context.plan().arrangement(), findings, verdicts.join(),
                new Explain(looked));
    }
}
