// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.List;

/** Seeks the largest common factor on all loads that still has an operating point. */
final class Collapse {
    private final Settling settling;
    private final double tolerance;

    Collapse(Settling settling, FlowOptions options) {
        this.settling = settling;
        this.tolerance = options.scaleTolerance();
    }

    /**
     * The end of the search.
     *
     * @param scale  largest factor found with an operating point
     * @param at     the state there
     * @param beyond the state at the smallest factor found without one
     */
    record Edge(double scale, Settling.Settled at, Settling.Settled beyond) {
    }

    /** Halves the way between a factor with and one without an operating point. */
    Edge between(double good, double bad, Settling.Settled atBad) {
        double low = good;
        double high = bad;
        double within = tolerance * bad;
        Settling.Settled beyond = atBad;
        while (high - low > within) {
            double middle = (low + high) / 2;
            Settling.Settled there = settling.run(middle);
            if (there.solved()) {
                low = middle;
            } else {
                high = middle;
                beyond = there;
            }
        }
        // solved anew: a solution's circuit is as the last solution left it
        return new Edge(low, settling.run(low), beyond);
    }

    /**
     * The weakest load: where the tangent to the solutions, as the common factor grows, falls most steeply relative to the
     * voltage (tangent vector of Ajjarapu and Christy, The continuation power flow, IEEE Trans. Power Systems 7, 1992); of the
     * loads and converters that rest without a solution beyond the edge if there are any. Where there is no solution even
     * without loads, the converter with the least voltage left.
     */
    static List<Integer> weakest(Edge edge) {
        Solution at = edge.at().solution();
        boolean[] candidates = edge.scale() == 0 ? at.resting() : edge.beyond().solution().resting();
        boolean any = false;
        for (boolean candidate : candidates) {
            any |= candidate;
        }
        double[] weakness = edge.scale() == 0 ? lost(at) : LoadSensitivity.relativeFall(at);
        int weakest = -1;
        for (int item = 0; item < weakness.length; item++) {
            boolean counts = any ? candidates[item] : at.circuit().poleOf[item] instanceof DemandPole;
            if (counts && (weakest < 0 || weakness[item] > weakness[weakest])) {
                weakest = item;
            }
        }
        return weakest < 0 ? List.of() : List.of(weakest);
    }

    /** Share of its voltage without load that each demand has lost. */
    private static double[] lost(Solution at) {
        double[] lost = new double[at.unloadedV().length];
        for (int item = 0; item < lost.length; item++) {
            Pole pole = at.circuit().poleOf[item];
            double unloaded = Math.abs(at.unloadedV()[item]);
            lost[item] = unloaded == 0 ? 0 : 1 - Math.abs(at.voltage(pole.a, pole.b)) / unloaded;
        }
        return lost;
    }
}
