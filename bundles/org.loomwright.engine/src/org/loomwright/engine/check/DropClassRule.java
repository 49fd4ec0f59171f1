// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * The drop of a load over supply and return, fuses and joints included, at the current of nominal voltage, stays within a
 * share of nominal voltage: one for critical loads (an error), one for others (a warning). The practice counts the whole loop;
 * practices that count one way only permit about half of its figures.
 */
final class DropClassRule implements Rule {

    @Override
    public String slug() {
        return "drop-class";
    }

    @Override
    public String says() {
        return "The drop of a load over supply and return stays within its class's share of nominal voltage.";
    }

    @Override
    public List<String> limits() {
        return List.of("drop-class.critical", "drop-class.other");
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        LoadDrops drops = new LoadDrops(context);
        for (SolvedCase solved : context.settled()) {
            for (Plan.DemandState state : solved.state().demands()) {
                LoadDrops.LoadDrop drop = drops.of(solved, state.demand());
                if (drop != null && Beyond.above(drop.share(), drop.limit())) {
                    findings.add(finding(context, drops, drop));
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    private Finding finding(CheckContext context, LoadDrops drops, LoadDrops.LoadDrop drop) {
        DropBreakdown parts = drop.breakdown();
        Plan.Demand load = (Plan.Demand) context.plan().elements().get(parts.demand());
        double limitV = drop.limit() * drop.nominalV();
        Practice.Limit limit = context.practice().limit(drop.limitName());
        FindingBuilder builder = Finding.of(slug(), load.critical() ? Severity.ERROR : Severity.WARNING,
                context.names().element(parts.demand()),
                context.names().shownElement(parts.demand()) + " loses " + Quantity.of(parts.dropV(), "V") + ", "
                        + Quantity.of(100 * drop.share(), "%") + " of " + Quantity.of(drop.nominalV(), "V") + "; permitted are "
                        + Quantity.of(limitV, "V") + ", " + Quantity.of(100 * drop.limit(), "%"))
                .inCase(drop.solved().state().name()).figures(Quantity.of(parts.dropV(), "V"), Quantity.of(limitV, "V"));
        Map.Entry<String, Double> first = parts.byElement().get(0);
        builder.because("Most of it, " + Quantity.of(100 * parts.shareOf(first.getValue()), "%") + ", is lost in "
                + drops.words().of(parts, first.getKey()) + ".");
        double withoutOwnV = parts.dropV() - drops.ownCablesV(drop);
        if (withoutOwnV > limitV) {
            builder.because("Without the load's own cable it would still be " + Quantity.of(withoutOwnV, "V")
                    + "; that cable is not the cause.");
        }
        double loadV = drop.solved().running().voltage(load.a(), load.b());
        builder.because("With everything included the load gets " + Quantity.of(loadV, "V") + " in this case.");
        DropReasons reasons = new DropReasons(context.plan(), context.names());
        reasons.causes(builder, parts);
        new SectionMends(context.plan(), context.names()).forDrop(parts, limitV).ifPresent(builder::mend);
        new ParallelMends(context).forDrop(parts, limitV).ifPresent(builder::mend);
        new StrapMends(context.plan(), context.names()).forDrop(parts, limitV).ifPresent(builder::mend);
        return builder.derived(reasons.drop(parts)).derived(new Derivation("permitted drop", Quantity.of(limitV, "V"),
                "share x Vnominal", List.of(new Derivation.Input("share", Quantity.of(drop.limit(), "1"), limit.name() + ", "
                        + limit.source()), new Derivation.Input("Vnominal", Quantity.of(drop.nominalV(), "V"), "domain")),
                limit.source())).build();
    }
}
