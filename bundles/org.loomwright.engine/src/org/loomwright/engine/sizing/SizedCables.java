// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.DesignFigures;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.sizing.SizingResult.SizedCable;
import org.loomwright.engine.sizing.SizingResult.SizedProtector;

/** The cables and protectors of a sizing with their figures, as the flow solver confirms them. */
final class SizedCables {
    private final Plan before;
    private final OpenItems open;
    private final CheckContext context;
    private final Plan plan;
    private final Reasons reasons;
    private final int[] choice;

    SizedCables(Plan before, OpenItems open, CheckContext context, Reasons reasons, int[] choice) {
        this.before = before;
        this.open = open;
        this.context = context;
        this.reasons = reasons;
        this.choice = choice;
        plan = context.plan();
    }

    /** The cables, in the plan's order. */
    List<SizedCable> cables() {
        List<SizedCable> cables = new ArrayList<>();
        for (int i = 0; i < open.cables().size(); i++) {
            for (int w : open.cable(i).cables()) {
                cables.add(cable(i, w));
            }
        }
        return cables;
    }

    private SizedCable cable(int item, int w) {
        Plan.Cable cable = plan.cables().get(w);
        List<Integer> cores = open.cable(item).conductors().stream().filter(c -> plan.conductors().get(c).cable() == w).toList();
        double currentA = 0;
        double hotC = Double.NaN;
        double dropV = 0;
        SolvedCase largest = null;
        SolvedCase hottest = null;
        SolvedCase worst = null;
        for (SolvedCase solved : context.settled()) {
            for (int c : cores) {
                double amps = StrictMath.abs(solved.running().conductorA(c));
                largest = amps > currentA ? solved : largest;
                currentA = StrictMath.max(currentA, amps);
                double celsius = solved.running().conductorC(c);
                if (!Double.isNaN(celsius) && !(celsius < hotC)) {
                    hottest = celsius > hotC || hottest == null ? solved : hottest;
                    hotC = celsius;
                }
            }
            double here = cores.stream().mapToDouble(c -> volts(solved, c)).sum();
            worst = here > dropV ? solved : worst;
            dropV = StrictMath.max(dropV, here);
        }
        Constraint limiting = reasons.limiting(item, choice);
        String why = reasons.why(item, choice, limiting);
        List<Derivation> derivations = new ArrayList<>(List.of(section(cable, limiting, why)));
        if (largest != null) {
            derivations.add(current(cores, largest, currentA));
        }
        if (worst != null) {
            derivations.add(drop(cable, cores, worst, dropV));
        }
        derivations.addAll(shared(cable, hottest));
        return new SizedCable(cable.id(), cable.part(), cable.lengthMm(), currentA,
                largest == null ? null : largest.state().name(), before.cables().get(w).sectionMm2(), cable.sectionMm2(), dropV,
                hotC, limiting, why, protector(cores), derivations);
    }

    private double volts(SolvedCase solved, int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        double volts = StrictMath.abs(solved.design().voltage(core.a(), core.b()));
        return Double.isNaN(volts) ? 0 : volts;
    }

    /**
     * Id of the way or element before the cable, of a return that whose faults it carries; null when there is none, or none
     * before one of its sources.
     */
    private String protector(List<Integer> cores) {
        for (int c : cores) {
            ConductorProtection row = context.protection().conductor(c);
            if (row.supply() && row.feeds().stream().anyMatch(feed -> feed.bareA() > 0)) {
                return null;
            }
            int element = row.overload() == null ? -1 : row.overload().protector();
            for (Feed feed : row.feeds()) {
                element = element < 0 && !feed.next().isEmpty() ? feed.next().get(0) : element;
            }
            if (element >= 0) {
                Plan.Protector protector = (Plan.Protector) plan.elements().get(element);
                return protector.way() == null ? context.names().element(element) : protector.way();
            }
        }
        return null;
    }

