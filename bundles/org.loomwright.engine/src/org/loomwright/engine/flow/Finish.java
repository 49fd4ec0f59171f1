// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * Turns potentials into a solution: takes the leakage of flat segments out, gives parts that nothing ties to a source no
 * potential, and balances the currents.
 */
final class Finish {
    /** A blocked rectifier or resting regulator this near its threshold still tells the potential behind it, V. */
    private static final double AT_THRESHOLD_V = 1e-6;
    /** Taking the leakage out moves potentials by less than this, V; else the solution is left as it is. */
    private static final double MOVED_V = 1e-3;
    private static final int STEPS = 4;

    private final Circuit circuit;

    Finish(Circuit circuit) {
        this.circuit = circuit;
    }

    Solution solution(double[] x, boolean found) {
        int items = circuit.poleOf.length;
        boolean[] resting = new boolean[items];
        double[] unloadedV = new double[items];
        for (int item = 0; item < items; item++) {
            if (circuit.poleOf[item] instanceof DemandPole demand) {
                resting[item] = demand.resting(x);
                unloadedV[item] = demand.active ? demand.unloadedV() : 0;
            }
        }
        boolean[] bare = sharpen(x);
        double[] amps = BalancedCurrents.of(circuit, x);
        double[] currentA = new double[items];
        double[] outputA = new double[items];
        for (int k = 0, item = 0; item < items; item++) {
            if (circuit.outputOf[item] != null) {
                outputA[item] = 0 - amps[k++];
            }
            if (circuit.poleOf[item] != null) {
                currentA[item] = amps[k++];
            }
        }
        double[] potentialV = x.clone();
        for (int node = 0; node < x.length; node++) {
            if (bare[node] || !circuit.live[node]) {
                potentialV[node] = Double.NaN;
            }
        }
        return new Solution(circuit, potentialV, currentA, outputA, unloadedV, resting, found);
    }

    /** Solves once more without leakage, on the same segments; returns the nodes that are left without potential. */
    private boolean[] sharpen(double[] x) {
        int nodes = x.length;
        keepThresholds(x);
        Islands tied = Islands.tied(nodes, circuit.poles);
        boolean[] bare = new boolean[nodes];
        boolean[] held = circuit.held.clone();
        boolean[] hasHeld = new boolean[nodes];
        for (int node = 0; node < nodes; node++) {
            bare[node] = circuit.live[node] && !tied.live(node);
            hasHeld[tied.first(node)] |= held[node];
        }
        for (int node = 0; node < nodes; node++) {
            held[node] |= bare[node] || tied.first(node) == node && !hasHeld[node];
        }
        double[] sharp = x.clone();
        double[] still = new double[nodes];
        for (int step = 0; step < STEPS; step++) {
            double[] leaving = new double[nodes];
            circuit.matrix.clear();
            for (Pole pole : circuit.poles) {
                if (pole.active && !bare[pole.a] && !bare[pole.b]) {
                    pole.stampTrue(sharp, leaving, circuit.matrix, 0);
                }
            }
            circuit.matrix.factor(held);
            double[] direction = circuit.matrix.step(leaving, held, still);
            double size = 0;
            for (int node = 0; node < nodes; node++) {
                size = Math.max(size, Math.abs(direction[node]));
            }
            if (!(size < MOVED_V)) {
                break;
            }
            for (Pole pole : circuit.poles) {
                if (pole.active && !bare[pole.a] && !bare[pole.b]) {
                    pole.advance(sharp, direction, 1);
                }
            }
            for (int node = 0; node < nodes; node++) {
                sharp[node] += direction[node];
            }
            System.arraycopy(sharp, 0, x, 0, nodes);
        }
        for (Pole pole : circuit.poles) {
            if (pole.active && (bare[pole.a] || bare[pole.b])) {
                pole.active = false;
            }
        }
        return bare;
    }

    /**
     * Takes rectifiers and regulators at their very threshold as conducting where only they tell a potential: a rectifier that
     * of the part behind it, not of a part before it.
     */
    private void keepThresholds(double[] x) {
        Islands tied = Islands.tied(x.length, circuit.poles);
        boolean more = true;
        while (more) {
            more = false;
            for (Pole pole : circuit.poles) {
                if (pole.active && tells(pole, x, tied) && tied.join(pole.a, pole.b)) {
                    pole.segment = 1;
                    if (pole.drives()) {
                        tied.feed(pole.a);
                    }
                    more = true;
                }
            }
        }
    }

    private static boolean tells(Pole pole, double[] x, Islands tied) {
        if (pole instanceof RectifierPole rectifier) {
            return rectifier.segment == RectifierPole.BLOCKING && tied.live(rectifier.a)
                    && Math.abs(rectifier.belowForwardV(x)) < AT_THRESHOLD_V;
        }
        return pole instanceof RegulatedPole regulated && regulated.segment == RegulatedPole.OFF
                && Math.abs(regulated.aboveSetV(x)) < AT_THRESHOLD_V;
    }
}
