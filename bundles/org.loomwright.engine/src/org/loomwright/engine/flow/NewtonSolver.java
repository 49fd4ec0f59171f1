// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/**
 * Newton's method for the true laws (for power networks: Tinney and Hart, Power flow solution by Newton's method, IEEE Trans.
 * PAS-86, 1967), from the unloaded network downwards. Constant power curves so that Newton steps from above the solution with
 * the highest voltages stay above it (the monotone Newton theorem, Ortega and Rheinboldt, Iterative Solution of Nonlinear
 * Equations in Several Variables, 1970, chapter 13); where a step would leave the segments of the piecewise straight laws, or
 * where the matrix shows that there is nothing to be found nearby, the currents of the loads are instead set to those of the
 * voltages at hand and the relaxed network is solved, which stays above as well.
 */
final class NewtonSolver {
    private static final double ROUNDING = 1e-14;
    /** Steps after which the sign of the pivots is no longer minded. */
    private static final int PATIENCE = 100;
    /** Largest multiple of a step downwards where nothing can be found. */
    private static final double MOST = 64;

    private final Circuit circuit;
    private final Cancel cancel;
    private final Descent descent;
    private final FloatingParts floating;

    NewtonSolver(Circuit circuit, Cancel cancel) {
        this.circuit = circuit;
        this.cancel = cancel;
        descent = new Descent(circuit, cancel);
        floating = new FloatingParts(circuit);
    }

    /** Solves the network with constant power and constant current drawing nothing, then drawing what they would there. */
    void unloaded(double[] x) {
        descent.start(x);
    }

    /**
     * Solves from potentials at hand.
     *
     * @param tolerance share of the largest current within which the laws must agree
     * @return whether they do
     */
    boolean solve(double[] x, double tolerance) {
        double[] leaving = new double[x.length];
        double before = Double.POSITIVE_INFINITY;
        double multiple = 1;
        for (int step = 0; step < circuit.options.newtonSteps(); step++) {
            cancel.poll();
            double[] direction = direction(x, leaving);
            boolean trusted = circuit.matrix.positive() || step > PATIENCE;
            double share = trusted ? reach(x, direction) : 0;
            if (share >= 1) {
                double size = take(x, direction);
                if (size <= ROUNDING || disagreement(x) <= tolerance) {
                    return true;
                }
                continue;
            }
            multiple = trusted ? 1 : Math.min(MOST, 2 * multiple);
            if (multiple == 1 || !descent.plunge(x, multiple)) {
                descent.down(x, direction, share);
                multiple = 1;
            }
            double now = disagreement(x);
            if (now <= tolerance && now >= before / 2) {
                return true;
            }
            before = now;
        }
        return false;
    }

    private double[] direction(double[] x, double[] leaving) {
        Arrays.fill(leaving, 0);
        circuit.matrix.clear();
        for (Pole pole : circuit.poles) {
            if (pole.active) {
                pole.stampTrue(x, leaving, circuit.matrix, Pole.LEAK_S);
            }
        }
        floating.tangent(x);
        circuit.matrix.factor(floating.held);
        return circuit.matrix.step(leaving, floating.held, floating.step);
    }

    private double reach(double[] x, double[] direction) {
        double share = 1;
        for (Pole pole : circuit.poles) {
            if (pole.active) {
                share = Math.min(share, pole.reach(x, direction));
            }
        }
        return share;
    }

    /** Takes a whole step; returns its size relative to the highest potential. */
    private double take(double[] x, double[] direction) {
        for (Pole pole : circuit.poles) {
            if (pole.active) {
                pole.advance(x, direction, 1);
            }
        }
        double size = 0;
        double largest = 0;
        for (int node = 0; node < x.length; node++) {
            x[node] += direction[node];
            size = Math.max(size, Math.abs(direction[node]));
            largest = Math.max(largest, Math.abs(x[node]));
        }
        for (Pole pole : circuit.poles) {
            if (pole.active && pole instanceof DemandPole) {
                pole.segment = pole.segmentAt(pole.voltage(x));
            }
        }
        return largest == 0 ? 0 : size / largest;
    }

    /** Largest difference between the true and the relaxed laws over the largest current. */
    private double disagreement(double[] x) {
        double worst = 0;
        double largest = 1e-6;
        for (Pole pole : circuit.poles) {
            if (pole.active) {
                worst = Math.max(worst, Math.abs(pole.mismatch(x)));
                largest = Math.max(largest, Math.abs(pole.current(pole.segment, pole.voltage(x), 0)));
            }
        }
        return worst / largest;
    }
}
