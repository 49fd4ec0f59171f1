// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.protection.Fault.End;
import org.loomwright.engine.protection.Fault.Target;

/** Judges conductors by the four conditions of "protected" (IEC 60364-4-43 and 60364-5-54; limits of the practice). */
final class ConductorRows {
    static final String CLEARING_TIME = "fault-clears.time";
    static final String RATIO = "device-rating.ratio";
    static final String RATIO_FIXED = "device-rating.ratio-fixed";
    static final String OVERLOAD = "overload-band.factor";
    /** Choice of the practice; without it circuits that cannot overload need all conditions but (b). */
    static final String FIXED_LOADS = "protection.fixed-loads";
    static final String SHORT_CIRCUIT_ONLY = "shortCircuitOnly";

    private final Plan plan;
    private final List<SolvedCase> cases;
    private final SupplyGraph graph;
    private final DeviceCurves curves;
    private final ConductorTransients transients;
    private final boolean shortCircuitOnly;

    ConductorRows(Plan plan, List<SolvedCase> cases, SupplyGraph graph, DeviceCurves curves) {
        this.plan = plan;
        this.cases = cases;
        this.graph = graph;
        this.curves = curves;
        transients = new ConductorTransients(curves);
        Practice.Choice choice = plan.practice().choices().get(FIXED_LOADS);
        shortCircuitOnly = choice != null && SHORT_CIRCUIT_ONLY.equals(choice.value());
    }

    ConductorProtection row(int conductor, List<Feed> feeds, List<ReturnDuty> duties) {
        boolean supply = graph.supply(plan.conductors().get(conductor).a());
        if (feeds.isEmpty() && duties.isEmpty()) {
            return new ConductorProtection(conductor, supply, feeds, duties, false, null, null,
                    new Conditions(Verdict.NOT_NEEDED, Verdict.NOT_NEEDED, Verdict.NOT_NEEDED, Verdict.NOT_NEEDED));
        }
        ConductorHeat heat = ConductorHeat.of(plan, cases, conductor);
        return supply ? supply(conductor, feeds, heat) : returning(conductor, duties, heat);
    }

    private ConductorProtection supply(int conductor, List<Feed> feeds, ConductorHeat heat) {
        boolean overload = feeds.size() > 1 || canOverload(conductor, feeds.get(0).farTerminal());
        List<Feed> needed = feeds.stream().filter(feed -> mayExceed(feed, heat.groupIzA())).toList();
        boolean anyBare = feeds.stream().anyMatch(feed -> bare(feed, heat));
        OverloadFigures figures = figures(anyBare ? -1 : nextDevice(feeds), 1, heat, overload);
        Verdict clears = Verdict.NOT_NEEDED;
        ShortTransient worst = null;
        Verdict shortTime = Verdict.NOT_NEEDED;
        for (Feed feed : needed) {
            clears = clears.worse(clears(feed, heat));
            ShortTransient transientHeat = transients.of(feed, heat);
            if (transientHeat != null) {
                worst = worst == null || transientHeat.peakC() > worst.peakC() ? transientHeat : worst;
                shortTime = shortTime.worse(bare(feed, heat) ? Verdict.NO_DEVICE : transientHeat.verdict());
            }
        }
        return new ConductorProtection(conductor, true, feeds, List.of(), overload, figures, worst,
                conditions(figures, overload || anyBare, needed.isEmpty() || !anyBare && figures.protector() < 0, shortTime,
                        clears));
    }

    /**
     * Whether a fault fed from that side can exceed the conductor's rating, so that protection is needed there. A fault
     * without any way back counts as well: it shows no current because the return is missing.
     */
    static boolean mayExceed(Feed feed, double izA) {
        Fault near = feed.largestNear();
        Fault far = feed.largestFar();
        double mostA = StrictMath.max(near == null ? 0 : near.throughA(), far == null ? 0 : far.throughA());
        return mostA == 0 || Double.isNaN(izA) || mostA > izA;
    }

    /** Whether sources that no device parts from the conductor can exceed its rating; without a rating whether there are any. */
    private static boolean bare(Feed feed, ConductorHeat heat) {
        return Double.isNaN(heat.izA()) ? feed.bareA() > 0 : feed.bareA() > heat.izA();
    }

