// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.earth.StrapRow.StrapState;
import org.loomwright.engine.earth.StrapRow.SufficientStrap;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * Judges straps by the limits of bond loading: the voltage lost, more being permitted at a start, and the continuous rating, at
 * starts left out as they last seconds.
 */
final class StrapLoads {
    static final String RUNNING = "bond-loading.running";
    static final String CRANKING = "bond-loading.cranking";
    static final String LAY = "strap.lay";
    static final String JOINT = "joint.bolted-bond";
    /** Resistivity of copper at 20 degrees Celsius, ohm mm2/m (IEC 60028: 1/58). */
    static final double COPPER_OHM_MM2_PER_M = 1.0 / 58;
    /** A figure at its limit, but for the last digits of arithmetic, still meets it. */
    private static final double DIGITS = 1e-9;
    /** Currents below this are what solving leaves, A. */
    static final double NOTHING_A = 1e-6;
    /** Sections are called for to the whole mm2, a thousandth less being the same. */
    private static final double SAME_MM2 = 1e-3;

    private final Plan plan;

    StrapLoads(Plan plan) {
        this.plan = plan;
    }

    static boolean beyond(double share) {
        return share > 1 + DIGITS;
    }

    /** One row a bond over the cases that have an operating point. */
    List<StrapRow> rows(List<SolvedCase> cases) {
        List<StrapRow> rows = new ArrayList<>();
        for (int b = 0; b < plan.bonds().size(); b++) {
            List<StrapState> states = new ArrayList<>();
            for (SolvedCase solved : cases) {
                if (solved.running().point().status() == OperatingPoint.Status.SOLVED) {
                    states.add(state(solved, b));
                }
            }
            rows.add(new StrapRow(b, states, sufficient(plan.bonds().get(b), states)));
        }
        return rows;
    }

    /** The limit of voltage that holds in a case. */
    static Practice.Limit limit(Practice practice, boolean cranking) {
        return practice.limit(cranking ? CRANKING : RUNNING);
    }

    private StrapState state(SolvedCase solved, int b) {
        Plan.Bond bond = plan.bonds().get(b);
        boolean cranking = BodyLevels.cranking(solved.state());
        double found = StrictMath.abs(solved.running().itemA(solved.running().at().bondItem()[b]));
        double amps = found < NOTHING_A ? 0 : found;
        return new StrapState(solved.state().name(), cranking, amps, amps * bond.ohm(), amps * amps * bond.ohm(),
                limit(plan.practice(), cranking).value(), cranking ? Double.NaN : amps / bond.currentMaxA());
    }

    /**
     * The section that brings the voltage lost at the same currents to the limits, and the one that carries the current:
     * conductors of like shape give off heat through their surface, so I^2 / S goes with the root of S, and S with I^(4/3).
     */
    private SufficientStrap sufficient(Plan.Bond bond, List<StrapState> states) {
        if (!(bond.lengthMm() > 0)) {
            return null;
        }
        double joints = 2 * plan.practice().value(JOINT) / 1000;
        double ohmMm2PerM = COPPER_OHM_MM2_PER_M * plan.practice().value(LAY);
        StrapState dropState = null;
        StrapState ratingState = null;
        double allowedOhm = Double.POSITIVE_INFINITY;
        for (StrapState state : states) {
            if (state.currentA() > 0 && state.limitV() / state.currentA() < allowedOhm) {
                allowedOhm = state.limitV() / state.currentA();
                dropState = state;
            }
            if (state.currentA() > 0 && state.loadShare() > (ratingState == null ? 0 : ratingState.loadShare())) {
                ratingState = state;
            }
        }
        double forDrop = dropState == null ? 0
                : allowedOhm > joints ? ohmMm2PerM * bond.lengthMm() / 1000 / (allowedOhm - joints) : Double.POSITIVE_INFINITY;
        boolean rated = ratingState != null && bond.sectionMm2() > 0;
        double forRating = rated ? bond.sectionMm2() * StrictMath.pow(ratingState.loadShare(), 4.0 / 3) : 0;
        double section = StrictMath.max(1, StrictMath.ceil(StrictMath.max(forDrop, forRating) - SAME_MM2));
        return dropState == null ? null
                : new SufficientStrap(section, bond.lengthMm(), forDrop, dropState, forRating, rated ? ratingState : null, joints,
                        ohmMm2PerM);
    }
}
