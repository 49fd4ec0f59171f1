// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/** A load that is on gets at least the smallest voltage its maker states, in every case, everything included. */
final class LoadUndervoltRule implements Rule {

    @Override
    public String slug() {
        return "load-undervolt";
    }

    @Override
    public String says() {
        return "A load that is on gets at least the smallest voltage its maker states.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (SolvedCase solved : context.settled()) {
            CurrentPaths paths = null;
            for (Plan.DemandState state : solved.state().demands()) {
                Plan.Demand load = (Plan.Demand) context.plan().elements().get(state.demand());
                double limitV = limitV(solved, state.demand(), load);
                double loadV = solved.running().voltage(load.a(), load.b());
                if (solved.running().at().elementItem()[state.demand()] < 0 || Double.isNaN(limitV) || !Beyond.below(loadV,
                        limitV)
                        || !(loadV > 0)) {
                    continue;
                }
                paths = paths == null ? CurrentPaths.of(context.plan(), solved.running()) : paths;
                findings.add(finding(context, solved, paths, state.demand(), loadV, limitV));
            }
        }
        return FindingMerge.perElement(findings);
    }

    /** The voltage wanted: the smallest stated; of a load that has switched itself off also the one at which it comes back. */
    static double limitV(SolvedCase solved, int demand, Plan.Demand load) {
        int item = solved.running().at().elementItem()[demand];
        boolean lockedOut = item >= 0 && !solved.running().point().on()[item];
        if (!lockedOut) {
            return load.minV();
        }
        double backV = Double.isNaN(load.restartV()) ? load.offV() : load.restartV();
        return Double.isNaN(load.minV()) || backV > load.minV() ? backV : load.minV();
    }

    private Finding finding(CheckContext context, SolvedCase solved, CurrentPaths paths, int demand, double loadV,
            double limitV) {
        String id = context.names().element(demand);
        boolean off = !solved.running().point().on()[solved.running().at().elementItem()[demand]];
        String what = context.names().shownElement(demand);
        String title = off ? what + " has switched itself off: it gets " + Quantity.of(loadV, "V") + " and needs "
                + Quantity.of(limitV, "V") + " to come back"
                : what + " gets " + Quantity.of(loadV, "V") + ", needs " + Quantity.of(limitV, "V");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, id, title).inCase(solved.state().name())
                .figures(Quantity.of(loadV, "V"), Quantity.of(limitV, "V"));
        DropBreakdown parts = DropBreakdown.of(context.plan(), context.names(), solved.running(), paths, demand);
        if (parts != null) {
            DropReasons reasons = new DropReasons(context.plan(), context.names());
            reasons.tell(builder, parts, limitV);
            builder.derived(reasons.voltage(parts));
            if (parts.sourceV() >= limitV) {
                new SectionMends(context.plan(), context.names()).forDrop(parts, parts.sourceV() - limitV)
                        .ifPresent(builder::mend);
                new ParallelMends(context).forDrop(parts, parts.sourceV() - limitV).ifPresent(builder::mend);
            }
        }
        return builder.build();
    }
}
