// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.OverloadFigures;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Where an overload is possible, the current that the device clears for certain is at most 1.45 times the rating of the
 * conductor. Returns are judged by {@link ReturnProtectedRule}.
 */
final class OverloadBandRule implements Rule {
    static final String FACTOR = "overload-band.factor";

    @Override
    public String slug() {
        return "overload-band";
    }

    @Override
    public String says() {
        return "An overload is cleared before the conductor suffers.";
    }

    @Override
    public List<String> limits() {
        return List.of(FACTOR);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Inherited inherited = new Inherited(context);
        for (ConductorProtection row : context.protection().conductors()) {
            if (row.supply() && row.conditions().overload() == Verdict.FAILS && !inherited.conductor(row)) {
                findings.add(finding(context, row));
            }
        }
        return findings;
    }

    private Finding finding(CheckContext context, ConductorProtection row) {
        OverloadFigures figures = row.overload();
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(figures.protector());
        String device = context.names().element(figures.protector());
        double limitA = figures.overloadFactor() * figures.izA();
        Quantity is = Quantity.of(figures.i2A(), "A");
        Quantity wanted = Quantity.of(limitA, "A");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(row.conductor()),
                context.names().shownConductor(row.conductor()) + " bears " + Quantity.of(figures.izA(), "A")
                        + ", but the " + protector.kind() + " " + context.names().shown(device)
                        + " clears an overload for certain only from " + is + ": permitted are " + wanted)
                .figures(is, wanted);
        if (!Double.isNaN(figures.steadyBelowC())) {
            builder.because("At just less than that for long it would reach " + Quantity.of(figures.steadyBelowC(), "degC")
                    + " in its hottest ambient.");
        }
        builder.because("Something behind it can draw more than it is made for, or a source lies there.");
        builder.causedBy(device, "current that it clears for certain", is);
        ProtectorMends.atMost(context, figures.protector(), figures.inA() * limitA / figures.i2A()).forEach(builder::mend);
        DeviceRatingRule.Smallest smallest = DeviceRatingRule.smallest(context, row.conductor());
        if (smallest != null) {
            double eachA = figures.i2A() / figures.overloadFactor() / smallest.cores();
            new SectionMends(context.plan(), context.names()).forRating(row.conductor(), smallest.rating(), eachA)
                    .ifPresent(builder::mend);
            new ParallelMends(context).forRating(row.conductor(), smallest.rating(), eachA).ifPresent(builder::mend);
        }
        return ProtectionReasons.derived(builder, context, row.conductor()).build();
    }
}
