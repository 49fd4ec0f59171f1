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
 * <li>One that carries a starter without a period: from ambient for the seconds that the starter is on; where the case states
 * none, at ambient, since a start is over long before the cable is warm (common practice).
 * <li>All others warm steadily by their own current, within the network.
 * </ul>
 */
final class CycleHeat {
    private final Plan plan;
    private final Plan.Case state;
    private final boolean any;

    CycleHeat(Plan plan, Plan.Case state) {
        this.plan = plan;
        this.state = state;
        boolean found = false;
        for (Plan.DemandState demand : state.demands()) {
            found |= hasDuty(demand) || isStart(demand);
        }
        any = found;
    }

    /** True when a load of the case has a duty, so that its network without these loads differs. */
    boolean duties() {
        return state.demands().stream().anyMatch(CycleHeat::hasDuty);
    }

    /**
     * Temperature at which each conductor is to be held, degrees Celsius, at most that of melting copper; NaN for one that
     * warms steadily by its own current.
     */
    double[] heldC(SolvedCase.Solved running, SolvedCase.Solved base, List<ConductorRating> ratings) {
        double[] heldC = new double[plan.conductors().size()];
        Arrays.fill(heldC, Double.NaN);
        if (!any) {
            return heldC;
        }
        List<List<DutyCycle>> duties = new ArrayList<>();
        double[] startS = new double[heldC.length];
        Arrays.fill(startS, Double.NaN);
        heldC = heldC.clone();
        for (int c = 0; c < heldC.length; c++) {
            duties.add(new ArrayList<>());
        }
        collect(running, duties, startS);
        for (int c = 0; c < heldC.length; c++) {
            ConductorTemperature thermal = Ratings.thermal(plan, c, ratings.get(c));
            if (thermal != null) {
                double onA = StrictMath.abs(running.conductorA(c));
                double offA = StrictMath.abs(base.conductorA(c));
                double peakC = peakC(thermal, duties.get(c), startS[c], onA, offA);
                heldC[c] = Double.isNaN(peakC) ? peakC : StrictMath.min(peakC, FlowOptions.COPPER_MELTS_C);
            }
        }
        return heldC;
    }

    private static double peakC(ConductorTemperature thermal, List<DutyCycle> duties, double startS, double onA, double offA) {
        if (!Double.isNaN(startS)) {
            return thermal.afterC(thermal.ambientC(), onA, startS);
        } else if (!duties.isEmpty()) {
            return DutyCycle.covering(duties).peakC(thermal, onA, offA);
        }
        return offA > onA ? thermal.steadyC(offA) : Double.NaN;
    }

    private void collect(SolvedCase.Solved running, List<List<DutyCycle>> duties, double[] startS) {
        LoadPaths paths = new LoadPaths(running);
        for (Plan.DemandState demand : state.demands()) {
            int item = running.at().elementItem()[demand.demand()];
            if (item < 0 || !hasDuty(demand) && !isStart(demand)) {
                continue;
            }
            boolean[] carries = paths.carriers(item);
            for (int c = 0; c < carries.length; c++) {
                if (carries[c] && hasDuty(demand)) {
                    duties.get(c).add(new DutyCycle(demand.onS(), demand.periodS()));
                } else if (carries[c]) {
                    startS[c] = StrictMath.max(Double.isNaN(startS[c]) ? 0 : startS[c],
                            Double.isNaN(demand.onS()) ? 0 : demand.onS());
                }
            }
        }
    }

    private static boolean hasDuty(Plan.DemandState demand) {
        return demand.factor() > 0 && demand.onS() > 0 && demand.onS() < demand.periodS();
    }

    private boolean isStart(Plan.DemandState demand) {
        int device = plan.elements().get(demand.demand()).device();
        return demand.factor() > 0 && Double.isNaN(demand.periodS()) && "starter".equals(plan.devices().get(device).kind());
    }
}
