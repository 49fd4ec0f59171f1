// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.PlanGraph.Edge;
import org.loomwright.engine.protection.Feed;

/** Conductors that only sources feed which by themselves limit their current to what the conductor bears (IEC 60364-4-43). */
final class SelfLimited {
    private SelfLimited() {
    }

    /**
     * Whether all that can feed a conductor from one of its ends gives no more than it bears.
     *
     * @param bearsA rating of the conductor, A
     */
    static boolean feed(CheckContext context, int conductor, Feed feed, double bearsA) {
        Plan plan = context.plan();
        Set<Integer> reached = reached(context.circuits().graph(), feed.nearTerminal(), conductor);
        double sumA = 0;
        for (int e = 0; e < plan.elements().size(); e++) {
            int plus = PlanGraph.sourceTerminal(plan.elements().get(e));
            if (plus >= 0 && reached.contains(plus)) {
                double limitA = FirstDeviceDistanceRule.limitA(plan.elements().get(e));
                sumA += Double.isNaN(limitA) ? Double.POSITIVE_INFINITY : limitA;
            }
        }
        return !Beyond.above(sumA, bearsA);
    }

    private static Set<Integer> reached(PlanGraph graph, int from, int conductor) {
        Set<Integer> seen = new HashSet<>(List.of(from));
        Deque<Integer> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            for (Edge edge : graph.at(open.remove())) {
                if (!(edge.conductor() && edge.index() == conductor) && seen.add(edge.to())) {
                    open.add(edge.to());
                }
            }
        }
        return seen;
    }
}
