// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.DesignFigures;
import org.loomwright.engine.check.DropBreakdown;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.DeviceCurves;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.ReturnDuty;
import org.loomwright.engine.result.Quantity;

/**
 * Demands that follow from a solved plan for any options of the open items: drops and voltages of loads, temperatures, smallest
 * and largest sections, what devices need and permit. Currents are those of the plan as it was solved; where it is a tree and
 * loads draw constant currents, as in the network for the drop, they do not depend on the sections.
 */
final class DesignLimits {
    private final CheckContext context;
    private final Plan plan;
    private final OpenItems open;
    private final DesignFigures figures;
    private final OptionHeat heat;
    private final DeviceCurves curves;
    private final Design design;
    /** Smallest rating over the cases of a conductor with each section, over its rating as it is. */
    private final Map<Integer, double[]> bears = new HashMap<>();

    private DesignLimits(CheckContext context, OpenItems open, GroupMemory groups, OptionRatings ratings) {
        this.context = context;
        this.plan = context.plan();
        this.open = open;
        figures = new DesignFigures(context);
        heat = new OptionHeat(plan, open, groups, ratings);
        curves = new DeviceCurves(plan);
        design = new Design(open);
    }

    /** The demands of a plan that was solved with some options of the open items. */
    static Design of(CheckContext context, OpenItems open, GroupMemory groups, OptionRatings ratings) {
        DesignLimits limits = new DesignLimits(context, open, groups, ratings);
        limits.sections();
        limits.loads();
        limits.charging();
        limits.temperatures();
        limits.devices();
        return limits.design;
    }

    private void sections() {
        for (int i = 0; i < open.cables().size(); i++) {
            OpenItems.CableItem item = open.cable(i);
            Plan.Cable cable = plan.cables().get(item.cables().get(0));
            double leastMm2 = figures.leastMm2(cable);
            for (int o = 0; o < item.options().size(); o++) {
                Plan.SectionOption option = item.options().get(o);
                if (option.sectionMm2() < leastMm2 && context.practice().enabled("section-min")) {
                    design.struck().strike(i, o, new Constraint("section-min", cable.id(), null, Quantity.of(leastMm2, "mm2")));
                }
                if (!(option.r20MaxOhmPerM() > 0)) {
                    design.struck().strike(i, o, new Constraint("incomplete", cable.id(), null,
                            Quantity.of(option.sectionMm2(), "mm2")));
                }
                for (int c : item.conductors()) {
                    terminal(i, o, option, cable, plan.conductors().get(c).a());
                    terminal(i, o, option, cable, plan.conductors().get(c).b());
                }
            }
        }
    }

    private void terminal(int item, int o, Plan.SectionOption option, Plan.Cable cable, int at) {
        Plan.Terminal terminal = plan.terminals().get(at);
        if (option.sectionMm2() > terminal.sectionMaxMm2()) {
            design.struck().strike(item, o, new Constraint("terminal-fit", terminal.id(), null,
                    Quantity.of(terminal.sectionMaxMm2(), "mm2")));
        } else if (option.sectionMm2() < terminal.sectionMinMm2()) {
            design.struck().strike(item, o, new Constraint("terminal-fit", terminal.id(), null,
                    Quantity.of(terminal.sectionMinMm2(), "mm2")));
        }
    }

    private void loads() {
        for (SolvedCase solved : context.settled()) {
            for (Plan.DemandState state : solved.state().demands()) {
                String element = context.names().element(state.demand());
                String where = plan.elements().get(state.demand()).id() + " in " + solved.state().name();
                figures.drop(solved, state.demand()).ifPresent(drop -> drop("drop of " + where, "drop-class", element, solved,
                        drop));
                figures.undervolt(solved, state.demand()).ifPresent(drop -> drop("voltage of " + where, "load-undervolt",
                        element, solved, drop));
            }
        }
    }

