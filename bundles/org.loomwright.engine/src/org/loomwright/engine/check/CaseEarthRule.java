// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.heat.Adiabatic;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.heat.Ratings;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * The metal case of a device is earthed: bolted to a body, or by a conductor at most so many sizes below the supply conductor
 * that bears a fault of the supply to the case until it is cleared.
 */
final class CaseEarthRule implements Rule {
    private static final String SIZES = "case-earth.sizes-below";

    @Override
    public String slug() {
        return "case-earth";
    }

    @Override
    public String says() {
        return "A metal case is earthed by a conductor that bears a fault.";
    }

    @Override
    public List<String> limits() {
        return List.of(SIZES);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Plan plan = context.plan();
        for (int t = 0; t < plan.terminals().size(); t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            if (!"case".equals(terminal.role()) || terminal.device() < 0 || plan.devices().get(terminal.device()).body() >= 0) {
                continue;
            }
            int supply = thickest(plan, terminal.device(), -1, context);
            int earth = thickest(plan, -1, t, context);
            if (earth < 0) {
                findings.add(none(context, terminal, supply));
            } else if (supply >= 0) {
                sized(context, terminal, earth, supply, findings);
                withstands(context, terminal, earth, supply, findings);
            }
        }
        return findings;
    }

    /** The thickest supply conductor at a device, or the thickest conductor at a terminal; -1 for none. */
    private static int thickest(Plan plan, int device, int terminal, CheckContext context) {
        int found = -1;
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor core = plan.conductors().get(c);
            boolean at = terminal >= 0 ? core.a() == terminal || core.b() == terminal
                    : context.protection().conductor(c).supply() && (plan.terminals().get(core.a()).device() == device
                            || plan.terminals().get(core.b()).device() == device);
            if (at && (found < 0 || core.sectionMm2() > plan.conductors().get(found).sectionMm2())) {
                found = c;
            }
        }
        return found;
    }

    private Finding none(CheckContext context, Plan.Terminal terminal, int supply) {
        Plan plan = context.plan();
        String device = plan.devices().get(terminal.device()).id();
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, device, "The metal case of " + context.names().shown(device)
                + " is not earthed: no conductor at " + context.names().shown(terminal.id()) + ", and it is bolted to no body")
                .because("A fault of its supply to the case opens nothing; the case stays live.");
        if (supply >= 0) {
            builder.causedBy(context.names().conductor(supply), "supply of the device", null);
            double leastMm2 = leastMm2(context, supply);
            builder.mend(Mend.inWords("Run a conductor of at least " + Figures.three(leastMm2) + " mm2 from "
                    + context.names().shown(terminal.id()) + " to the negative bar or body of its box."));
        }
        return builder.build();
    }

    /** Section so many sizes on offer below that of the supply conductor, mm2. */
    private static double leastMm2(CheckContext context, int supply) {
        Plan.Conductor core = context.plan().conductors().get(supply);
        List<Double> smaller = context.plan().cables().get(core.cable()).options().stream()
                .map(Plan.SectionOption::sectionMm2).filter(section -> section < core.sectionMm2()).sorted().toList();
        int below = (int) StrictMath.round(context.practice().value(SIZES));
        return below <= 0 || smaller.isEmpty() ? core.sectionMm2() : smaller.get(StrictMath.max(0, smaller.size() - below));
    }

    private void sized(CheckContext context, Plan.Terminal terminal, int earth, int supply, List<Finding> findings) {
        double leastMm2 = leastMm2(context, supply);
        double sectionMm2 = context.plan().conductors().get(earth).sectionMm2();
        if (!Beyond.below(sectionMm2, leastMm2)) {
            return;
        }
        Practice.Limit sizes = context.practice().limit(SIZES);
        Quantity is = Quantity.of(sectionMm2, "mm2");
        Quantity wanted = Quantity.of(leastMm2, "mm2");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(earth),
                context.names().shownConductor(earth) + " earths the case of "
                        + context.names().shown(context.plan().devices().get(terminal.device()).id()) + " with " + is
                        + ", permitted are " + wanted + " and more")
                .figures(is, wanted)
                .causedBy(context.names().conductor(supply), "supply conductor",
                        Quantity.of(context.plan().conductors().get(supply).sectionMm2(), "mm2"));
        new SectionMends(context.plan(), context.names()).atLeast(
                context.plan().cables().get(context.plan().conductors().get(earth).cable()), leastMm2).ifPresent(builder::mend);
        findings.add(builder.derived(new Derivation("smallest section", wanted, "so many sizes below the supply conductor",
                List.of(new Input("supply", Quantity.of(context.plan().conductors().get(supply).sectionMm2(), "mm2"),
                        context.names().conductor(supply)),
                        new Input("sizes", Quantity.of(sizes.value(), "1"), sizes.name() + ", " + sizes.source())),
                sizes.source())).build());
    }

    /** A fault of the supply to the case takes the supply conductor's current, less what the case conductor adds to the loop. */
    private void withstands(CheckContext context, Plan.Terminal terminal, int earth, int supply, List<Finding> findings) {
        Plan plan = context.plan();
        ConductorProtection row = context.protection().conductor(supply);
        Plan.Conductor core = plan.conductors().get(earth);
        Plan.Cable cable = plan.cables().get(core.cable());
        DeviceRatingRule.Smallest smallest = DeviceRatingRule.smallest(context, earth);
        ConductorTemperature thermal = smallest == null ? null : Ratings.thermal(plan, earth, smallest.rating());
        Feed feed = row.feeds().stream().filter(f -> f.smallestFar() != null && f.largestFar() != null).findFirst().orElse(null);
        CurvePair curve = row.overload() == null || row.overload().protector() < 0 ? null
                : ProtectionReasons.cold(context, row.overload().protector());
        if (thermal == null || feed == null || curve == null || Double.isNaN(cable.shortTimeMaxC())) {
            return;
        }
        Fault small = feed.smallestFar();
        double addedOhm = core.r20MaxOhmPerM() * Copper.factor(cable.maxC()) * cable.lengthMm() / 1000 + core.jointsOhm();
        double fromA = small.throughA() * small.loopOhm() / (small.loopOhm() + addedOhm);
        double startC = smallest.rating().ambientC();
        double peakC = ShortPeak.ofC(thermal, startC, curve, 1, fromA, StrictMath.max(fromA, feed.largestFar().throughA()));
        if (!Beyond.above(peakC, cable.shortTimeMaxC())) {
            return;
        }
        Quantity is = Quantity.of(peakC, "degC");
        Quantity wanted = Quantity.of(cable.shortTimeMaxC(), "degC");
        String device = context.names().element(row.overload().protector());
        findings.add(Finding.of(slug(), Severity.ERROR, context.names().conductor(earth),
                context.names().shownConductor(earth) + " reaches " + is + " when the supply of "
                        + context.names().shown(plan.devices().get(terminal.device()).id())
                        + " touches the case, for a moment it bears " + wanted)
                .figures(is, wanted).causedBy(device, "device that clears the fault", null)
                .mend(Mend.inWords("Use at least the section of the supply conductor, "
                        + Quantity.of(plan.conductors().get(supply).sectionMm2(), "mm2") + "."))
                .derived(new Derivation("temperature after the fault", is, "thermal equation along the slowest curve",
                        List.of(new Input("I smallest", Quantity.of(fromA, "A"), "with the case conductor in the loop"),
                                new Input("I largest", Quantity.of(feed.largestFar().throughA(), "A"), "at the device"),
                                new Input("start", Quantity.of(startC, "degC"), "hottest ambient"),
                                new Input("k", Quantity.of(Adiabatic.k(startC, cable.shortTimeMaxC()), "1"), "A s^0.5 / mm2"),
                                new Input("S", Quantity.of(core.sectionMm2(), "mm2"), cable.id())),
                        "IEC 60364-5-54; IEC 60949")).build());
    }
}
