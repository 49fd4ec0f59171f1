// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.nets.Nets;

/**
 * What the rules look at.
 *
 * @param plan     the plan
 * @param cases    its cases, solved, in the plan's order
 * @param nets     what is connected to what, whatever the case
 * @param circuits what the protective devices part from each other
 * @param names    how elements are named in findings
 */
public record CheckContext(Plan plan, List<SolvedCase> cases, Nets nets, Circuits circuits, ElementNames names) {
    public CheckContext {
        cases = List.copyOf(cases);
    }

    /** A context whose circuits and names are derived from the plan. */
    public CheckContext(Plan plan, List<SolvedCase> cases, Nets nets) {
        this(plan, cases, nets, Circuits.of(plan), ElementNames.of(plan));
    }

    /** Limits and choices in force. */
    public Practice practice() {
        return plan.practice();
    }
}
