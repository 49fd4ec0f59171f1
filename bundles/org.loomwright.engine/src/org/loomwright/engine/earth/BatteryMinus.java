// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayDeque;
import java.util.Deque;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.NetworkIndex;

/** Finds the terminal against which potentials of the structure are given. */
final class BatteryMinus {
    private BatteryMinus() {
    }

    /**
     * Minus terminal of the first battery from which conductors lead to an earth point or a case; else of the first battery;
     * else the first terminal.
     */
    static int terminal(Plan plan, SolvedCase.Solved any) {
        NetworkIndex index = NetworkIndex.of(plan, any.at());
        boolean[] earth = new boolean[index.network().nodes()];
        for (int t = 0; t < plan.terminals().size(); t++) {
            if (any.at().earthItem()[t] >= 0 || any.at().caseItem()[t] >= 0) {
                earth[any.at().terminalNode()[t]] = true;
            }
        }
        int first = -1;
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Cell cell) {
                first = first < 0 ? cell.b() : first;
                if (reaches(index, any.at().terminalNode()[cell.b()], earth)) {
                    return cell.b();
                }
            }
        }
        return StrictMath.max(0, first);
    }

    private static boolean reaches(NetworkIndex index, int from, boolean[] earth) {
        boolean[] seen = new boolean[earth.length];
        Deque<Integer> open = new ArrayDeque<>();
        seen[from] = true;
        open.add(from);
        while (!open.isEmpty()) {
            int node = open.remove();
            if (earth[node]) {
                return true;
            }
            for (int item : index.itemsAt(node)) {
                int[] ends = index.passes(item) ? EarthNetwork.ends(index.network().items().get(item)) : null;
                int other = ends == null ? node : ends[0] == node ? ends[1] : ends[0];
                if (!seen[other]) {
                    seen[other] = true;
                    open.add(other);
                }
            }
        }
        return false;
    }
}
