// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Condition (c): how hot conductors get until the devices before them have opened, by their slowest curves. */
final class ConductorTransients {
    private final DeviceCurves curves;

    ConductorTransients(DeviceCurves curves) {
        this.curves = curves;
    }

    /** For what a return carries of the faults behind one device. */
    ShortTransient of(ReturnDuty duty, ConductorHeat heat) {
        CurvePair curve = duty.protector() < 0 ? null : curves.cold(duty.protector());
        double share = duty.share();
        return ShortTransient.of(heat, duty.smallestA(), duty.largestA(),
                amps -> curve == null ? Double.POSITIVE_INFINITY : curve.slowestS(amps / share),
                curve == null ? new double[0] : gatesA(curve, share));
    }

    /** For one feed; null when no fault flows through it. */
    ShortTransient of(Feed feed, ConductorHeat heat) {
        Fault far = feed.smallestFar();
        Fault near = feed.largestNear();
        if (far == null || near == null) {
            return null;
        }
        List<Double> gates = new ArrayList<>();
        for (int k = 0; k < feed.upstream().size(); k++) {
            CurvePair curve = curves.cold(feed.upstream().get(k));
            if (curve != null) {
                for (double gate : gatesA(curve, 1 / feed.shares().get(k))) {
                    gates.add(gate);
                }
            }
        }
        double mostA = StrictMath.max(near.throughA(), feed.largestFar() == null ? 0 : feed.largestFar().throughA());
        ShortTransient swept = ShortTransient.of(heat, StrictMath.min(far.throughA(), mostA), mostA,
                amps -> seconds(feed, heat, amps),
                gates.stream().mapToDouble(Double::doubleValue).toArray());
        return followed(feed, heat, swept);
    }

    /** The faults themselves, followed device by device, where that comes out hotter than the sweep. */
    private static ShortTransient followed(Feed feed, ConductorHeat heat, ShortTransient swept) {
        ShortTransient worst = swept;
        for (Fault fault : feed.faults()) {
            if (fault.throughA() > 0 && fault.clearing().steps().size() > 1) {
                double hotC = heat.startC();
                double beforeS = 0;
                for (Clearing.Step step : fault.clearing().steps()) {
                    hotC = heat.afterC(hotC, step.throughA(), step.atS() - beforeS);
                    beforeS = step.atS();
                }
                if (hotC > worst.peakC()) {
                    worst = new ShortTransient(swept.smallestA(), swept.largestA(), swept.startC(), hotC, fault.throughA(),
                            fault.clearing().seconds(), swept.limitC(), swept.k(),
                            StrictMath.max(swept.letThroughA2s(), fault.clearing().letThroughA2s()), swept.withstandA2s());
                }
            }
        }
        return worst;
    }

    /**
     * When the current through the conductor has ceased: with one device next before it the soonest of those in series; with
     * several, as soon as what those still closed carry is no more than its rating.
     */
    private double seconds(Feed feed, ConductorHeat heat, double amps) {
        double soonestS = Double.POSITIVE_INFINITY;
        double[] nextS = new double[feed.next().size()];
        double[] nextA = new double[nextS.length];
        for (int k = 0; k < feed.upstream().size(); k++) {
            CurvePair curve = curves.cold(feed.upstream().get(k));
            double deviceA = amps * feed.shares().get(k);
            double seconds = curve == null ? Double.POSITIVE_INFINITY : curve.slowestS(deviceA);
            int next = feed.next().indexOf(feed.upstream().get(k));
            if (next >= 0) {
                nextS[next] = seconds;
                nextA[next] = deviceA;
            }
            if (nextS.length == 1 || feed.shares().get(k) >= 1 - 1e-9) {
                soonestS = StrictMath.min(soonestS, seconds);
            }
        }
        return nextS.length < 2 ? soonestS : StrictMath.min(soonestS, lastOf(nextS, nextA, heat.izA()));
    }

    private static double lastOf(double[] seconds, double[] amps, double izA) {
        double atS = Double.POSITIVE_INFINITY;
        for (double candidate : seconds) {
            double remainingA = 0;
            for (int k = 0; k < seconds.length; k++) {
                remainingA += seconds[k] > candidate ? amps[k] : 0;
            }
            boolean enough = Double.isNaN(izA) ? remainingA == 0 : remainingA <= izA;
            atS = enough ? StrictMath.min(atS, candidate) : atS;
        }
        return atS;
    }

    private static double[] gatesA(CurvePair curve, double factor) {
        return Arrays.stream(curve.slowestGatesA()).map(gate -> gate * factor).toArray();
    }
}
