// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;

/** Solves the cases of a plan one after the other, so that progress is seen. */
final class Cases {
    private Cases() {
    }

    static List<SolvedCase> solved(Plan plan, Monitor monitor) {
        List<SolvedCase> solved = new ArrayList<>();
        for (Plan.Case state : plan.cases()) {
            solved.add(CaseSolver.solve(plan, state, monitor));
            monitor.worked(1);
        }
        return solved;
    }
}
