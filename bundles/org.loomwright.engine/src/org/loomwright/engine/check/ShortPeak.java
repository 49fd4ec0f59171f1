// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.protection.CurvePair;

/** How hot a conductor of another section would get in short circuits cleared by one device at its slowest. */
final class ShortPeak {
    private static final int POINTS_BETWEEN = 12;
    private static final double JUST_BELOW = 1 - 1e-9;

    private final ConductorTemperature conductor;
    private final double startC;
    private final CurvePair curve;
    private final double share;

    private ShortPeak(ConductorTemperature conductor, double startC, CurvePair curve, double share) {
        this.conductor = conductor;
        this.startC = startC;
        this.curve = curve;
        this.share = share;
    }

    /**
     * The highest temperature for any current of a range, at most that of melting copper, degrees Celsius.
     *
     * @param startC temperature before, degrees Celsius
     * @param curve  the device
     * @param share  share of the device's current that flows in the conductor, above 0
     * @param fromA  smallest current of the conductor, above 0 A
     * @param toA    largest current of the conductor, A
     */
    static double ofC(ConductorTemperature conductor, double startC, CurvePair curve, double share, double fromA, double toA) {
        ShortPeak peak = new ShortPeak(conductor, startC, curve, share);
        double peakC = StrictMath.max(peak.at(fromA), peak.at(toA));
        double below = fromA;
        for (double deviceA : curve.slowestGatesA()) {
            double gate = deviceA * share;
            if (gate > fromA && gate < toA) {
                peakC = StrictMath.max(peakC, peak.between(below, gate));
                below = gate;
            }
        }
        return StrictMath.max(peakC, peak.between(below, toA));
    }

    private double between(double lowA, double highA) {
        double peakC = StrictMath.max(at(highA), at(highA * JUST_BELOW));
        double ratio = StrictMath.pow(highA / lowA, 1.0 / POINTS_BETWEEN);
        for (double amps = lowA; ratio > 1 && amps < highA; amps *= ratio) {
            peakC = StrictMath.max(peakC, at(amps));
        }
        return peakC;
    }

    private double at(double amps) {
        double seconds = curve.slowestS(amps / share);
        double hotC = Double.isInfinite(seconds) ? StrictMath.max(startC, conductor.steadyC(amps))
                : conductor.afterC(startC, amps, seconds);
        return hotC < FlowOptions.COPPER_MELTS_C ? hotC : FlowOptions.COPPER_MELTS_C;
    }
}
