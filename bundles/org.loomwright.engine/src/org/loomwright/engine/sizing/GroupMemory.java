// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.HashMap;
import java.util.Map;
import org.loomwright.engine.cases.SolvedCase;

/**
 * How many count together with each conductor, in each case the most that any round has seen. Thinner conductors are loaded more
 * and count sooner, so what counts in one round must not be forgotten in the next; that is on the safe side.
 */
final class GroupMemory {
    private final Map<String, int[]> counted = new HashMap<>();

    /** Takes note of a solved case. */
    void see(SolvedCase solved) {
        int[] most = counted.computeIfAbsent(solved.state().id(), id -> new int[solved.ratings().size()]);
        for (int c = 0; c < most.length; c++) {
            most[c] = Math.max(most[c], solved.ratings().get(c).counted());
        }
    }

    /** The most that counted together with a conductor in a case. */
    int counted(SolvedCase solved, int conductor) {
        return counted.get(solved.state().id())[conductor];
    }
}
