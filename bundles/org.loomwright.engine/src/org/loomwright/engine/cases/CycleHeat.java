// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.DutyCycle;
import org.loomwright.engine.heat.Ratings;

/**
 * Temperatures of conductors whose current comes and goes in a case.
 *
 * <ul>
 * <li>A conductor that carries loads with a duty: the peak of the periodic solution of the thermal equation.
 * <li>One that carries more while those loads are off (a battery's cable that then charges): steady at that current.
 * <li>All others warm steadily by their own current, within the network.
 * </ul>
 */
final class CycleHeat {
    private final Plan plan;
    private final Plan.Case state;
    private final boolean duties;

    CycleHeat(Plan plan, Plan.Case state) {
        this.plan = plan;
        this.state = state;
        duties = state.demands().stream().anyMatch(CycleHeat::hasDuty);
    }

    /** True when a load of the case has a duty, so that its network without these loads differs. */
    boolean duties() {
        return duties;
    }

    /**
     * Temperature at which each conductor is to be held, degrees Celsius, at most that of melting copper; NaN for one that
     * warms steadily by its own current.
     */
    double[] heldC(SolvedCase.Solved running, SolvedCase.Solved base, List<ConductorRating> ratings) {
        double[] heldC = new double[plan.conductors().size()];
        Arrays.fill(heldC, Double.NaN);
        if (!duties) {
            return heldC;
        }
        List<List<DutyCycle>> carried = carried(running);
        for (int c = 0; c < heldC.length; c++) {
            ConductorTemperature thermal = Ratings.thermal(plan, c, ratings.get(c));
            if (thermal == null) {
                continue;
            }
            double onA = StrictMath.abs(running.conductorA(c));
            double offA = StrictMath.abs(base.conductorA(c));
            if (!carried.get(c).isEmpty()) {
                heldC[c] = DutyCycle.covering(carried.get(c)).peakC(thermal, onA, offA);
            } else if (offA > onA) {
                heldC[c] = thermal.steadyC(offA);
            }
            heldC[c] = heldC[c] > FlowOptions.COPPER_MELTS_C ? FlowOptions.COPPER_MELTS_C : heldC[c];
        }
        return heldC;
    }

    /** Duties of the loads that each conductor carries. */
    private List<List<DutyCycle>> carried(SolvedCase.Solved running) {
        List<List<DutyCycle>> carried = new ArrayList<>();
        for (int c = 0; c < plan.conductors().size(); c++) {
            carried.add(new ArrayList<>());
        }
        LoadPaths paths = new LoadPaths(running);
        for (Plan.DemandState demand : state.demands()) {
            int item = running.at().elementItem()[demand.demand()];
            if (item >= 0 && hasDuty(demand)) {
                boolean[] carries = paths.carriers(item);
                for (int c = 0; c < carries.length; c++) {
                    if (carries[c]) {
                        carried.get(c).add(new DutyCycle(demand.onS(), demand.periodS()));
                    }
                }
            }
        }
        return carried;
    }

    private static boolean hasDuty(Plan.DemandState demand) {
        return demand.factor() > 0 && demand.onS() > 0 && demand.onS() < demand.periodS();
    }
}
