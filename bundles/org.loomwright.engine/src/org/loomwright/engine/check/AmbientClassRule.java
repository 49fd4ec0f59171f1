// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/** The hottest zone that a cable passes stays a margin below the temperature of its insulation. */
final class AmbientClassRule implements Rule {
    private static final String MARGIN = "ambient-class.margin";

    @Override
    public String slug() {
        return "ambient-class";
    }

    @Override
    public String says() {
        return "The hottest zone along a cable stays a margin below the temperature of its insulation.";
    }

    @Override
    public List<String> limits() {
        return List.of(MARGIN);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        Practice.Limit margin = context.practice().limit(MARGIN);
        List<Finding> findings = new ArrayList<>();
        for (Plan.Cable cable : context.plan().cables()) {
            if (cable.zone() < 0 || Double.isNaN(cable.maxC())) {
                continue;
            }
            Plan.Zone zone = context.plan().zones().get(cable.zone());
            double limitC = cable.maxC() - margin.value();
            if (Beyond.above(zone.ambientMaxC(), limitC)) {
                findings.add(finding(context, cable, zone, limitC, margin));
            }
        }
        return findings;
    }

    private Finding finding(CheckContext context, Plan.Cable cable, Plan.Zone zone, double limitC, Practice.Limit margin) {
        Quantity ambient = Quantity.of(zone.ambientMaxC(), "degC");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, cable.id(),
                context.names().shown(cable.id()) + " passes zone " + zone.id() + " at " + ambient + ", its insulation for "
                        + Quantity.of(cable.maxC(), "degC") + " suits up to " + Quantity.of(limitC, "degC"))
                .figures(ambient, Quantity.of(limitC, "degC"))
                .because("The zone leaves less than " + Quantity.of(margin.value(), "K") + " for the conductor's own warming.")
                .causedBy(zone.id(), "highest ambient of the zone", ambient)
                .mend(Mend.inWords("Use a cable for at least " + Quantity.of(zone.ambientMaxC() + margin.value(), "degC")
                        + ", or lead it around zone " + zone.id() + "."));
        return builder.derived(new Derivation("highest ambient permitted", Quantity.of(limitC, "degC"), "Tmax - margin",
                List.of(new Derivation.Input("Tmax", Quantity.of(cable.maxC(), "degC"), cable.part() + ", " + cable.partSource()),
                        new Derivation.Input("margin", Quantity.of(margin.value(), "K"), margin.name() + ", " + margin.source())),
                margin.source())).build();
    }
}