    /** The resistance of a conductor at full output is taken as warm as it is now; a later round corrects it. */
    private void charging() {
        if (!context.practice().enabled("charge-path-drop")) {
            return;
        }
        for (DesignFigures.ChargeDrop each : figures.chargeDrops()) {
            drop("drop of charge " + each.element() + " to " + each.battery(), "charge-path-drop", each.element(), each.solved(),
                    each.drop());
        }
    }

    private void drop(String id, String rule, String element, SolvedCase solved, DesignFigures.LimitedDrop drop) {
        if (!context.practice().enabled(rule)) {
            return;
        }
        Map<Integer, double[]> values = new LinkedHashMap<>();
        double openV = 0;
        for (DropBreakdown.Share share : drop.parts().shares()) {
            int item = share.part() == DropBreakdown.Part.CABLE ? open.ofConductor(share.index()) : -1;
            if (item >= 0) {
                openV += share.volts();
                double[] volts = values.computeIfAbsent(item, i -> new double[open.options(i)]);
                double[] with = heat.shares(solved, share.index());
                for (int o = 0; o < volts.length; o++) {
                    volts[o] += share.volts() * with[o];
                }
            }
        }
        design.nominal(id, drop.nominalV());
        design.limit(id, drop.limitV() - (drop.parts().dropV() - openV), values,
                new Constraint(rule, element, solved.state().name(), Quantity.of(drop.limitV(), "V")));
    }

    private void temperatures() {
        for (SolvedCase solved : context.settled()) {
            for (int i = 0; i < open.cables().size(); i++) {
                for (int c : open.cable(i).conductors()) {
                    if (solved.running().conductorA(c) != 0 && context.practice().enabled("conductor-hot")) {
                        temperature(solved, i, c);
                    }
                }
            }
        }
    }

    private void temperature(SolvedCase solved, int item, int conductor) {
        double maxC = solved.ratings().get(conductor).maxC();
        double[] hotC = heat.hotC(solved, conductor);
        for (int o = 0; o < hotC.length; o++) {
            if (hotC[o] > maxC * (1 + 1e-9)) {
                design.struck().strike(item, o, new Constraint("conductor-hot", context.names().conductor(conductor),
                        solved.state().name(), Quantity.of(maxC, "degC")));
            }
        }
    }

    private void devices() {
        for (OpenItems.WayItem way : open.ways()) {
            if (figures.isInherited(way.element()) || !context.practice().enabled("device-loading")) {
                continue;
            }
            double neededA = figures.neededA(way.element());
            int item = open.ofElement(way.element());
            for (int o = 0; o < way.options().size(); o++) {
                if (way.options().get(o).ratingA() < neededA * (1 - 1e-9)) {
                    design.struck().strike(item, o, new Constraint("device-loading", way.id(), null,
                            Quantity.of(neededA, "A")));
                }
            }
        }
        for (int c = 0; c < plan.conductors().size(); c++) {
            double izA = figures.smallestIzA(c);
            if (Double.isNaN(izA)) {
                continue;
            }
            for (int e : context.circuits().upstreamOf(c)) {
                rated("device-rating", c, e, izA, figures.deviceRatio(e), 1, false);
            }
            ConductorProtection row = context.protection().conductor(c);
            if (row.overload() != null && row.supply() && row.overloadPossible()) {
                for (Feed feed : row.feeds()) {
                    for (int e : feed.next()) {
                        rated("overload-band", c, e, row.overload().izA(), row.overload().overloadFactor(), 1, true);
                    }
                }
            } else if (row.overload() != null && !row.supply()) {
                returns(c, row);
            }
        }
    }

    private void returns(int conductor, ConductorProtection row) {
        for (ReturnDuty duty : row.duties()) {
            if (duty.protector() >= 0) {
                double share = StrictMath.min(1, duty.share());
                rated("return-protected", conductor, duty.protector(), row.overload().izA(), row.overload().ratio(), share, false);
                if (row.overloadPossible()) {
                    rated("return-protected", conductor, duty.protector(), row.overload().izA(),
                            row.overload().overloadFactor(), share, true);
                }
            }
        }
    }

