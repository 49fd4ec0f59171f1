// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.diagram.services.StudyView;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult;

/** Solves and checks one snapshot. */
final class Analyst {
    /** Rule under which the analysis tells that it failed itself. */
    static final String FAILED = "analysis-failed";

    private Analyst() {
    }

    /** @throws java.util.concurrent.CancellationException when the monitor is cancelled */
    static Analysis analyse(long revision, Snapshot snapshot, Monitor monitor) {
        long start = System.nanoTime();
        Plan plan = snapshot.assembled().plan();
        List<SolvedCase> solved = CaseSolver.solveAll(plan, monitor);
        CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), snapshot.assembled().problems(),
                new SharedStudies(monitor));
        StudyResult result = Check.over(context, CheckOptions.all(), monitor);
        List<Finding> findings = new ArrayList<>(snapshot.structural());
        findings.addAll(result.findings());
        return new Analysis(revision, findings, context, result, StudyView.of(context, findings), since(start));
    }

    /** What is told when the analysis itself went wrong. */
    static Analysis failed(long revision, RuntimeException fault) {
        String what = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        Finding told = Finding.of(FAILED, Severity.ERROR, "/", "the vehicle could not be analysed: " + what)
                .because("figures and findings are missing until this is mended; editing and saving go on as usual").build();
        return new Analysis(revision, List.of(told), null, null, null, 0);
    }

    private static long since(long startNs) {
        return (System.nanoTime() - startNs) / 1_000_000;
    }
}
