// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.nets.Nets;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * Nothing takes current from the middle of batteries in series, unless a converter or charger that feeds the middle balances
 * them.
 */
final class HalfTapRule implements Rule {
    @Override
    public String slug() {
        return "half-tap";
    }

    @Override
    public String says() {
        return "No load hangs on the middle of batteries in series without a balancer.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            Plan.Element element = context.plan().elements().get(e);
            int plus = PlanGraph.consumerTerminal(element);
            int minus = element instanceof Plan.Demand demand ? demand.b()
                    : element instanceof Plan.Coil coil ? coil.b()
                    : element instanceof Plan.Converter converter ? converter.inB() : -1;
            int middle = isUnbalanced(context, plus) ? plus : isUnbalanced(context, minus) ? minus : -1;
            if (middle >= 0) {
                findings.add(finding(context, e, context.nets().netOf()[middle]));
            }
        }
        return findings;
    }

    private Finding finding(CheckContext context, int e, int net) {
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                context.names().shownElement(e) + " hangs on the middle of batteries in series")
                .because("One half of the pair gives its current alone; the other half is overcharged for it, and both fail "
                + "early.");
        for (int other = 0; other < context.plan().elements().size(); other++) {
            if (context.plan().elements().get(other) instanceof Plan.Cell cell
                    && (context.nets().netOf()[cell.a()] == net || context.nets().netOf()[cell.b()] == net)) {
                builder.causedBy(context.names().element(other), "battery of the pair", null);
            }
        }
        return builder.mend(Mend.inWords("Feed it by a converter from the whole pair, or fit a balancer.")).build();
    }

    private static boolean isUnbalanced(CheckContext context, int terminal) {
        if (terminal < 0 || context.nets().nets().get(context.nets().netOf()[terminal]).kind() != Nets.Kind.MIDDLE) {
            return false;
        }
        int net = context.nets().netOf()[terminal];
        return context.plan().elements().stream().noneMatch(element -> !(element instanceof Plan.Cell)
                && PlanGraph.sourceTerminal(element) >= 0 && context.nets().netOf()[PlanGraph.sourceTerminal(element)] == net);
    }
}
