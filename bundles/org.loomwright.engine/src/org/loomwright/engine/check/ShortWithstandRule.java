// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Along the slowest curve of the devices before it, a supply conductor stays below its short-time limit for every current from
 * the smallest far-end to the largest near-end fault. Returns are judged by {@link ReturnProtectedRule}.
 */
final class ShortWithstandRule implements Rule {

    @Override
    public String slug() {
        return "short-withstand";
    }

    @Override
    public String says() {
        return "A conductor bears every short circuit until it is cleared.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Inherited inherited = new Inherited(context);
        for (ConductorProtection row : context.protection().conductors()) {
            if (row.supply() && row.conditions().shortTime() == Verdict.FAILS && !inherited.conductor(row)) {
                findings.add(finding(context, row));
            }
        }
        return findings;
    }

    private Finding finding(CheckContext context, ConductorProtection row) {
        ShortTransient heat = row.heat();
        Quantity is = Quantity.of(heat.peakC(), "degC");
        Quantity wanted = Quantity.of(heat.limitC(), "degC");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(row.conductor()),
                context.names().shownConductor(row.conductor()) + " " + ProtectionReasons.hot(heat) + " in a short circuit of "
                        + Quantity.of(heat.worstA(), "A") + ", for a moment it bears " + wanted)
                .figures(is, wanted)
                .because("That current flows " + ProtectionReasons.time(heat.seconds()) + "; it begins at "
                        + Quantity.of(heat.startC(), "degC") + ".")
                .because("Faults in it give " + Quantity.of(heat.smallestA(), "A") + " to " + Quantity.of(heat.largestA(), "A")
                        + ".");
        int protector = row.overload().protector();
        if (protector >= 0) {
            builder.causedBy(context.names().element(protector), "clears it, at its slowest",
                    Double.isInfinite(heat.seconds()) ? null : Quantity.of(heat.seconds(), "s"));
            ShortMends mends = new ShortMends(context);
            mends.rating(row.conductor(), protector, 1, heat).forEach(builder::mend);
            mends.section(row.conductor(), protector, 1, heat).ifPresent(builder::mend);
        }
        Plan plan = context.plan();
        if (row.feeds().size() > 1 && row.feeds().stream().anyMatch(feed -> feed.next().isEmpty())) {
            builder.because("From the side of " + context.names().shown(plan.terminals().get(row.feeds().stream()
                    .filter(feed -> feed.next().isEmpty()).findFirst().orElseThrow().nearTerminal()).id())
                    + " no device clears it at all.");
        }
        return ProtectionReasons.derived(builder, context, row.conductor()).build();
    }
}
