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
 * @param plan   the plan
 * @param cases  its cases, solved, in the plan's order
 * @param nets   what is connected to what, whatever the case
 */
public record CheckContext(Plan plan, List<SolvedCase> cases, Nets nets) {
    public CheckContext {
        cases = List.copyOf(cases);
    }

    /** Limits and choices in force. */
    public Practice practice() {
        return plan.practice();
    }
}
