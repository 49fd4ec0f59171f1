// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.List;

/**
 * A load that comes and goes: on for some seconds of every period.
 *
 * @param onS     seconds on, above 0, at most the period
 * @param periodS period, s
 */
public record DutyCycle(double onS, double periodS) {
    public DutyCycle {
        if (!(onS > 0) || !(periodS >= onS)) {
            throw new IllegalArgumentException("a duty needs seconds on above 0 and a period not shorter; got " + onS + " s of "
                    + periodS + " s");
        }
    }

    /** Share of the time that it is on. */
    public double share() {
        return onS / periodS;
    }

    /** Current squared and averaged over the period, as a current, A. */
    public double rmsA(double onA, double offA) {
        return StrictMath.sqrt(onA * onA * share() + offA * offA * (1 - share()));
    }

    /**
     * Highest temperature of the cycle once it has repeated for long, degrees Celsius: the periodic solution of the thermal
     * equation, closed (with T1 = A1 T0 + B1 over the time on and T0 = A0 T1 + B0 over the rest, T1 = (A1 B0 + B1) / (1 - A1
     * A0)).
     *
     * @param conductor the conductor
     * @param onA       current while on, A
     * @param offA      current for the rest of the period, A
     * @return infinite when the cycle warms without end
     */
    public double peakC(ConductorTemperature conductor, double onA, double offA) {
        ConductorTemperature.Phase on = conductor.phase(onA, onS);
        ConductorTemperature.Phase off = conductor.phase(offA, periodS - onS);
        double remains = -StrictMath.expm1(on.exponent() + off.exponent());
        if (remains <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        if (Double.isInfinite(on.keep())) {
            return Double.POSITIVE_INFINITY;
        }
        double afterOn = (on.keep() * off.add() + on.add()) / remains;
        double afterOff = (off.keep() * on.add() + off.add()) / remains;
        return StrictMath.max(afterOn, afterOff);
    }

    /**
     * One duty that warms a conductor at least as much as several together: all of them on at once, for the longest time and
     * at the largest share (common practice: coincidence is assumed where nothing prevents it).
     */
    public static DutyCycle covering(List<DutyCycle> duties) {
        double onS = 0;
        double share = 0;
        for (DutyCycle duty : duties) {
            onS = StrictMath.max(onS, duty.onS);
            share = StrictMath.max(share, duty.share());
        }
        return new DutyCycle(onS, StrictMath.max(onS, onS / share));
    }
}
