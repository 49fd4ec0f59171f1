// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.choice.ChoiceProblem;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.sizing.SizingResult.SizedCable;
import org.loomwright.engine.sizing.SizingResult.SizedProtector;

/** Puts the result of sizing together. */
final class SizingReport {
    private final Plan before;
    private final OpenItems open;
    private final Objectives objectives;
    private final SizingOptions options;
    private final Design design;
    private final CheckContext context;
    private final List<Finding> troubles;
    private final Set<String> given;
    private final Monitor monitor;

    SizingReport(Plan before, OpenItems open, Objectives objectives, SizingOptions options, Design design, CheckContext context,
            List<Finding> troubles, Set<String> given, Monitor monitor) {
        this.before = before;
        this.open = open;
        this.objectives = objectives;
        this.options = options;
        this.design = design;
        this.context = context;
        this.troubles = troubles;
        this.given = given;
        this.monitor = monitor;
    }

    SizingResult result(DesignChoice.Solved best, int rounds) {
        int[] choice = best.options();
        List<SizedCable> cables = new ArrayList<>();
        for (int i = 0; i < open.cables().size(); i++) {
            for (int w : open.cable(i).cables()) {
                cables.add(cable(i, w, choice));
            }
        }
        List<SizedProtector> protectors = new ArrayList<>();
        for (OpenItems.WayItem way : open.ways()) {
            Plan.Protector was = (Plan.Protector) before.elements().get(way.element());
            Plan.Protector is = (Plan.Protector) context.plan().elements().get(way.element());
            double most = 0;
            for (SolvedCase solved : context.settled()) {
                most = StrictMath.max(most, StrictMath.abs(solved.running().elementA(way.element())));
            }
            protectors.add(new SizedProtector(way.id(), was.part(), was.ratingA(), is.part(), is.ratingA(), most));
        }
        int[] alone = new AloneSizing(context.plan(), design, objectives).choice(choice);
        double cost = best.cost();
        double bound = best.bound();
        return new SizingResult(options.objective(), cables, protectors, totalsBefore(), objectives.totals(choice), cost, bound,
                cost > bound ? (cost - bound) / cost : 0, rounds, alone == null ? null : objectives.totals(alone), troubles,
                options.sensitivity() ? new LimitCosts(design, objectives, given, monitor).of(choice) : List.of(),
                context.plan());
    }

    private SizingResult.Totals totalsBefore() {
        int[] was = new int[open.size()];
        for (int i = 0; i < was.length; i++) {
            was[i] = -1;
            for (int o = 0; o < open.options(i); o++) {
                boolean same = open.isCable(i)
                        ? open.cable(i).options().get(o).sectionMm2() == before.cables().get(open.cable(i).cables().get(0)).sectionMm2()
                        : java.util.Objects.equals(open.way(i).options().get(o).part(),
                                ((Plan.Protector) before.elements().get(open.way(i).element())).part());
                was[i] = same ? o : was[i];
            }
            if (was[i] < 0) {
                return new SizingResult.Totals(Double.NaN, Double.NaN, 0);
            }
        }
        return objectives.totals(was);
    }

    private SizedCable cable(int item, int w, int[] choice) {
        Plan.Cable cable = context.plan().cables().get(w);
        double currentA = 0;
        String currentCase = null;
        double dropV = 0;
        double hotC = Double.NaN;
        int worst = -1;
        SolvedCase worstCase = null;
        for (SolvedCase solved : context.settled()) {
            double here = 0;
            for (int c : open.cable(item).conductors()) {
                if (context.plan().conductors().get(c).cable() != w) {
                    continue;
                }
                double amps = StrictMath.abs(solved.running().conductorA(c));
                if (amps > currentA) {
                    currentA = amps;
                    currentCase = solved.state().name();
                }
                double celsius = solved.running().conductorC(c);
                hotC = Double.isNaN(celsius) || celsius < hotC ? hotC : celsius;
                Plan.Conductor core = context.plan().conductors().get(c);
                double volts = StrictMath.abs(solved.design().voltage(core.a(), core.b()));
                if (!Double.isNaN(volts)) {
                    here += volts;
                    if (here > dropV) {
                        worst = c;
                        worstCase = solved;
                    }
                }
            }
            dropV = StrictMath.max(dropV, here);
        }
        Constraint limiting = limiting(item, choice);
        String why = why(item, choice, limiting);
        return new SizedCable(cable.id(), cable.part(), cable.lengthMm(), currentA, currentCase,
                before.cables().get(w).sectionMm2(), cable.sectionMm2(), dropV, hotC, limiting, why,
                derivations(cable, worst, worstCase, dropV, limiting, why));
    }

