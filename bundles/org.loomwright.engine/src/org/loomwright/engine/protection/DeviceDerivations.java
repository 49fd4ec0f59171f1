// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;

/** How the figures of one protective device's row come about. */
final class DeviceDerivations {
    private final CheckContext context;
    private final DeviceCurves curves;

    DeviceDerivations(CheckContext context, DeviceCurves curves) {
        this.context = context;
        this.curves = curves;
    }

    List<Derivation> of(DeviceProtection row) {
        if (row.loadTerminal() < 0) {
            return List.of();
        }
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(row.protector());
        List<Derivation> found = new ArrayList<>();
        String partner = row.target() == Fault.Target.RETURN ? context.plan().terminals().get(row.partner()).id()
                : context.plan().bodies().get(row.partner()).id();
        found.add(new Derivation("current to break", Quantity.of(row.breakingA(), "A"), "U / Rloop, the device's share",
                List.of(new Input("fault at", Quantity.of(row.breakingA(), "A"),
                        context.plan().terminals().get(row.loadTerminal()).id() + " to " + partner),
                        new Input("U", Quantity.of(row.highestV(), "V"), "voltage before the fault"),
                        new Input("breaking capacity", Quantity.of(protector.breakingA(), "A"), String.valueOf(protector.part())),
                        new Input("rated voltage", Quantity.of(protector.ratedV(), "V"), String.valueOf(protector.part()))),
                "nodal analysis; batteries full, warm and new, all sources, nominal wires at 20 degC, smallest joints"));
        for (Selectivity selectivity : row.selectivity()) {
            found.add(selectivity(selectivity));
        }
        return found;
    }

    private Derivation selectivity(Selectivity selectivity) {
        CurvePair up = curves.hot(selectivity.upstream());
        CurvePair down = curves.hot(selectivity.downstream());
        return new Derivation("selective to " + context.names().element(selectivity.upstream()) + " up to",
                Quantity.of(selectivity.limitA(), "A"), "fastest time upstream = slowest time downstream",
                List.of(new Input("largest fault", Quantity.of(selectivity.largestA(), "A"), "behind the device"),
                        new Input("fastest upstream", Quantity.of(selectivity.upstreamS(), "s"),
                                up == null ? "no curve" : up.source()),
                        new Input("slowest downstream", Quantity.of(selectivity.downstreamS(), "s"),
                                down == null ? "no curve" : down.source()),
                        new Input("share upstream", Quantity.of(selectivity.share(), "1"), "sharing of the fault current")),
                "common practice; beyond the last gates both have a constant I2t, which is compared");
    }
}
