// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.LoadVerdict;
import org.loomwright.engine.result.Quantity;

/** Says of each load how its drop comes about, also when nothing is wrong: the largest drop over the cases in which it is on. */
final class Verdicts {
    private static final double MENTION = 0.05;

    private final CheckContext context;
    private final LoadDrops drops;

    Verdicts(CheckContext context) {
        this.context = context;
        drops = new LoadDrops(context);
    }

    /** One verdict a load that is supplied in some case, in the order of the plan. */
    List<LoadVerdict> all() {
        List<LoadVerdict> verdicts = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Demand) {
                LoadVerdict verdict = of(e);
                if (verdict != null) {
                    verdicts.add(verdict);
                }
            }
        }
        return verdicts;
    }

    private LoadVerdict of(int demand) {
        LoadDrops.LoadDrop worst = null;
        for (SolvedCase solved : context.cases()) {
            LoadDrops.LoadDrop drop = drops.of(solved, demand);
            if (drop != null && (worst == null || drop.share() > worst.share())) {
                worst = drop;
            }
        }
        if (worst == null) {
            return null;
        }
        Plan.Demand load = (Plan.Demand) context.plan().elements().get(demand);
        SolvedCase.Solved running = worst.solved().running();
        List<Cause> shares = new ArrayList<>();
        for (Map.Entry<String, Double> entry : worst.breakdown().byElement()) {
            double percent = 100 * worst.breakdown().shareOf(entry.getValue());
            shares.add(new Cause(entry.getKey(), drops.words().of(worst.breakdown(), entry.getKey()), Quantity.of(percent, "%")));
        }
        return new LoadVerdict(context.names().element(demand), worst.solved().state().name(),
                running.voltage(load.a(), load.b()), running.elementA(demand), worst.breakdown().dropV(), worst.share(),
                worst.limit(), shares, sentence(worst));
    }

    private String sentence(LoadDrops.LoadDrop drop) {
        DropBreakdown parts = drop.breakdown();
        double limitV = drop.limit() * drop.nominalV();
        String figures = Quantity.of(parts.dropV(), "V") + " of " + Quantity.of(limitV, "V") + " permitted";
        List<Map.Entry<String, Double>> byElement = parts.byElement();
        if (byElement.isEmpty() || parts.dropV() <= 0) {
            return figures + ".";
        }
        Map.Entry<String, Double> first = byElement.get(0);
        StringBuilder text = new StringBuilder(figures).append("; ").append(percent(parts, first.getValue())).append(" of it in ")
                .append(drops.words().of(parts, first.getKey()));
        Map.Entry<String, Double> structure = drops.largestInStructure(parts);
        if (structure != null && !structure.getKey().equals(first.getKey()) && parts.shareOf(structure.getValue()) >= MENTION) {
            text.append(", ").append(percent(parts, structure.getValue())).append(" in ")
                    .append(drops.words().of(parts, structure.getKey()));
        }
        double ownV = drops.ownCablesV(drop);
        boolean tooMuch = Beyond.above(drop.share(), drop.limit());
        if (tooMuch && parts.dropV() - ownV > limitV) {
            text.append("; too much even without the load's own cable, which is not the cause");
        } else if (tooMuch) {
            text.append("; too much");
        } else if (ownV < first.getValue() && !drops.isOwnCable(drop, first.getKey())) {
            text.append("; the load's own cable is not the cause");
        }
        return text.append(".").toString();
    }

    private static String percent(DropBreakdown parts, double volts) {
        return Quantity.of(100 * parts.shareOf(volts), "%").toString();
    }
}
