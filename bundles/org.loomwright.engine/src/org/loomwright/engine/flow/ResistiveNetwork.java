// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * Fixed resistances between nodes, factored once and solved for any number of currents. It holds a network that is linear;
 * sources stand in it as the resistances behind them. Safe to share between threads.
 */
public final class ResistiveNetwork {
    private final int nodes;
    private final SparseLu lu;
    private final int[] parts;
    private final boolean[] held;

    /**
     * Factors a network.
     *
     * @param nodes number of nodes
     * @param a     one end of each resistance
     * @param b     its other end
     * @param ohm   the resistances, above 0 ohm
     */
    public ResistiveNetwork(int nodes, int[] a, int[] b, double[] ohm) {
        this.nodes = nodes;
        lu = new SparseLu(nodes, a, b);
        Islands islands = Islands.empty(nodes);
        parts = new int[nodes];
        held = new boolean[nodes];
        for (int k = 0; k < a.length; k++) {
            if (!(ohm[k] > 0)) {
                throw new IllegalArgumentException("resistance " + k + " is " + ohm[k] + " ohm, expected above 0");
            }
            if (a[k] == b[k]) {
                continue;
            }
            double siemens = 1 / ohm[k];
            lu.add(lu.slot(a[k], a[k]), siemens);
            lu.add(lu.slot(b[k], b[k]), siemens);
            lu.add(lu.slot(a[k], b[k]), -siemens);
            lu.add(lu.slot(b[k], a[k]), -siemens);
            islands.join(a[k], b[k]);
        }
        for (int node = 0; node < nodes; node++) {
            parts[node] = islands.first(node);
            if (parts[node] == node) {
                held[node] = true;
                lu.pin(node);
            }
        }
        lu.factor();
    }

    /** Number of nodes. */
    public int nodes() {
        return nodes;
    }

    /** Whether resistances join two nodes. */
    public boolean joined(int a, int b) {
        return parts[a] == parts[b];
    }

    /** Lowest node of the part that hangs together with a node. */
    public int part(int node) {
        return parts[node];
    }

    /**
     * Potentials for currents fed into the nodes; the lowest node of each part that hangs together is at zero.
     *
     * @param injectedA current into each node, A; in each part they add up to zero
     */
    public synchronized double[] potentialsV(double[] injectedA) {
        double[] right = injectedA.clone();
        for (int node = 0; node < nodes; node++) {
            if (held[node]) {
                right[node] = 0;
            }
        }
        lu.solve(right);
        return right;
    }

    /** Potentials for 1 A that enters at one node and leaves at another, joined to it, V. */
    public double[] transferOhm(int in, int out) {
        double[] injectedA = new double[nodes];
        injectedA[in] += 1;
        injectedA[out] -= 1;
        return potentialsV(injectedA);
    }
}
