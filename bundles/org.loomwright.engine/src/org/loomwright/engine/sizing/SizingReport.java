// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.result.Finding;

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
        SizedCables sized = new SizedCables(before, open, context, new Reasons(open, design), choice);
        int[] alone = new AloneSizing(context.plan(), design, objectives).choice(choice);
        double cost = best.cost();
        double bound = best.bound();
        return new SizingResult(options.objective(), sized.cables(), sized.protectors(), totalsBefore(),
                objectives.totals(choice), cost, bound, cost > bound ? (cost - bound) / cost : 0, rounds,
                alone == null ? null : objectives.totals(alone), troubles,
                options.sensitivity() ? new LimitCosts(design, objectives, given, monitor).of(choice) : List.of(),
                context.plan());
    }

    /** Totals of what stood; a way in which nothing was fitted counts nothing. */
    private SizingResult.Totals totalsBefore() {
        int[] was = new int[open.size()];
        double neverPaid = 0;
        for (int i = 0; i < was.length; i++) {
            was[i] = -1;
            for (int o = 0; o < open.options(i); o++) {
                was[i] = stood(i, o) ? o : was[i];
            }
            if (was[i] < 0 && !open.isCable(i) && part(i) == null) {
                was[i] = 0;
                double price = objectives.money(i, 0);
                neverPaid += Double.isNaN(price) ? 0 : price;
            }
            if (was[i] < 0) {
                return new SizingResult.Totals(Double.NaN, Double.NaN, 0);
            }
        }
        SizingResult.Totals totals = objectives.totals(was);
        return new SizingResult.Totals(totals.copperKg(), totals.money() - neverPaid, totals.sections());
    }

    private boolean stood(int item, int option) {
        return open.isCable(item)
                ? open.cable(item).options().get(option).sectionMm2()
                        == before.cables().get(open.cable(item).cables().get(0)).sectionMm2()
                : Objects.equals(open.way(item).options().get(option).part(), part(item));
    }

    private String part(int item) {
        return ((Plan.Protector) before.elements().get(open.way(item).element())).part();
    }
}
