// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.Adiabatic;

/**
 * How hot a conductor gets during a short circuit: along the slowest curves of the devices before it, for every current from
 * the smallest at the far end to the largest at the near end.
 *
 * @param smallestA  smallest current through it, A
 * @param largestA   largest current through it, A
 * @param startC     temperature before, degrees Celsius
 * @param peakC      highest temperature, at most that of melting copper, degrees Celsius
 * @param worstA     current at which it is reached, A
 * @param seconds    time for which that current flows, s; infinite when it is never cleared
 * @param limitC     short-time limit, degrees Celsius; NaN when the cable states none
 * @param k          adiabatic factor from start to limit, A s^0.5 / mm2; NaN without a limit
 * @param letThroughA2s largest let-through of these currents, A2s
 * @param withstandA2s k^2 S^2, A2s: what the conductor bears without any loss of heat
 */
public record ShortTransient(double smallestA, double largestA, double startC, double peakC, double worstA, double seconds,
        double limitC, double k, double letThroughA2s, double withstandA2s) {
    private static final int POINTS_BETWEEN = 6;
    private static final int REFINEMENTS = 24;
    private static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;

    /** How long a current through the conductor flows, s. */
    @FunctionalInterface
    interface Duration {
        double seconds(double currentA);
    }

    /** Whether it stays below the limit; unknown without one. */
    public Verdict verdict() {
        return Double.isNaN(limitC) ? Verdict.UNKNOWN : Verdict.of(peakC <= limitC);
    }

    /** Whether the adiabatic rule k^2 S^2 >= I^2 t already holds, which is on the safe side. */
    public boolean adiabaticHolds() {
        return letThroughA2s <= withstandA2s;
    }

    /**
     * Finds the worst current. Between two gates the let-through follows a power of the current, so the worst lies at a gate
     * or an end unless heat is lost meanwhile; points between and a search around the best of them see to that.
     *
     * @param gatesA currents at which the duration changes its law, A
     */
    static ShortTransient of(ConductorHeat heat, double smallestA, double largestA, Duration duration, double[] gatesA) {
        List<Double> marks = new ArrayList<>();
        marks.add(smallestA);
        for (double gate : gatesA) {
            if (gate > smallestA && gate < largestA) {
                marks.add(gate * (1 - 1e-9));
                marks.add(gate);
            }
        }
        marks.add(StrictMath.max(smallestA, largestA));
        marks.sort(null);
        double[] points = points(marks);
        int best = 0;
        double letThrough = 0;
        for (int i = 0; i < points.length; i++) {
            double seconds = duration.seconds(points[i]);
            letThrough = StrictMath.max(letThrough, points[i] * points[i] * seconds);
            best = peak(heat, points[i], duration) > peak(heat, points[best], duration) ? i : best;
        }
        double worst = points[best];
        if (peak(heat, worst, duration) < FlowOptions.COPPER_MELTS_C) {
            double low = points[StrictMath.max(0, best - 1)];
            double high = points[StrictMath.min(points.length - 1, best + 1)];
            for (int i = 0; i < REFINEMENTS; i++) {
                double left = high - GOLDEN * (high - low);
                double right = low + GOLDEN * (high - low);
                boolean leftHotter = peak(heat, left, duration) >= peak(heat, right, duration);
                high = leftHotter ? right : high;
                low = leftHotter ? low : left;
            }
            double middle = (low + high) / 2;
            worst = peak(heat, middle, duration) > peak(heat, worst, duration) ? middle : worst;
        }
        return new ShortTransient(smallestA, largestA, heat.startC(), peak(heat, worst, duration), worst,
                duration.seconds(worst), heat.limitC(), Double.isNaN(heat.limitC()) ? Double.NaN : heat.k(), letThrough,
                Double.isNaN(heat.limitC()) ? Double.NaN : Adiabatic.withstandA2s(heat.sectionMm2(), heat.k()));
    }

    private static double peak(ConductorHeat heat, double amps, Duration duration) {
        return heat.afterC(amps, duration.seconds(amps));
    }

    private static double[] points(List<Double> marks) {
        List<Double> points = new ArrayList<>();
        for (int i = 0; i + 1 < marks.size(); i++) {
            double low = marks.get(i);
            double ratio = low > 0 ? marks.get(i + 1) / low : 1;
            for (int k = 0; k < POINTS_BETWEEN; k++) {
                points.add(k == 0 ? low : low * StrictMath.pow(ratio, (double) k / POINTS_BETWEEN));
            }
        }
        points.add(marks.get(marks.size() - 1));
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