    /** Judged by the devices whose faults it carries; faults without a device count only where there are no others. */
    private ConductorProtection returning(int conductor, List<ReturnDuty> duties, ConductorHeat heat) {
        List<ReturnDuty> judged = duties.stream().filter(duty -> duty.protector() >= 0).toList();
        judged = judged.isEmpty() ? duties : judged;
        ReturnDuty first = largest(judged);
        boolean overload = canOverload(first.smallest().conductor(), first.smallest().terminal());
        boolean harmless = first.protector() < 0 && first.largestA() <= heat.izA();
        OverloadFigures figures = figures(first.protector(), StrictMath.min(1, first.share()), heat, overload);
        ShortTransient worst = null;
        Verdict shortTime = Verdict.NOT_NEEDED;
        for (ReturnDuty duty : judged) {
            ShortTransient found = transients.of(duty, heat);
            worst = worst == null || found.peakC() > worst.peakC() ? found : worst;
            shortTime = shortTime.worse(duty.protector() < 0 && duty.largestA() > heat.izA() ? Verdict.NO_DEVICE
                    : found.verdict());
        }
        return new ConductorProtection(conductor, false, List.of(), duties, overload, figures, worst,
                conditions(figures, overload, harmless, shortTime, Verdict.NOT_NEEDED));
    }

    /** The device with the largest rated current that the return has to bear, its share considered. */
    private ReturnDuty largest(List<ReturnDuty> duties) {
        ReturnDuty found = duties.get(0);
        for (ReturnDuty duty : duties) {
            found = borneA(duty) > borneA(found) ? duty : found;
        }
        return found;
    }

    private double borneA(ReturnDuty duty) {
        return duty.protector() < 0 ? 0
                : StrictMath.min(1, duty.share()) * ((Plan.Protector) plan.elements().get(duty.protector())).ratingA();
    }

    private Conditions conditions(OverloadFigures figures, boolean overload, boolean harmless, Verdict shortTime,
            Verdict clears) {
        boolean only = !overload && shortCircuitOnly;
        return new Conditions(only || harmless ? Verdict.NOT_NEEDED : figures.ratingVerdict(),
                overload && !harmless ? figures.overloadVerdict() : Verdict.NOT_NEEDED, shortTime, clears);
    }

    /** Condition (d) for one feed. A fault to a body without any way back carries nothing and is not judged. */
    private Verdict clears(Feed feed, ConductorHeat heat) {
        double limitS = plan.practice().value(CLEARING_TIME);
        Verdict verdict = Verdict.NOT_NEEDED;
        for (Target target : Target.values()) {
            Fault fault = feed.fault(Extreme.SMALLEST, End.FAR, target);
            if (fault == null || !fault.wayBack() && target == Target.BODY || fault.wayBack() && fault.throughA() == 0) {
                continue;
            }
            Verdict here;
            if (!fault.wayBack()) {
                here = Verdict.FAILS;
            } else if (fault.clearing().within(limitS)) {
                here = Verdict.HOLDS;
            } else if (bare(feed, heat)) {
                here = Verdict.NO_DEVICE;
            } else if (feed.next().isEmpty()) {
                here = Verdict.NOT_NEEDED;
            } else {
                here = fault.clearing().known() ? Verdict.FAILS : Verdict.UNKNOWN;
            }
            verdict = verdict.worse(here);
        }
        return verdict;
    }

    private OverloadFigures figures(int protector, double share, ConductorHeat heat, boolean overload) {
        String limit = overload ? RATIO : RATIO_FIXED;
        double ratio = plan.practice().value(limit);
        double factor = plan.practice().value(OVERLOAD);
        if (protector < 0) {
            return new OverloadFigures(-1, Double.NaN, ratio, limit, heat.groupIzA(), Double.NaN, Double.NaN, factor);
        }
        CurvePair curve = curves.cold(protector);
        double i2A = curve == null ? Double.NaN : share * curve.conventionalA();
        double steadyC = heat.hottest() == null || Double.isNaN(i2A) ? Double.NaN
                : heat.hottest().steadyC(i2A * heat.izA() / heat.groupIzA());
        return new OverloadFigures(protector, share * ((Plan.Protector) plan.elements().get(protector)).ratingA(), ratio, limit,
                heat.groupIzA(), i2A, steadyC, factor);
    }

    private int nextDevice(List<Feed> feeds) {
        int found = -1;
        for (Feed feed : feeds) {
            for (int e : feed.next()) {
                boolean more = found < 0 || ((Plan.Protector) plan.elements().get(e)).ratingA()
                        > ((Plan.Protector) plan.elements().get(found)).ratingA();
                found = more ? e : found;
            }
        }
        return found;
    }

    private boolean canOverload(int conductor, int farTerminal) {
        Set<Integer> consumers = graph.consumersBehind(farTerminal, conductor, -1);
        if (consumers == null) {
            return true;
        }
        for (int e : consumers) {
            if (plan.elements().get(e) instanceof Plan.Demand load
                    && (load.canOverload() || "socket".equals(plan.devices().get(load.device()).kind()))) {
                return true;
            }
        }
        return false;
    }
}
