// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.choice.ChoiceProblem;
import org.loomwright.engine.result.Quantity;

/** What the permitted drops of single loads cost: the design solved again without one load's limits, and with one per cent more. */
final class LimitCosts {
    private final Design design;
    private final Objectives objectives;
    private final Set<String> given;
    private final Monitor monitor;

    LimitCosts(Design design, Objectives objectives, Set<String> given, Monitor monitor) {
        this.design = design;
        this.objectives = objectives;
        this.given = given;
        this.monitor = monitor;
    }

    /** A load for each entry, the most expensive limit first; loads whose limits cost nothing are left out. */
    List<SizingResult.LimitCost> of(int[] choice) {
        SizingResult.Totals now = objectives.totals(choice);
        List<SizingResult.LimitCost> costs = new ArrayList<>();
        for (Map.Entry<String, List<String>> load : limitsOfLoads().entrySet()) {
            if (load.getValue().stream().noneMatch(id -> couldBind(id, choice))) {
                continue;
            }
            SizingResult.Totals without = solved(load.getValue(), Double.POSITIVE_INFINITY);
            if (now.copperKg() - without.copperKg() > 1e-9) {
                SizingResult.Totals point = solved(load.getValue(), 0.01);
                Quantity limit = load.getValue().stream().map(id -> design.meaning(id).limit())
                        .min(Comparator.comparingDouble(Quantity::value)).orElseThrow();
                costs.add(new SizingResult.LimitCost(load.getKey(), limit, now.copperKg() - without.copperKg(),
                        now.copperKg() - point.copperKg(), now.money() - point.money()));
            }
        }
        costs.sort(Comparator.comparingDouble(SizingResult.LimitCost::wholeKg).reversed()
                .thenComparing(SizingResult.LimitCost::element));
        return costs;
    }

    /** Drop limits by the load they hold for. */
    private Map<String, List<String>> limitsOfLoads() {
        Map<String, List<String>> byLoad = new LinkedHashMap<>();
        for (String id : design.limits().keySet()) {
            if (id.startsWith("drop ") && design.meaning(id) != null) {
                byLoad.computeIfAbsent(design.meaning(id).element(), e -> new ArrayList<>()).add(id);
            }
        }
        return byLoad;
    }

    /** Whether an item of the limit could not take its next smaller section. */
    private boolean couldBind(String id, int[] choice) {
        ChoiceProblem.Limit limit = design.limits().get(id);
        double sum = limit.terms().stream().mapToDouble(term -> term.values().get(choice[term.item()])).sum();
        return limit.terms().stream().anyMatch(term -> choice[term.item()] > 0
                && sum - term.values().get(choice[term.item()]) + term.values().get(choice[term.item()] - 1) > limit.atMost());
    }

    /** The totals with the limits of one load loosened by a share of nominal voltage. */
    private SizingResult.Totals solved(List<String> ids, double share) {
        Design other = new Design(design.open());
        other.addAll(design);
        for (String id : ids) {
            ChoiceProblem.Limit limit = other.limits().get(id);
            double more = Double.isInfinite(share) ? 1e9 : design.nominalV(id) * share;
            other.limits().put(id, new ChoiceProblem.Limit(id, limit.atMost() + more, limit.terms()));
        }
        return objectives.totals(new DesignChoice(other, objectives, new java.util.LinkedHashSet<>(given), monitor).best()
                .options());
    }
}
