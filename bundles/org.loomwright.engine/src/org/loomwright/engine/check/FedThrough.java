// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Quantity;

/** Loads, coils and converters that get their supply through one element alone; none where sources lie on both of its sides. */
final class FedThrough {
    private static final int NAMED = 3;

    private final CheckContext context;
    private final List<Integer> consumers;

    private FedThrough(CheckContext context, List<Integer> consumers) {
        this.context = context;
        this.consumers = List.copyOf(consumers);
    }

    /** What is fed through an element that passes current on. */
    static FedThrough of(CheckContext context, Wiring wiring, int element) {
        int[] ends = Wiring.ends(context.plan().elements().get(element));
        for (int i = 0; i < 2; i++) {
            SortedSet<Integer> side = wiring.reach(ends[1 - i], step -> step.via() != Wiring.Via.STRUCTURE
                    && !step.through(element));
            boolean source = side.stream().anyMatch(node -> wiring.isTerminal(node) && context.circuits().graph().isSource(node));
            if (!source && !side.contains(ends[i])) {
                List<Integer> found = new ArrayList<>();
                side.stream().filter(wiring::isTerminal)
                        .forEach(node -> found.addAll(context.circuits().graph().consumersAt(node)));
                return new FedThrough(context, found);
            }
        }
        return new FedThrough(context, List.of());
    }

    /** Current on closing, A: loads that run in the case with their inrush, where a part states one, all at once. */
    double inrushA(SolvedCase solved) {
        return consumers.stream().mapToDouble(e -> inrushA(solved, e)).sum();
    }

    /** The consumers with the largest currents on closing. */
    List<Cause> causes(SolvedCase solved) {
        List<Cause> causes = new ArrayList<>();
        consumers.stream().filter(e -> inrushA(solved, e) > 0)
                .sorted((a, b) -> Double.compare(inrushA(solved, b), inrushA(solved, a))).limit(NAMED)
                .forEach(e -> causes.add(new Cause(context.names().element(e), "current on switching on",
                        Quantity.of(inrushA(solved, e), "A"))));
        return causes;
    }

    /** How the current on closing comes about. */
    Derivation derivation(SolvedCase solved, Quantity amps) {
        List<Derivation.Input> inputs = new ArrayList<>();
        consumers.stream().filter(e -> inrushA(solved, e) > 0).forEach(e -> inputs.add(
                new Derivation.Input(context.names().shown(context.names().element(e)), Quantity.of(inrushA(solved, e), "A"),
                        context.plan().elements().get(e).id())));
        return new Derivation("current on closing", amps, "sum of inrush currents, running currents where no inrush is stated",
                inputs, "common practice: all loads behind the contact start together");
    }

    private double inrushA(SolvedCase solved, int element) {
        double running = StrictMath.abs(solved.running().elementA(element));
        return running > 0 && context.plan().elements().get(element) instanceof Plan.Demand load && load.inrushA() > running
                ? load.inrushA() : running;
    }
}