    private List<Derivation> derivations(Plan.Cable cable, int conductor, SolvedCase solved, double dropV, Constraint limiting,
            String why) {
        List<Derivation> all = new ArrayList<>();
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input("sections on offer", Quantity.of(cable.options().size(), "1"), String.valueOf(cable.part())));
        if (limiting != null) {
            inputs.add(new Input("limit", limiting.limit(), limiting.rule() + " of " + limiting.element()
                    + (limiting.caseName() == null ? "" : " in case " + limiting.caseName())));
        }
        all.add(new Derivation("section", Quantity.of(cable.sectionMm2(), "mm2"), why, inputs,
                "joint choice of all open sections and ratings, branch and bound"));
        if (conductor >= 0) {
            Plan.Conductor core = context.plan().conductors().get(conductor);
            all.add(new Derivation("drop", Quantity.of(dropV, "V"), "sum over its cores of I x (R20 x L x (1 + alpha (T - 20)) + Rjoints)",
                    List.of(new Input("I", Quantity.of(StrictMath.abs(solved.design().conductorA(conductor)), "A"),
                            "network for the drop, case " + solved.state().name()),
                            new Input("R20", Quantity.of(1000 * core.r20MaxOhmPerM(), "mohm/m"), String.valueOf(cable.partSource())),
                            new Input("L", Quantity.of(cable.lengthMm() / 1000, "m"), cable.id()),
                            new Input("T", Quantity.of(solved.running().conductorC(conductor), "degC"), "heat balance of the case"),
                            new Input("Rjoints", Quantity.of(1000 * core.jointsOhm(), "mohm"), "joint.end-max of the practice")),
                    "Ohm's law; resistance of copper at its temperature"));
        }
        return all;
    }

    /** What speaks against the next smaller section. */
    private Constraint limiting(int item, int[] choice) {
        int smaller = choice[item] - 1;
        if (smaller < 0) {
            return null;
        }
        Constraint why = design.struck().why(item, smaller);
        if (why != null) {
            return why;
        }
        for (ChoiceProblem.Pairing pairing : design.pairings().values()) {
            boolean a = pairing.itemA() == item;
            if ((a || pairing.itemB() == item) && !pairing.allowed().get(a ? smaller : choice[pairing.itemA()])
                    .get(a ? choice[pairing.itemB()] : smaller)) {
                return design.meaning(pairing.id());
            }
        }
        Constraint found = null;
        double most = 0;
        for (ChoiceProblem.Limit limit : design.limits().values()) {
            double sum = 0;
            boolean mine = false;
            for (ChoiceProblem.Term term : limit.terms()) {
                mine |= term.item() == item;
                sum += term.values().get(term.item() == item ? smaller : choice[term.item()]);
            }
            double over = (sum - limit.atMost()) / StrictMath.max(1e-9, StrictMath.abs(limit.atMost()));
            if (mine && over > most) {
                most = over;
                found = design.meaning(limit.id());
            }
        }
        return found;
    }

    private String why(int item, int[] choice, Constraint limiting) {
        if (choice[item] == 0) {
            return "the smallest section of the part";
        }
        String next = open.cable(item).options().get(choice[item] - 1).sectionMm2() + " mm2";
        if (limiting == null) {
            return next + " would do here but cost more elsewhere";
        }
        String where = limiting.element().equals(open.id(item)) ? "" : " at " + limiting.element();
        return "with " + next + " " + limiting.rule() + " would not hold" + where
                + (limiting.caseName() == null ? "" : " in " + limiting.caseName());
    }
}
