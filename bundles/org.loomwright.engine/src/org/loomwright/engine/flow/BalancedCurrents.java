// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/**
 * Currents of all laws at given potentials. Rounding of the potentials times a large conductance leaves currents over at the
 * nodes; these are led off along a spanning tree of the largest conductances, which changes the currents by no more than that
 * rounding and leaves none over. Anything larger is left as it is, to be seen in the residual.
 */
final class BalancedCurrents {
    private static final double ROUNDING = 1e-14;

    private final Circuit circuit;
    private final double[] x;
    private final double[] amps;

    private BalancedCurrents(Circuit circuit, double[] x) {
        this.circuit = circuit;
        this.x = x;
        amps = new double[circuit.poles.size()];
    }

    /** Currents in the order of the circuit's laws, A. */
    static double[] of(Circuit circuit, double[] x) {
        BalancedCurrents balanced = new BalancedCurrents(circuit, x);
        balanced.run();
        return balanced.amps;
    }

    private void run() {
        double[] leaving = new double[x.length];
        double[] allowed = new double[x.length];
        long[] byConductance = new long[amps.length];
        int stiff = 0;
        for (int k = 0; k < amps.length; k++) {
            Pole pole = circuit.poles.get(k);
            if (!pole.active) {
                continue;
            }
            pole.settle(x);
            amps[k] = pole.current(pole.segment, pole.voltage(x), 0);
            leaving[pole.a] += amps[k];
            leaving[pole.b] -= amps[k];
            double siemens = pole.slope(pole.segment, 0);
            double rounding = ROUNDING * (siemens * Math.max(1, Math.max(Math.abs(x[pole.a]), Math.abs(x[pole.b])))
                    + Math.abs(amps[k]));
            allowed[pole.a] += rounding;
            allowed[pole.b] += rounding;
            if (siemens > 0 && pole.a != pole.b) {
                // descending conductance to some eight digits, then the index
                byConductance[stiff++] = -(Double.doubleToLongBits(siemens) >>> 24 << 24) + k;
            }
        }
        Arrays.sort(byConductance, 0, stiff);
        lead(leaving, allowed, byConductance, stiff);
    }

    private void lead(double[] leaving, double[] allowed, long[] byConductance, int stiff) {
        Islands tree = Islands.empty(x.length);
        int[] degree = new int[x.length];
        int[] edges = new int[stiff];
        int count = 0;
        for (int n = 0; n < stiff; n++) {
            int k = (int) (byConductance[n] & 0xffffff);
            Pole pole = circuit.poles.get(k);
            if (tree.join(pole.a, pole.b)) {
                edges[count++] = k;
                degree[pole.a]++;
                degree[pole.b]++;
            }
        }
        int[][] at = new int[x.length][];
        for (int node = 0; node < x.length; node++) {
            at[node] = new int[degree[node]];
        }
        int[] filled = new int[x.length];
        for (int n = 0; n < count; n++) {
            Pole pole = circuit.poles.get(edges[n]);
            at[pole.a][filled[pole.a]++] = edges[n];
            at[pole.b][filled[pole.b]++] = edges[n];
        }
        peel(leaving, allowed, degree, at);
    }

    /** Takes the leaves of the tree off one by one, each handing what it has left over to its neighbour. */
    private void peel(double[] leaving, double[] allowed, int[] degree, int[][] at) {
        boolean[] used = new boolean[amps.length];
        int[] queue = new int[x.length];
        int tail = 0;
        for (int node = 0; node < x.length; node++) {
            if (degree[node] == 1) {
                queue[tail++] = node;
            }
        }
        for (int head = 0; head < tail; head++) {
            int node = queue[head];
            for (int k : at[node]) {
                if (used[k] || degree[node] != 1) {
                    continue;
                }
                used[k] = true;
                Pole pole = circuit.poles.get(k);
                int other = pole.a == node ? pole.b : pole.a;
                double left = leaving[node];
                if (Math.abs(left) <= allowed[node]) {
                    amps[k] += pole.a == node ? -left : left;
                    leaving[node] = 0;
                    leaving[other] += left;
                    allowed[other] += Math.abs(left);
                }
                degree[node]--;
                if (--degree[other] == 1) {
                    queue[tail++] = other;
                }
            }
        }
    }
}
