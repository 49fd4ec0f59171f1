// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A new conductor is thick enough to survive handling and vibration, whatever it carries. Wiring that is there already is left
 * out: it is not bought or laid.
 */
final class SectionMinRule implements Rule {
    static final String SINGLE = "section-min.single";
    static final String SHEATHED = "section-min.sheathed";

    @Override
    public String slug() {
        return "section-min";
    }

    @Override
    public String says() {
        return "A new conductor has at least the practice's smallest section for the way it is laid.";
    }

    @Override
    public List<String> limits() {
        return List.of(SINGLE, SHEATHED);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        SectionMends mends = new SectionMends(context.plan(), context.names());
        for (Plan.Cable cable : context.plan().cables()) {
            Practice.Limit limit = context.practice().limit(cable.sheathed() ? SHEATHED : SINGLE);
            if (cable.existing() || !Beyond.below(cable.sectionMm2(), limit.value())) {
                continue;
            }
            Quantity section = Quantity.of(cable.sectionMm2(), "mm2");
            Quantity wanted = Quantity.of(limit.value(), "mm2");
            FindingBuilder builder = Finding.of(slug(), Severity.WARNING, cable.id(),
                    context.names().shown(cable.id()) + " has " + section + ", the smallest "
                            + (cable.sheathed() ? "inside a sheath" : "for a single core") + " is " + wanted)
                    .figures(section, wanted)
                    .because("Thin cores break by handling and vibration, whatever current they carry.")
                    .derived(new Derivation("smallest section", wanted, "limit of the practice", List.of(
                            new Derivation.Input("limit", wanted, limit.name())), limit.source()));
            mends.atLeast(cable, limit.value()).ifPresent(builder::mend);
            findings.add(builder.build());
        }
        return findings;
    }
}
