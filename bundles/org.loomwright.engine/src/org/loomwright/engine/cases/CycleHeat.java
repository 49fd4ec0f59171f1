// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Copper;
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
    /** Shares below this warm nothing worth mentioning. */
    private static final double LITTLE = 1e-3;
    /** Temperatures within this of those that their currents call for have settled, K. */
    private static final double SETTLED_K = 0.01;

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
     * What warms the conductors of a network.
     *
     * @param ratings ratings that let each conductor warm by its own current
     * @param heldC   temperature at which a conductor is held instead, degrees Celsius; NaN for none
     */
    record Warming(List<ConductorRating> ratings, double[] heldC) {
    }

    /**
     * Temperature that each conductor has by the currents of its cycle, degrees Celsius, at most that of melting copper; NaN
     * for one that warms steadily by its own current.
     */
    double[] peakC(SolvedCase.Solved running, SolvedCase.Solved base, List<ConductorRating> ratings) {
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

    /**
     * Lets conductors come to their peaks. A conductor whose peak the current while on brings about is given the rating by
     * which that current, if it stayed, would warm it to just that peak: a current that is a little different then warms it
     * accordingly, and few rounds are needed. Others are held at their temperatures.
     */
    Warming warming(double[] peakC, SolvedCase.Solved running, List<ConductorRating> ratings) {
        if (!duties) {
            return new Warming(ratings, peakC);
        }
        List<ConductorRating> warming = new ArrayList<>(ratings);
        double[] heldC = peakC.clone();
        for (int c = 0; c < heldC.length; c++) {
            ConductorRating rating = ratings.get(c);
            double onA = StrictMath.abs(running.conductorA(c));
            double rise = (peakC[c] - rating.ambientC()) / (rating.maxC() - rating.referenceC());
            if (rise > LITTLE && peakC[c] < FlowOptions.COPPER_MELTS_C && onA > LITTLE * rating.atReferenceA()) {
                double share = StrictMath.sqrt(Copper.factor(peakC[c]) / Copper.factor(rating.maxC()) / rise) * onA
                        / rating.atReferenceA();
                warming.set(c, new ConductorRating(rating.tableA() * share, rating.referenceC(), rating.maxC(),
                        rating.ambientC(), rating.ambientFactor(), rating.counted(), rating.groupingFactor(), rating.source()));
                heldC[c] = Double.NaN;
            }
        }
        return new Warming(warming, heldC);
    }

    /** Whether the conductors are as warm as the currents found with that warmth call for. */
    boolean settled(SolvedCase.Solved running, double[] peakC, List<ConductorRating> ratings) {
        for (int c = 0; duties && c < peakC.length; c++) {
            ConductorTemperature thermal = Ratings.thermal(plan, c, ratings.get(c));
            if (thermal != null) {
                double calledC = Double.isNaN(peakC[c]) ? thermal.steadyC(running.conductorA(c)) : peakC[c];
                if (StrictMath.abs(running.conductorC(c) - StrictMath.min(calledC, FlowOptions.COPPER_MELTS_C)) > SETTLED_K) {
                    return false;
                }
            }
        }
        return true;
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
