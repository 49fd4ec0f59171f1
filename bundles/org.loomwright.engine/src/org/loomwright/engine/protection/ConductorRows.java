// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
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
    private final boolean shortCircuitOnly;

    ConductorRows(Plan plan, List<SolvedCase> cases, SupplyGraph graph, DeviceCurves curves) {
        this.plan = plan;
        this.cases = cases;
        this.graph = graph;
        this.curves = curves;
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
        OverloadFigures figures = figures(largest(feeds), 1, heat, overload);
        Verdict clears = Verdict.NOT_NEEDED;
        ShortTransient worst = null;
        Verdict shortTime = Verdict.NOT_NEEDED;
        for (Feed feed : feeds) {
            clears = clears.worse(clears(feed));
            ShortTransient transientHeat = transientOf(feed, heat);
            if (transientHeat != null) {
                worst = worst == null || transientHeat.peakC() > worst.peakC() ? transientHeat : worst;
                shortTime = shortTime.worse(feed.next().isEmpty() ? Verdict.NO_DEVICE : transientHeat.verdict());
            }
            if (feed.next().isEmpty()) {
                figures = figures(-1, 1, heat, overload);
            }
        }
        return new ConductorProtection(conductor, true, feeds, List.of(), overload, figures, worst,
                conditions(figures, overload, shortTime, clears));
    }

    private ConductorProtection returning(int conductor, List<ReturnDuty> duties, ConductorHeat heat) {
        ReturnDuty first = duties.get(0);
        boolean overload = canOverload(first.smallest().conductor(), first.smallest().terminal());
        OverloadFigures figures = figures(first.protector(), StrictMath.min(1, first.share()), heat, overload);
        ShortTransient worst = null;
        Verdict shortTime = Verdict.NOT_NEEDED;
        for (ReturnDuty duty : duties) {
            CurvePair curve = duty.protector() < 0 ? null : curves.cold(duty.protector());
            double share = duty.share();
            ShortTransient found = ShortTransient.of(heat, duty.smallestA(), duty.largestA(),
                    amps -> curve == null ? Double.POSITIVE_INFINITY : curve.slowestS(amps / share),
                    curve == null ? new double[0] : scaled(curve.slowestGatesA(), share));
            worst = worst == null || found.peakC() > worst.peakC() ? found : worst;
            shortTime = shortTime.worse(duty.protector() < 0 && found.verdict() != Verdict.HOLDS ? Verdict.NO_DEVICE
                    : found.verdict());
        }
        return new ConductorProtection(conductor, false, List.of(), duties, overload, figures, worst,
                conditions(figures, overload, shortTime, Verdict.NOT_NEEDED));
    }

    private Conditions conditions(OverloadFigures figures, boolean overload, Verdict shortTime, Verdict clears) {
        boolean only = !overload && shortCircuitOnly;
        return new Conditions(only ? Verdict.NOT_NEEDED : figures.ratingVerdict(),
                overload ? figures.overloadVerdict() : Verdict.NOT_NEEDED, shortTime, clears);
    }

    /** Condition (d) for one feed. A fault to a body without any way back carries nothing and is not judged. */
    private Verdict clears(Feed feed) {
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
            } else {
                here = feed.next().isEmpty() ? Verdict.NO_DEVICE : fault.clearing().known() ? Verdict.FAILS : Verdict.UNKNOWN;
            }
            verdict = verdict.worse(here);
        }
        return verdict;
    }

    /** Condition (c) for one feed; null when no fault flows through it. */
    private ShortTransient transientOf(Feed feed, ConductorHeat heat) {
        Fault far = feed.smallestFar();
        Fault near = feed.largestNear();
        if (far == null || near == null) {
            return null;
        }
        List<Double> gates = new ArrayList<>();
        for (int k = 0; k < feed.upstream().size(); k++) {
            CurvePair curve = curves.cold(feed.upstream().get(k));
            for (double gate : curve == null ? new double[0] : curve.slowestGatesA()) {
                gates.add(gate / feed.shares().get(k));
            }
        }
        ShortTransient swept = ShortTransient.of(heat, far.throughA(), near.throughA(), amps -> seconds(feed, amps),
                gates.stream().mapToDouble(Double::doubleValue).toArray());
        return followed(feed, heat, swept);
    }

    /** The faults themselves, followed device by device, where that comes out hotter than the sweep. */
    private static ShortTransient followed(Feed feed, ConductorHeat heat, ShortTransient swept) {
        ShortTransient worst = swept;
        for (Fault fault : feed.faults()) {
            if (fault.throughA() > 0 && fault.clearing().steps().size() > 1) {
                double hotC = heat.startC();
                double beforeS = 0;
                for (Clearing.Step step : fault.clearing().steps()) {
                    hotC = heat.afterC(hotC, step.throughA(), step.atS() - beforeS);
                    beforeS = step.atS();
                }
                if (hotC > worst.peakC()) {
                    worst = new ShortTransient(swept.smallestA(), swept.largestA(), swept.startC(), hotC, fault.throughA(),
                            fault.clearing().seconds(), swept.limitC(), swept.k(),
                            StrictMath.max(swept.letThroughA2s(), fault.clearing().letThroughA2s()), swept.withstandA2s());
                }
            }
        }
        return worst;
    }

    /** The soonest of the devices in series; of several side by side the last, for all of them have to open. */
    private double seconds(Feed feed, double amps) {
        double soonestS = Double.POSITIVE_INFINITY;
        double lastS = 0;
        for (int k = 0; k < feed.upstream().size(); k++) {
            CurvePair curve = curves.cold(feed.upstream().get(k));
            double seconds = curve == null ? Double.POSITIVE_INFINITY : curve.slowestS(amps * feed.shares().get(k));
            if (feed.next().size() > 1 && feed.next().contains(feed.upstream().get(k))) {
                lastS = StrictMath.max(lastS, seconds);
            } else if (feed.next().size() <= 1 || feed.shares().get(k) >= 1 - 1e-9) {
                soonestS = StrictMath.min(soonestS, seconds);
            }
        }
        return feed.next().size() > 1 ? StrictMath.min(lastS, soonestS) : soonestS;
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

    private int largest(List<Feed> feeds) {
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

    private static double[] scaled(double[] amps, double factor) {
        double[] result = amps.clone();
        for (int i = 0; i < result.length; i++) {
            result[i] *= factor;
        }
        return result;
    }
}
