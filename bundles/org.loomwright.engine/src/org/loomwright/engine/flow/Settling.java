// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lets the states of a network follow its solutions until they stay, or until a set of states comes again. */
final class Settling {
    private final StateSolver solver;
    private final FlowOptions options;
    private final States start;

    Settling(StateSolver solver, Network network, FlowOptions options) {
        this.solver = solver;
        this.options = options;
        start = States.start(network, options);
    }

    /**
     * How the states ended.
     *
     * @param states   the last set of states
     * @param solution the solution for it
     * @param cycling  items that keep changing; empty when the states stay
     */
    record Settled(States states, Solution solution, List<Integer> cycling) {

        /** An operating point: the states stay and the loads are served. */
        boolean solved() {
            return cycling.isEmpty() && !solution.collapsed();
        }
    }

    /** Runs from the defined start with the loads at a common scale. */
    Settled run(double loadScale) {
        List<States> sequence = new ArrayList<>();
        Map<States, Integer> seen = new HashMap<>();
        States states = start;
        while (true) {
            Solution solution = solver.solve(states, loadScale);
            seen.put(states, sequence.size());
            sequence.add(states);
            States next = states.next(solution);
            if (next.equals(states)) {
                return new Settled(states, solution, List.of());
            }
            Integer before = seen.get(next);
            if (before == null && sequence.size() >= options.stateChanges()) {
                before = sequence.size() / 2;
            }
            if (before != null) {
                return new Settled(states, solution, states.differences(sequence.subList(before, sequence.size())));
            }
            states = next;
        }
    }
}