    /**
     * A device's rated current, or what it clears for certain, stays below the rating of a conductor by a factor.
     *
     * @param conventional judge by the current that it clears for certain
     */
    private void rated(String rule, int conductor, int protector, double izA, double factor, double share,
            boolean conventional) {
        int cable = open.ofConductor(conductor);
        int way = open.ofElement(protector);
        if (cable < 0 && way < 0 || !context.practice().enabled(rule) || way < 0 && figures.isInherited(protector)
                || Double.isNaN(izA)) {
            return;
        }
        double[] bears = bears(conductor, cable, izA, factor);
        double[] wants = wants(protector, way, share, conventional);
        Constraint meaning = new Constraint(rule, context.names().conductor(conductor), null, Quantity.of(wants[0], "A"));
        if (cable >= 0 && way >= 0) {
            boolean[][] allowed = new boolean[bears.length][wants.length];
            for (int o = 0; o < bears.length; o++) {
                for (int f = 0; f < wants.length; f++) {
                    allowed[o][f] = !(wants[f] > bears[o] * (1 + 1e-9));
                }
            }
            design.pairing(rule + (conventional ? "+ " : " ") + plan.conductors().get(conductor).id() + " "
                    + plan.elements().get(protector).id(), cable, way, allowed, meaning);
            return;
        }
        for (int o = 0; cable >= 0 && o < bears.length; o++) {
            if (wants[0] > bears[o] * (1 + 1e-9)) {
                design.struck().strike(cable, o, meaning);
            }
        }
        for (int f = 0; way >= 0 && f < wants.length; f++) {
            if (wants[f] > bears[0] * (1 + 1e-9)) {
                design.struck().strike(way, f, new Constraint(rule, meaning.element(), null, Quantity.of(bears[0], "A")));
            }
        }
    }

    /** What a conductor permits with each option, or at present, A. */
    private double[] bears(int conductor, int cable, double izA, double factor) {
        if (cable < 0) {
            return new double[] {factor * izA};
        }
        double[] shares = bears.computeIfAbsent(conductor, this::smallest);
        double[] amps = new double[shares.length];
        for (int o = 0; o < amps.length; o++) {
            amps[o] = shares[o] * factor * izA;
        }
        return amps;
    }

    private double[] smallest(int conductor) {
        double[] least = new double[open.options(open.ofConductor(conductor))];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        double nowA = Double.POSITIVE_INFINITY;
        for (SolvedCase solved : context.cases()) {
            double here = solved.ratings().get(conductor).correctedA();
            nowA = Double.isNaN(here) ? nowA : StrictMath.min(nowA, here);
            ConductorRating[] ratings = heat.ratings(solved, conductor);
            for (int o = 0; o < least.length; o++) {
                double ratedA = ratings[o].correctedA();
                least[o] = StrictMath.min(least[o], Double.isNaN(ratedA) ? 0 : ratedA);
            }
        }
        for (int o = 0; o < least.length; o++) {
            least[o] /= nowA;
        }
        return least;
    }

    private double[] wants(int protector, int way, double share, boolean conventional) {
        Plan.Protector device = (Plan.Protector) plan.elements().get(protector);
        double coldC = curves.coldC(device.device());
        if (way < 0) {
            return new double[] {share * (conventional ? conventionalA(device.ratingA(), device.curve(), coldC)
                    : device.ratingA())};
        }
        return open.way(way).options().stream().mapToDouble(option -> share * (conventional
                ? conventionalA(option.ratingA(), option.curve(), coldC) : option.ratingA())).toArray();
    }

    /** Not known without a curve: then the rule says nothing either. */
    private static double conventionalA(double ratingA, Plan.FuseCurve curve, double ambientC) {
        Optional<CurvePair> pair = curve == null ? Optional.empty() : CurvePair.of(ratingA, curve);
        return pair.isEmpty() ? Double.NaN : pair.get().at(ambientC).conventionalA();
    }

    /** Resistance of a core's metal with an option over that at present. */
    static double ohmShare(Plan.Conductor core, Plan.SectionOption option) {
        return option.r20MaxOhmPerM() / core.r20MaxOhmPerM();
    }
}