    private static Derivation section(Plan.Cable cable, Constraint limiting, String why) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input("sections on offer", Quantity.of(cable.options().size(), "1"), String.valueOf(cable.part())));
        if (limiting != null) {
            inputs.add(new Input("limit", limiting.limit(), limiting.rule() + " of " + limiting.element()
                    + (limiting.caseName() == null ? "" : " in case " + limiting.caseName())));
        }
        return new Derivation("section", Quantity.of(cable.sectionMm2(), "mm2"), why, inputs,
                "joint choice of all open sections and ratings, branch and bound");
    }

    private Derivation current(List<Integer> cores, SolvedCase solved, double currentA) {
        List<Input> inputs = new ArrayList<>();
        for (int c : cores) {
            inputs.add(new Input("I of " + context.names().shownConductor(c),
                    Quantity.of(StrictMath.abs(solved.running().conductorA(c)), "A"), "case " + solved.state().name()));
        }
        return new Derivation("load", Quantity.of(currentA, "A"), "largest over its cores and all cases of |I|", inputs,
                "operating points of all cases");
    }

    private Derivation drop(Plan.Cable cable, List<Integer> cores, SolvedCase solved, double dropV) {
        List<Input> inputs = new ArrayList<>();
        for (int c : cores) {
            Plan.Conductor core = plan.conductors().get(c);
            String name = cores.size() > 1 ? " of " + context.names().shownConductor(c) : "";
            inputs.add(new Input("I" + name, Quantity.of(StrictMath.abs(solved.design().conductorA(c)), "A"),
                    "network for the drop, case " + solved.state().name()));
            inputs.add(new Input("R20" + name, Quantity.of(1000 * core.r20MaxOhmPerM(), "mohm/m"),
                    String.valueOf(cable.partSource())));
            inputs.add(new Input("T" + name, Quantity.of(solved.running().conductorC(c), "degC"), "heat balance of the case"));
            inputs.add(new Input("Rjoints" + name, Quantity.of(1000 * core.jointsOhm(), "mohm"),
                    "joint.end-max of the practice"));
        }
        inputs.add(new Input("L", Quantity.of(cable.lengthMm() / 1000, "m"), cable.id()));
        return new Derivation("drop", Quantity.of(dropV, "V"),
                "sum over its cores of I x (R20 x L x (1 + alpha (T - 20)) + Rjoints)", inputs,
                "Ohm's law; resistance of copper at its temperature");
    }

    /** Length, and temperature in the case where it is highest, as the check derives them. */
    private List<Derivation> shared(Plan.Cable cable, SolvedCase hottest) {
        List<Derivation> found = new ArrayList<>();
        DesignFigures.explained(context, cable.id()).stream()
                .filter(figures -> figures.caseName() == null
                        || hottest != null && figures.caseName().equals(hottest.state().name()))
                .flatMap(figures -> figures.derivations().stream())
                .filter(each -> List.of("length", "rating Iz", "temperature").contains(each.figure()))
                .filter(each -> found.stream().noneMatch(other -> other.figure().equals("length")
                        && each.figure().equals("length")))
                .forEach(found::add);
        return found;
    }

    /** The protectors, in the plan's order. */
    List<SizedProtector> protectors() {
        List<SizedProtector> protectors = new ArrayList<>();
        DesignFigures figures = new DesignFigures(context);
        for (OpenItems.WayItem way : open.ways()) {
            Plan.Protector was = (Plan.Protector) before.elements().get(way.element());
            Plan.Protector is = (Plan.Protector) plan.elements().get(way.element());
            double most = 0;
            SolvedCase largest = null;
            for (SolvedCase solved : context.settled()) {
                double amps = StrictMath.abs(solved.running().elementA(way.element()));
                largest = amps > most ? solved : largest;
                most = StrictMath.max(most, amps);
            }
            int item = open.ofElement(way.element());
            Constraint limiting = reasons.limiting(item, choice);
            String why = reasons.why(item, choice, limiting);
            String where = largest == null ? "never loaded" : "case " + largest.state().name();
            protectors.add(new SizedProtector(way.id(), was.part(), was.ratingA(), is.part(), is.ratingA(), most, limiting, why,
                    List.of(new Derivation("load", Quantity.of(most, "A"), "largest over all cases of |I|",
                            List.of(new Input("I", Quantity.of(most, "A"), where)), "operating points of all cases"),
                            new Derivation("rating", Quantity.of(is.ratingA(), "A"), why, List.of(
                                    new Input("needed", Quantity.of(figures.neededA(way.element()), "A"),
                                            "heating current over the share and the ambient factor of device-loading"),
                                    new Input("ratings on offer", Quantity.of(way.options().size(), "1"),
                                            String.valueOf(is.form()))),
                                    "joint choice of all open sections and ratings, branch and bound"))));
        }
        return protectors;
    }
}
