// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.StudyResult;

/** What sizing shares with the rules, so that what it designs by and what the check judges by cannot drift apart. */
public final class DesignFigures {
    private final CheckContext context;
    private final LoadDrops drops;
    private final Inherited inherited;
    private final Map<SolvedCase, CurrentPaths> running = new IdentityHashMap<>();

    /** Figures of a plan whose cases are solved. */
    public DesignFigures(CheckContext context) {
        this.context = context;
        drops = new LoadDrops(context);
        inherited = new Inherited(context);
    }

    /**
     * A drop that a rule limits.
     *
     * @param parts    what it consists of
     * @param limitV   permitted drop, V
     * @param nominalV nominal voltage of the domain, V; NaN where it does not matter
     * @param limit    name of the practice's limit, or of the rule
     */
    public record LimitedDrop(DropBreakdown parts, double limitV, double nominalV, String limit) {
    }

    /** The drop of a load in a case and what the practice permits; empty where the rule does not look. */
    public Optional<LimitedDrop> drop(SolvedCase solved, int demand) {
        LoadDrops.LoadDrop drop = drops.of(solved, demand);
        return drop == null ? Optional.empty()
                : Optional.of(new LimitedDrop(drop.breakdown(), drop.limit() * drop.nominalV(), drop.nominalV(),
                        drop.limitName()));
    }

    /** How far the voltage at a load's terminals may fall below its source's in a case, for the least voltage it is made for. */
    public Optional<LimitedDrop> undervolt(SolvedCase solved, int demand) {
        Plan.Demand load = (Plan.Demand) context.plan().elements().get(demand);
        double limitV = LoadUndervoltRule.limitV(solved, demand, load);
        if (solved.running().at().elementItem()[demand] < 0 || Double.isNaN(limitV)) {
            return Optional.empty();
        }
        DropBreakdown parts = DropBreakdown.of(context.plan(), context.names(), solved.running(),
                running.computeIfAbsent(solved, s -> CurrentPaths.of(context.plan(), s.running())), demand);
        return parts == null ? Optional.empty() : Optional.of(new LimitedDrop(parts, parts.sourceV() - limitV, Double.NaN,
                "load-undervolt"));
    }

    /**
     * A way from a charging source to a battery at the source's full output.
     *
     * @param solved  case that it is judged in
     * @param element id of the source
     * @param battery id of the battery
     * @param drop    what is lost on it, and the limit
     */
    public record ChargeDrop(SolvedCase solved, String element, String battery, LimitedDrop drop) {
    }

    /** The ways of all charging sources to the batteries that they charge. */
    public List<ChargeDrop> chargeDrops() {
        List<ChargeDrop> drops = new ArrayList<>();
        for (ChargePathDropRule.ChargeDrop each : ChargePathDropRule.drops(context)) {
            double nominalV = ((Plan.Cell) context.plan().elements().get(each.cell())).nominalV();
            drops.add(new ChargeDrop(each.state(), context.names().element(each.source()), context.names().element(each.cell()),
                    new LimitedDrop(each.parts(), each.limit().value(), nominalV, each.limit().name())));
        }
        return drops;
    }

    /** Largest permitted rating of a device over the rating of what it protects. */
    public double deviceRatio(int protector) {
        return DeviceRatingRule.ratio(context, protector).value();
    }

    /** Smallest rating of a conductor over the cases, of the cores in parallel together, A; NaN when it is not known. */
    public double smallestIzA(int conductor) {
        DeviceRatingRule.Smallest smallest = DeviceRatingRule.smallest(context, conductor);
        return smallest == null ? Double.NaN : smallest.amps();
    }

    /** Smallest rating that a device needs for its heating current in all cases, A. */
    public double neededA(int protector) {
        Plan.Protector device = (Plan.Protector) context.plan().elements().get(protector);
        ProtectorLoad load = new ProtectorLoad(context, protector, device);
        double share = "fuse".equals(device.kind())
                ? StrictMath.min(context.practice().value("device-loading.warning"), context.practice().value("device-loading.error"))
                : context.practice().value("device-loading.error");
        double neededA = 0;
        for (SolvedCase solved : context.settled()) {
            if (!"cranking".equals(solved.state().kind())) {
                neededA = StrictMath.max(neededA, load.heatingA(solved) / share / load.ambientFactor(solved));
            }
        }
        return neededA;
    }

    /** True for a device that is left to the vehicle's maker. */
    public boolean isInherited(int protector) {
        return inherited.device(protector);
    }

    /** Smallest section of a cable that the practice wants, mm2. */
    public double leastMm2(Plan.Cable cable) {
        return context.practice().value(cable.sheathed() ? SectionMinRule.SHEATHED : SectionMinRule.SINGLE);
    }

    /** How the figures of an element came about, as the check derives them. */
    public static List<StudyResult.ElementFigures> explained(CheckContext context, String element) {
        return new Explain(context).explain(element);
    }

    /** What some of the rules find, waivers and severities applied. */
    public static List<Finding> findings(CheckContext context, Set<String> slugs, Monitor monitor) {
        List<Rule> some = new ArrayList<>();
        for (Rule rule : RuleCatalogue.standard().rules()) {
            if (slugs.contains(rule.slug())) {
                some.add(rule);
            }
        }
        return new RuleRun(RuleCatalogue.of(some)).findings(context, monitor);
    }
}
