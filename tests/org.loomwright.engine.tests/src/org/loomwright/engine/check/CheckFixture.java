// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;

/** Solves plans made by hand and runs rules over them. */
final class CheckFixture {
    private CheckFixture() {
    }

    /** The plan with its cases solved. */
    static CheckContext context(PlanFixture fixture) {
        return context(fixture.build());
    }

    /** The plan with its cases solved. */
    static CheckContext context(Plan plan) {
        return new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
    }

    /** What one rule finds, one finding for each thing. */
    static List<Finding> findings(Rule rule, PlanFixture fixture) {
        return FindingMerge.acrossCases(rule.check(context(fixture)));
    }
}
