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
     * @param states   the set of states reached; of a cycle one with a solution, if there is one
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
        List<Boolean> collapsed = new ArrayList<>();
        Map<States, Integer> seen = new HashMap<>();
        States states = start;
        while (true) {
            Solution solution = solver.solve(states, loadScale);
            seen.put(states, sequence.size());
            sequence.add(states);
            collapsed.add(solution.collapsed());
            States next = states.next(solution);
            if (next.equals(states)) {
                return new Settled(states, solution, List.of());
            }
            Integer before = seen.get(next);
            if (before == null && sequence.size() >= options.stateChanges()) {
                before = sequence.size() / 2;
            }
            if (before != null) {
                return cycle(sequence.subList(before, sequence.size()), collapsed.subList(before, sequence.size()), solution,
                        loadScale);
            }
            states = next;
        }
    }

    /** The latest set of a cycle that has a solution; the last one when none has. */
    private Settled cycle(List<States> cycle, List<Boolean> collapsed, Solution last, double loadScale) {
        List<Integer> items = cycle.get(0).differences(cycle);
        int latest = collapsed.lastIndexOf(false);
        if (latest < 0 || latest == cycle.size() - 1) {
            return new Settled(cycle.get(cycle.size() - 1), last, items);
        }
        return new Settled(cycle.get(latest), solver.solve(cycle.get(latest), loadScale), items);
    }
}
