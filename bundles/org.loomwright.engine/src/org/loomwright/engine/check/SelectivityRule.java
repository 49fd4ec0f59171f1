// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Selectivity;
import org.loomwright.engine.protection.Selectivity.Kind;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A device opens before the one upstream of it, up to the largest fault behind it. Where something else feeds the fault as
 * well, as over a link between batteries, what is upstream is not alone: when it opens, the supply stays.
 */
final class SelectivityRule implements Rule {

    @Override
    public String slug() {
        return "selectivity";
    }

    @Override
    public String says() {
        return "A fault opens the device next to it and leaves the one upstream closed.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Inherited inherited = new Inherited(context);
        for (DeviceProtection row : context.protection().devices()) {
            for (Selectivity pair : row.selectivity()) {
                boolean maker = inherited.device(pair.downstream()) && existing(context, pair.upstream());
                if (!maker && pair.alone() && (pair.kind() == Kind.NONE || pair.kind() == Kind.UP_TO)) {
                    findings.add(finding(context, pair));
                }
            }
        }
        return findings;
    }

    private static boolean existing(CheckContext context, int element) {
        return context.plan().devices().get(context.plan().elements().get(element).device()).existing();
    }

    private Finding finding(CheckContext context, Selectivity pair) {
        Plan.Protector down = (Plan.Protector) context.plan().elements().get(pair.downstream());
        Plan.Protector up = (Plan.Protector) context.plan().elements().get(pair.upstream());
        String upstream = context.names().element(pair.upstream());
        Quantity is = Quantity.of(pair.limitA(), "A");
        Quantity wanted = Quantity.of(pair.largestA(), "A");
        String both = context.names().shown(context.names().element(pair.downstream())) + " ("
                + Quantity.of(down.ratingA(), "A") + ")";
        String other = context.names().shown(upstream) + " (" + Quantity.of(up.ratingA(), "A") + ")";
        FindingBuilder builder = Finding.of(slug(), Severity.WARNING, context.names().element(pair.downstream()),
                pair.kind() == Kind.NONE
                        ? "A fault behind " + both + " may open " + other + " as well, or first"
                        : "From " + is + " on a fault behind " + both + " may open " + other
                                + " as well: up to " + wanted + " can flow")
                .figures(is, wanted)
                .because("There " + both + " takes up to " + Quantity.of(1000 * pair.downstreamS(), "ms") + ", " + other
                        + " may melt within " + Quantity.of(1000 * pair.upstreamS(), "ms") + ".")
                .because("All that " + context.names().shown(upstream) + " feeds is lost with it.")
                .causedBy(upstream, "device upstream", Quantity.of(up.ratingA(), "A"));
        new SelectivityMends(context).of(pair).forEach(builder::mend);
        return ProtectionReasons.derived(builder, context, down.id()).build();
    }
}
