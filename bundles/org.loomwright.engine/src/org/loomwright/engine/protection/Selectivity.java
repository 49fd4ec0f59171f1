// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.TreeSet;

/**
 * Whether a device opens before the one upstream of it. Upstream must at its fastest be slower than downstream at its slowest;
 * beyond the last gates that compares their I2t, as both then have a constant one. Both are taken in the same weather: all hot
 * and all cold, the worse counts.
 *
 * @param upstream   device upstream (element)
 * @param downstream device downstream (element)
 * @param kind       full up to the largest fault, up to a current, or none
 * @param limitA     smallest current of the downstream device at which upstream may open as well, A; infinite when there is none
 * @param largestA   largest fault current behind the downstream device, A
 * @param share      current of the upstream device over that of the downstream one
 * @param upstreamS  fastest time upstream at the limit, or at the largest current when full, s
 * @param downstreamS slowest time downstream there, s
 */
public record Selectivity(int upstream, int downstream, Kind kind, double limitA, double largestA, double share,
        double upstreamS, double downstreamS) {

    private static final double ALL = 0.99;

    /** How far it goes. */
    public enum Kind {
        /** Up to the largest fault. */
        FULL,
        /** Up to a current below the largest fault. */
        UP_TO,
        /** Upstream may open at any current that downstream clears. */
        NONE,
        /** A curve is not stated. */
        UNKNOWN
    }

    /** Whether all that the downstream device takes comes through the one upstream; else something feeds it besides. */
    public boolean alone() {
        return share >= ALL;
    }

    /** Compares two devices with curves in one weather. */
    static Selectivity of(int upstream, CurvePair up, int downstream, CurvePair down, double share, double largestA) {
        double limitA = limitA(up, down, share);
        boolean full = limitA > largestA;
        double at = full ? largestA : limitA;
        Kind kind = full ? Kind.FULL : limitA <= down.conventionalA() * (1 + 1e-9) ? Kind.NONE : Kind.UP_TO;
        return new Selectivity(upstream, downstream, kind, limitA, largestA, share, up.fastestS(at * share), down.slowestS(at));
    }

    /** Nothing can be said without curves. */
    static Selectivity unknown(int upstream, int downstream, double share, double largestA) {
        return new Selectivity(upstream, downstream, Kind.UNKNOWN, Double.NaN, largestA, share, Double.NaN, Double.NaN);
    }

    /** Smallest downstream current at which the fastest upstream is not slower than the slowest downstream. */
    public static double limitA(CurvePair up, CurvePair down, double share) {
        TreeSet<Double> marks = new TreeSet<>();
        for (double gate : up.fastestGatesA()) {
            marks.add(gate / share);
        }
        for (double gate : down.slowestGatesA()) {
            marks.add(gate);
        }
        double before = Double.NaN;
        for (double at : marks) {
            if (!Double.isNaN(before) && !passes(up, down, share, at * (1 - 1e-9))) {
                return crossing(up, down, share, before, at * (1 - 1e-9));
            }
            if (!passes(up, down, share, at)) {
                return at;
            }
            before = at;
        }
        return Double.POSITIVE_INFINITY;
    }

    private static boolean passes(CurvePair up, CurvePair down, double share, double amps) {
        double upS = up.fastestS(amps * share);
        return Double.isInfinite(upS) || upS > down.slowestS(amps);
    }

    /** Both times follow powers of the current between two marks: one crossing, exact in logarithms. */
    private static double crossing(CurvePair up, CurvePair down, double share, double low, double high) {
        double atLow = StrictMath.log(up.fastestS(low * share) / down.slowestS(low));
        double atHigh = StrictMath.log(up.fastestS(high * share) / down.slowestS(high));
        if (Double.isInfinite(atLow) || Double.isNaN(atLow)) {
            return low;
        }
        double part = atLow / (atLow - atHigh);
        return low * StrictMath.exp(part * StrictMath.log(high / low));
    }
}
