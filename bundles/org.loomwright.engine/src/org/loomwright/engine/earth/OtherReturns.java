// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CurrentPaths;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.ReturnRow.OtherWay;
import org.loomwright.engine.earth.ReturnRow.Way;
import org.loomwright.engine.heat.Copper;

/**
 * What the other kind of return would take. A return by conductor is laid beside the supply that carries this load alone, of the
 * same section, back to where that begins; a return through the structure goes from the load to the nearest permitted earth
 * point.
 */
final class OtherReturns {
    private static final double COPPER_KG_PER_MM3 = 1e-6 * Copper.DENSITY_KG_PER_DM3;
    /** Currents closer than this share of the load's count as the load's alone. */
    private static final double SAME_CURRENT = 1e-6;

    private final Plan plan;
    private final ReturnPermits permits;

    OtherReturns(Plan plan, ReturnPermits permits) {
        this.plan = plan;
        this.permits = permits;
    }

    /** The other way; null when it cannot be told. */
    OtherWay of(SolvedCase.Solved running, ReturnImpedance impedance, int demand, Way now, CurrentPaths.Path supply,
            CurrentPaths.Path back) {
        double amps = StrictMath.abs(running.elementA(demand));
        List<Integer> ownReturn = alone(running, back, amps);
        double copperNowKg = ownReturn.stream().mapToDouble(this::copperKg).sum();
        if (now == Way.OWN) {
            return structure(running, impedance, demand, ownReturn, copperNowKg, back.end());
        }
        List<Integer> ownSupply = alone(running, supply, amps);
        if (ownSupply.isEmpty()) {
            return null;
        }
        double lengthMm = ownSupply.stream().mapToDouble(this::lengthMm).sum();
        double volts = 0;
        for (int conductor : ownSupply) {
            int item = running.at().conductorItem()[conductor];
            volts += amps * impedance.network().ohm(item);
        }
        return new OtherWay(Way.OWN, lengthMm, plan.conductors().get(ownSupply.get(0)).sectionMm2(),
                ownSupply.stream().mapToDouble(this::copperKg).sum(), copperNowKg, volts, null);
    }

    private OtherWay structure(SolvedCase.Solved running, ReturnImpedance impedance, int demand, List<Integer> ownReturn,
            double copperNowKg, int home) {
        int place = plan.devices().get(plan.elements().get(demand).device()).place();
        int nearest = -1;
        double nearestMm = Double.NaN;
        for (int t = 0; t < plan.terminals().size(); t++) {
            Plan.Terminal point = plan.terminals().get(t);
            if (point.device() < 0 && point.body() >= 0 && permits.permitted(demand, point.body())
                    && impedance.joined(running.at().terminalNode()[t], home)) {
                double mm = PlaceDistance.between(plan, place, point.place());
                if (mm < nearestMm || Double.isNaN(nearestMm) && !Double.isNaN(mm)) {
                    nearest = t;
                    nearestMm = mm;
                }
            }
        }
        if (nearest < 0 || ownReturn.isEmpty()) {
            return null;
        }
        Plan.Conductor core = plan.conductors().get(ownReturn.get(0));
        double lengthMm = nearestMm * (1 + plan.practice().value("length.slack")) + 2 * plan.practice().value("length.tail");
        double stubOhm = core.r20MaxOhmPerM() * lengthMm / 1000 + 2 * plan.practice().value("joint.end-max") / 1000;
        double structureOhm = impedance.column(running.at().terminalNode()[nearest], home)[running.at().terminalNode()[nearest]];
        return new OtherWay(Way.STRUCTURE, lengthMm, core.sectionMm2(), core.sectionMm2() * lengthMm * COPPER_KG_PER_MM3,
                copperNowKg, StrictMath.abs(running.elementA(demand)) * (stubOhm + structureOhm),
                        plan.terminals().get(nearest).id());
    }

    /** Conductors on a way that carry no other current than the load's. */
    private List<Integer> alone(SolvedCase.Solved running, CurrentPaths.Path way, double amps) {
        List<Integer> alone = new ArrayList<>();
        for (CurrentPaths.Step step : way.steps()) {
            boolean conductor = step.owner() != null && step.owner().kind() == NetworkIndex.Kind.CONDUCTOR;
            if (conductor && StrictMath.abs(StrictMath.abs(running.itemA(step.item())) - amps) <= SAME_CURRENT * amps) {
                alone.add(step.owner().index());
            }
        }
        return alone;
    }

    private double copperKg(int conductor) {
        return plan.conductors().get(conductor).sectionMm2() * lengthMm(conductor) * COPPER_KG_PER_MM3;
    }

    private double lengthMm(int conductor) {
        return plan.cables().get(plan.conductors().get(conductor).cable()).lengthMm();
    }
}
