// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.HashSet;
import java.util.Set;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.Plan;

/** Whether closed paths join a charging source with a battery. */
final class KeptBattery {
    private KeptBattery() {
    }

    /** True when a battery, or batteries in series, lie between the plus and the minus of a source. */
    static boolean of(Plan plan, CaseNetwork at, LivePaths live, Plan.Regulated source) {
        int[] node = at.terminalNode();
        Set<Integer> passed = new HashSet<>();
        Set<Integer> reached = new HashSet<>(Set.of(node[source.a()]));
        boolean more = true;
        while (more) {
            more = false;
            for (int e = 0; e < plan.elements().size(); e++) {
                if (plan.elements().get(e) instanceof Plan.Cell cell && !passed.contains(e)
                        && reached.stream().anyMatch(from -> live.joined(from, node[cell.a()]))) {
                    passed.add(e);
                    reached.add(node[cell.b()]);
                    more = true;
                }
            }
        }
        reached.remove(node[source.a()]);
        return reached.stream().anyMatch(end -> live.joined(end, node[source.b()]));
    }

    /** True when closed paths join a node with the minus of a battery. */
    static boolean isMinus(Plan plan, CaseNetwork at, LivePaths live, int node) {
        return plan.elements().stream().anyMatch(element -> element instanceof Plan.Cell cell
                && live.joined(node, at.terminalNode()[cell.b()]));
    }
}
