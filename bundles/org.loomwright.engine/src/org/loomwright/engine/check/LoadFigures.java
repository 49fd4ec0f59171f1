// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/**
 * How the figures of a load come about: its current and voltage with everything included, and its drop, in each case in which
 * it is on.
 */
final class LoadFigures {
    private final CheckContext context;
    private final LoadDrops drops;
    private final DropReasons reasons;

    LoadFigures(CheckContext context) {
        this.context = context;
        drops = new LoadDrops(context);
        reasons = new DropReasons(context.plan(), context.names());
    }

    /** The figures of a load (index in elements). */
    List<ElementFigures> of(int demand) {
        Plan.Demand load = (Plan.Demand) context.plan().elements().get(demand);
        List<ElementFigures> figures = new ArrayList<>();
        for (SolvedCase solved : context.cases()) {
            if (solved.running().at().elementItem()[demand] < 0) {
                continue;
            }
            List<Derivation> derivations = new ArrayList<>();
            derivations.add(current(solved, demand, load));
            DropBreakdown running = DropBreakdown.of(context.plan(), context.names(), solved.running(),
                    CurrentPaths.of(context.plan(), solved.running()), demand);
            if (running != null) {
                derivations.add(reasons.voltage(running));
            }
            LoadDrops.LoadDrop drop = drops.of(solved, demand);
            if (drop != null) {
                derivations.add(reasons.drop(drop.breakdown()));
                derivations.add(share(drop));
            }
            figures.add(new ElementFigures(context.names().element(demand), solved.state().name(), derivations));
        }
        return figures;
    }

    private Derivation current(SolvedCase solved, int demand, Plan.Demand load) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input("V", Quantity.of(solved.running().voltage(load.a(), load.b()), "V"), "operating point of the case"));
        if (!Double.isNaN(load.watts())) {
            inputs.add(new Input("P", Quantity.of(load.watts(), "W"), load.id()));
            inputs.add(new Input("Vref", Quantity.of(load.refV(), "V"), load.id()));
        }
        if (!Double.isNaN(load.amps())) {
            inputs.add(new Input("Istated", Quantity.of(load.amps(), "A"), load.id()));
        }
        if (!Double.isNaN(load.ohms())) {
            inputs.add(new Input("R", Quantity.of(load.ohms(), "ohm"), load.id()));
        }
        for (Plan.DemandState state : solved.state().demands()) {
            if (state.demand() == demand) {
                inputs.add(new Input("factor", Quantity.of(state.factor(), "1"), "case " + solved.state().name()));
            }
        }
        String formula = switch (load.law()) {
            case "current" -> "factor x Istated";
            case "resistance" -> Double.isNaN(load.ohms()) ? "factor x V x P / Vref^2" : "factor x V / R";
            default -> "(factor x P / efficiency + no-load power) / V";
        };
        if ("power".equals(load.law())) {
            inputs.add(new Input("efficiency", Quantity.of(load.efficiency(), "1"), load.id()));
            inputs.add(new Input("no-load power", Quantity.of(load.noLoadW(), "W"), load.id()));
        }
        return new Derivation("current", Quantity.of(solved.running().elementA(demand), "A"), formula, inputs,
                "law of the load: " + load.law());
    }

    private Derivation share(LoadDrops.LoadDrop drop) {
        Practice.Limit limit = context.practice().limit(drop.limitName());
        return new Derivation("drop over nominal voltage", Quantity.of(100 * drop.share(), "%"), "drop / Vnominal",
                List.of(new Input("drop", Quantity.of(drop.breakdown().dropV(), "V"), "voltage drop"),
                        new Input("Vnominal", Quantity.of(drop.nominalV(), "V"), "domain"),
                        new Input("permitted", Quantity.of(100 * limit.value(), "%"), limit.name() + ", " + limit.source())),
                limit.source());
    }
}
