// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/** The nodal matrix of a network: a row for each node but the reference, which is always at zero. */
final class NodalMatrix {
    private final SparseLu lu;
    private final int[] row;

    private NodalMatrix(SparseLu lu, int[] row) {
        this.lu = lu;
        this.row = row;
    }

    /** Collects the entries of a matrix. */
    static final class Pattern {
        private final int[] row;
        private final int unknowns;
        private int[] rows = new int[64];
        private int[] columns = new int[64];
        private int count;

        Pattern(int nodes, int reference) {
            row = new int[nodes];
            int next = 0;
            for (int node = 0; node < nodes; node++) {
                row[node] = node == reference ? -1 : next++;
            }
            unknowns = next;
        }

        void couple(int nodeA, int nodeB) {
            int i = row[nodeA];
            int j = row[nodeB];
            if (i < 0 || j < 0 || i == j) {
                return;
            }
            if (count == rows.length) {
                rows = Arrays.copyOf(rows, 2 * count);
                columns = Arrays.copyOf(columns, 2 * count);
            }
            rows[count] = i;
            columns[count++] = j;
        }

        NodalMatrix matrix() {
            return new NodalMatrix(new SparseLu(unknowns, Arrays.copyOf(rows, count), Arrays.copyOf(columns, count)), row);
        }
    }

    /** Slot of an entry, -1 when it belongs to the reference. */
    int slot(int atNode, int byNode) {
        return row[atNode] < 0 || row[byNode] < 0 ? -1 : lu.slot(row[atNode], row[byNode]);
    }

    void clear() {
        lu.clear();
    }

    void add(int slot, double siemens) {
        if (slot >= 0) {
            lu.add(slot, siemens);
        }
    }

    /** Factors the matrix, the potentials of some nodes held. */
    void factor(boolean[] held) {
        for (int node = 0; node < row.length; node++) {
            if (held[node] && row[node] >= 0) {
                lu.pin(row[node]);
            }
        }
        lu.factor();
    }

    boolean positive() {
        return lu.positive();
    }

    int factorEntries() {
        return lu.factorEntries();
    }

    /**
     * Change of the potentials that takes away the currents left over at the nodes.
     *
     * @param leaving currents left over, A
     * @param held    nodes whose change is given, as when factored
     * @param given   changes of the held nodes, V
     */
    double[] step(double[] leaving, boolean[] held, double[] given) {
        double[] right = new double[leaving.length];
        for (int node = 0; node < row.length; node++) {
            if (row[node] >= 0) {
                right[row[node]] = held[node] ? given[node] : -leaving[node];
            }
        }
        lu.solve(right);
        double[] step = new double[leaving.length];
        for (int node = 0; node < row.length; node++) {
            step[node] = row[node] < 0 || held[node] ? given[node] : right[row[node]];
        }
        return step;
    }
}
