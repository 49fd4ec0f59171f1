// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.List;

/** Parts of a network that hang together, and which of them have a source. */
final class Islands {
    private final int[] parent;
    private final boolean[] source;

    private Islands(int nodes) {
        parent = new int[nodes];
        source = new boolean[nodes];
        for (int node = 0; node < nodes; node++) {
            parent[node] = node;
        }
    }

    /**
     * The islands of the present state. A converter's output counts as a source once its input lies in a live island; of
     * converters that only feed each other none does. Outputs of converters that are not fed are put out of action.
     */
    static Islands alive(Circuit circuit) {
        boolean[] fed = new boolean[circuit.poleOf.length];
        for (RegulatedPole output : circuit.outputOf) {
            if (output != null) {
                output.active = false;
            }
        }
        while (true) {
            Islands islands = new Islands(circuit.network.nodes());
            for (Pole pole : circuit.poles) {
                if (pole.active) {
                    islands.join(pole.a, pole.b);
                }
            }
            for (Pole pole : circuit.poles) {
                if (pole.active && (pole instanceof RegulatedPole || pole.drives())) {
                    islands.source[islands.first(pole.a)] = true;
                }
            }
            boolean more = false;
            for (int item = 0; item < fed.length; item++) {
                Pole input = circuit.poleOf[item];
                if (circuit.outputOf[item] != null && !fed[item] && input.active && islands.live(input.a)) {
                    fed[item] = true;
                    circuit.outputOf[item].active = circuit.outputOf[item].limitA() > 0;
                    more = true;
                }
            }
            if (!more) {
                return islands;
            }
        }
    }

    /** Every node an island of its own, without a source. */
    static Islands empty(int nodes) {
        return new Islands(nodes);
    }

    /** The islands tied together by what conducts in a solution. */
    static Islands tied(int nodes, List<Pole> poles) {
        Islands islands = new Islands(nodes);
        for (Pole pole : poles) {
            if (pole.active && pole.ties()) {
                islands.join(pole.a, pole.b);
            }
        }
        for (Pole pole : poles) {
            if (pole.active && pole.drives()) {
                islands.source[islands.first(pole.a)] = true;
            }
        }
        return islands;
    }

    /** Joins two nodes; false when they were joined before. */
    boolean join(int a, int b) {
        int first = first(a);
        int second = first(b);
        if (first == second) {
            return false;
        }
        int lower = Math.min(first, second);
        int upper = Math.max(first, second);
        parent[upper] = lower;
        source[lower] |= source[upper];
        return true;
    }

    /** Lowest node of a node's island. */
    int first(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Whether a node's island has a source. */
    boolean live(int node) {
        return source[first(node)];
    }

    /** Gives a node's island a source. */
    void feed(int node) {
        source[first(node)] = true;
    }
}
