// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import org.loomwright.engine.assembly.Plan;

/** Where the returns of loads lead: to the minus of a source by conductors alone, or into the structure. */
final class ReturnWays {
    private final Plan plan;
    private final Wiring wiring;
    private final Set<Integer> sourceMinus = new HashSet<>();
    private final Map<Integer, List<Integer>> pointsOf = new HashMap<>();

    ReturnWays(Plan plan) {
        this.plan = plan;
        wiring = Wiring.of(plan);
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Cell cell) {
                sourceMinus.add(cell.b());
            } else if (element instanceof Plan.Converter converter && converter.isolated()) {
                sourceMinus.add(converter.outB());
            } else if (element instanceof Plan.Regulated source
                    && !"case".equals(plan.terminals().get(source.b()).role())) {
                sourceMinus.add(source.b());
            }
        }
    }

    /** Terminal at which a load, coil or converter gives its current back, -1 for other elements. */
    static int returnTerminal(Plan.Element element) {
        return element instanceof Plan.Demand demand ? demand.b()
                : element instanceof Plan.Coil coil ? coil.b()
                : element instanceof Plan.Converter converter ? converter.inB() : -1;
    }

    /**
     * Earth points, and cases bolted to a body, through which a return leads into the structure; empty when conductors alone
     * lead to the minus of a source, then the current takes those, and when the return leads nowhere.
     */
    List<Integer> earthPoints(int returnTerminal) {
        List<Integer> known = pointsOf.get(returnTerminal);
        if (known != null) {
            return known;
        }
        // all that conductors join shares the answer, so a net is walked once however many loads return by it
        SortedSet<Integer> reached = wiring.reach(returnTerminal, step -> step.via() != Wiring.Via.STRUCTURE);
        List<Integer> points = reached.stream().anyMatch(sourceMinus::contains) ? List.of()
                : reached.stream().filter(node -> bodyAt(node) >= 0).toList();
        reached.forEach(node -> pointsOf.put(node, points));
        return points;
    }

    /** Body that an earth point or the case of a device touches, -1 for other terminals. */
    int bodyAt(int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        return at.device() < 0 ? at.body() : "case".equals(at.role()) ? plan.devices().get(at.device()).body() : -1;
    }
}
