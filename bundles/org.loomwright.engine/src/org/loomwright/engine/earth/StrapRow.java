// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;

/**
 * One strap or bolted joint in all cases that have an operating point.
 *
 * @param bond       bond of the plan
 * @param states     its load in each case, in the plan's order
 * @param sufficient the smallest strap that would do; null when the length or what it carries is not known
 */
public record StrapRow(int bond, List<StrapState> states, SufficientStrap sufficient) {
    public StrapRow {
        states = List.copyOf(states);
    }

    /** What a strap's load amounts to. */
    public enum Verdict {
        /** It carries nothing. */
        IDLE,
        /** Rating and permitted voltage hold. */
        HOLDS,
        /** It loses more voltage than permitted. */
        LOSSY,
        /** It carries more than its continuous rating. */
        OVERLOADED
    }

    /**
     * One case.
     *
     * @param caseName  case
     * @param cranking  the case is a start
     * @param currentA  current, without sign, A
     * @param dropV     voltage lost, A x ohm, V
     * @param heatW     heat, W
     * @param limitV    permitted voltage, V
     * @param loadShare current over continuous rating; NaN when no rating is stated or the case is a start, which is over in
     *                  seconds
     */
    public record StrapState(String caseName, boolean cranking, double currentA, double dropV, double heatW, double limitV,
            double loadShare) {

        /** Voltage lost over the voltage permitted. */
        public double dropShare() {
            return dropV / limitV;
        }

        /** The larger of both shares: above 1 the strap does not do. */
        public double worstShare() {
            return Double.isNaN(loadShare) ? dropShare() : StrictMath.max(loadShare, dropShare());
        }
    }

    /**
     * The smallest strap on the same length that would do in every case, with sound joints.
     *
     * @param sectionMm2       section, whole mm2; infinite when the joints alone lose too much
     * @param lengthMm         length, mm
     * @param forDropMm2       section that the permitted voltage asks for, mm2
     * @param dropState        case that asks for it; null when the strap carries nothing
     * @param forRatingMm2     section that the current asks for, mm2; 0 where no rating is stated
     * @param ratingState      case that asks for it; null for none
     * @param jointsOhm        both joints, ohm
     * @param ohmMm2PerM       resistance of a strap of 1 mm2 and 1 m, ohm
     */
    public record SufficientStrap(double sectionMm2, double lengthMm, double forDropMm2, StrapState dropState,
            double forRatingMm2, StrapState ratingState, double jointsOhm, double ohmMm2PerM) {
    }

    /** The case in which the strap is nearest to its limits, or furthest beyond; null without any case. */
    public StrapState worst() {
        StrapState worst = null;
        for (StrapState state : states) {
            if (worst == null || state.worstShare() > worst.worstShare()) {
                worst = state;
            }
        }
        return worst;
    }

    /** Largest heat of all cases, W; NaN without any case. */
    public double mostHeatW() {
        return states.stream().mapToDouble(StrapState::heatW).max().orElse(Double.NaN);
    }

    /** The verdict over all cases. */
    public Verdict verdict() {
        StrapState worst = worst();
        if (worst == null || worst.currentA() == 0) {
            return Verdict.IDLE;
        }
        boolean overloaded = states.stream().anyMatch(state -> StrapLoads.beyond(state.loadShare()));
        return overloaded ? Verdict.OVERLOADED : StrapLoads.beyond(worst.dropShare()) ? Verdict.LOSSY : Verdict.HOLDS;
    }
}
