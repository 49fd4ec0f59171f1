// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;
import java.util.List;

/**
 * Solves a network of relaxed laws. As no relaxed law falls with its voltage, the solution is the least of a convex function of
 * the potentials, the content of the network (Millar 1951), and there is exactly one. Newton's method on straight segments with
 * a search along each step, where the derivative of the content only rises, reaches it in finitely many steps.
 */
final class RelaxedSolver {
    private static final int STEPS = 300;
    private static final double ROUNDING = 1e-14;

    private final Circuit circuit;
    private final Cancel cancel;
    private final FloatingParts floating;

    RelaxedSolver(Circuit circuit, Cancel cancel) {
        this.circuit = circuit;
        this.cancel = cancel;
        floating = new FloatingParts(circuit);
    }

    /** Moves the potentials to the solution and the laws to its segments. */
    void solve(double[] x) {
        List<Pole> poles = circuit.poles;
        double[] leaving = new double[x.length];
        double[] trial = new double[x.length];
        for (int step = 0; step < STEPS; step++) {
            cancel.poll();
            Arrays.fill(leaving, 0);
            circuit.matrix.clear();
            for (Pole pole : poles) {
                if (pole.active) {
                    pole.segment = pole.segmentAt(pole.voltage(x));
                    pole.stampRelaxed(x, leaving, circuit.matrix);
                }
            }
            floating.relaxed(x);
            circuit.matrix.factor(floating.held);
            double[] direction = circuit.matrix.step(leaving, floating.held, floating.step);
            double size = 0;
            double largest = 0;
            for (int node = 0; node < x.length; node++) {
                trial[node] = x[node] + direction[node];
                size = Math.max(size, Math.abs(direction[node]));
                largest = Math.max(largest, Math.abs(trial[node]));
            }
            boolean straight = sameSegments(poles, trial);
            double share = straight ? 1 : share(poles, x, direction);
            for (int node = 0; node < x.length; node++) {
                x[node] += share * direction[node];
            }
            if (straight || share * size <= ROUNDING * largest) {
                return;
            }
        }
    }

    private static boolean sameSegments(List<Pole> poles, double[] trial) {
        for (Pole pole : poles) {
            if (pole.active && pole.segmentAt(pole.voltage(trial)) != pole.segment) {
                return false;
            }
        }
        return true;
    }

    /** Derivative of the content along a step. */
    private static double rise(List<Pole> poles, double[] x, double[] direction, double share) {
        double sum = 0;
        for (Pole pole : poles) {
            if (pole.active) {
                double way = pole.voltage(direction);
                double volt = pole.voltage(x) + share * way;
                sum += pole.current(pole.segmentAt(volt), volt, Pole.LEAK_S) * way;
            }
        }
        return sum;
    }

    /** Share of the step at which the derivative has nearly vanished: false position with halving (the Illinois rule). */
    private static double share(List<Pole> poles, double[] x, double[] direction) {
        double start = rise(poles, x, direction, 0);
        double goal = 0.1 * Math.abs(start);
        double low = 0;
        double atLow = start;
        double high = 1;
        double atHigh = rise(poles, x, direction, 1);
        if (!(atHigh > goal)) {
            return 1;
        }
        for (int k = 0; k < 60; k++) {
            double middle = k % 8 == 7 ? (low + high) / 2 : (low * atHigh - high * atLow) / (atHigh - atLow);
            double at = rise(poles, x, direction, middle);
            if (Math.abs(at) <= goal) {
                return middle;
            }
            if (at < 0) {
                low = middle;
                atLow = at;
                atHigh /= 2;
            } else {
                high = middle;
                atHigh = at;
                atLow /= 2;
            }
        }
        return low > 0 ? low : high;
    }
}
