// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.OverloadFigures;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/** A return meets the conditions of protection against the largest positive device whose faults it carries. */
final class ReturnProtectedRule implements Rule {

    @Override
    public String slug() {
        return "return-protected";
    }

    @Override
    public String says() {
        return "A return bears what the largest device whose faults it carries lets through.";
    }

    @Override
    public List<String> limits() {
        return List.of("device-rating.ratio", "device-rating.ratio-fixed", OverloadBandRule.FACTOR);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Inherited inherited = new Inherited(context);
        for (ConductorProtection row : context.protection().conductors()) {
            if (row.supply() || row.duties().isEmpty() || row.overload().protector() < 0 || inherited.conductor(row)) {
                continue;
            }
            if (row.conditions().rating() == Verdict.FAILS) {
                OverloadFigures figures = row.overload();
                findings.add(rated(context, row, figures.inA(), figures.ratio() * figures.izA(), "is rated"));
            } else if (row.conditions().overload() == Verdict.FAILS) {
                OverloadFigures figures = row.overload();
                findings.add(rated(context, row, figures.i2A(), figures.overloadFactor() * figures.izA(),
                        "clears an overload for certain only from"));
            } else if (row.conditions().shortTime() == Verdict.FAILS) {
                findings.add(hot(context, row));
            }
        }
        return findings;
    }

    private Finding rated(CheckContext context, ConductorProtection row, double amps, double limitA, String does) {
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(limitA, "A");
        String device = context.names().element(row.overload().protector());
        FindingBuilder builder = begin(context, row, context.names().shownConductor(row.conductor()) + " carries the faults that "
                + context.names().shown(device) + " clears; that " + does + " " + is + ", the return permits " + wanted)
                .figures(is, wanted);
        DeviceRatingRule.Smallest smallest = DeviceRatingRule.smallest(context, row.conductor());
        if (smallest != null) {
            double eachA = smallest.rating().correctedA() * amps / limitA;
            new SectionMends(context.plan(), context.names()).forRating(row.conductor(), smallest.rating(), eachA)
                    .ifPresent(builder::mend);
            new ParallelMends(context).forRating(row.conductor(), smallest.rating(), eachA).ifPresent(builder::mend);
        }
        return ProtectionReasons.derived(builder, context, row.conductor()).build();
    }

    private Finding hot(CheckContext context, ConductorProtection row) {
        ShortTransient heat = row.heat();
        Quantity wanted = Quantity.of(heat.limitC(), "degC");
        String device = context.names().element(row.overload().protector());
        FindingBuilder builder = begin(context, row, context.names().shownConductor(row.conductor()) + " "
                + ProtectionReasons.hot(heat) + " in a short circuit that " + context.names().shown(device)
                + " clears, for a moment it bears " + wanted)
                .figures(Quantity.of(heat.peakC(), "degC"), wanted)
                .because(Quantity.of(heat.worstA(), "A") + " flow " + ProtectionReasons.time(heat.seconds()) + ".");
        new ShortMends(context).section(row.conductor(), row.overload().protector(),
                StrictMath.min(1, row.duties().get(0).share()), heat).ifPresent(builder::mend);
        return ProtectionReasons.derived(builder, context, row.conductor()).build();
    }

    private FindingBuilder begin(CheckContext context, ConductorProtection row, String title) {
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(row.overload().protector());
        return Finding.of(slug(), Severity.ERROR, context.names().conductor(row.conductor()), title)
                .causedBy(context.names().element(row.overload().protector()), "largest device whose faults return through it",
                        Quantity.of(protector.ratingA(), "A"))
                .because("Nothing protects a return but the device in the supply.");
    }
}
