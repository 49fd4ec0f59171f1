// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.earth.LossCase.BodyShift;
import org.loomwright.engine.earth.LossCase.Detour;
import org.loomwright.engine.earth.LossCase.HotPart;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;

/** How the figures of a lost strap came about. */
final class LossDerivations {
    private static final String WITHOUT = "operating point of the case without the strap";
    private static final String WITH = "operating point of the case";

    private final Plan plan;
    private final EarthNames names;

    LossDerivations(Plan plan, EarthNames names) {
        this.plan = plan;
        this.names = names;
    }

    /** What the row's worst case and its faults rest on. */
    List<Derivation> of(LossRow row) {
        List<Derivation> found = new ArrayList<>();
        if (row.worst() != null) {
            found.addAll(of(row.worst()));
        }
        found.addAll(faults(row));
        return found;
    }

    /** The faults that are no longer cleared. */
    List<Derivation> faults(LossRow row) {
        return row.uncleared().stream().map(this::clearing).toList();
    }

    /** The figures of one case. */
    List<Derivation> of(LossCase at) {
        List<Derivation> found = new ArrayList<>();
        if (at.strandedA() > 0) {
            found.add(LossFindings.kirchhoff("return current left without a way", Quantity.of(at.strandedA(), "A"),
                    "current of the strap before, nothing joins its ends without it",
                    List.of(LossFindings.limit(plan.practice().limit(LossEffects.STRANDED)))));
        }
        for (Detour step : at.path()) {
            found.add(LossFindings.kirchhoff("current of " + names.carrier(step.kind(), step.index()) + " after the loss",
                    Quantity.of(step.afterA(), "A"),
                            "nodal equations solved again without the strap, conductors as warm as before",
                    List.of(new Input("before", Quantity.of(step.beforeA(), "A"), WITH),
                            new Input("strap before", Quantity.of(at.carriedA(), "A"), WITH))));
        }
        at.hot().forEach(part -> found.add(hot(part)));
        for (BodyShift shift : at.bodies()) {
            found.add(LossFindings.kirchhoff("potential of " + names.body(shift.body()) + " after the loss",
                    Quantity.of(shift.afterV(), "V"), "V(body) - V(battery minus), " + WITHOUT,
                    List.of(new Input("before", Quantity.of(shift.beforeV(), "V"), WITH))));
        }
        for (LossCase.LostLoad load : at.loads()) {
            found.add(LossFindings.kirchhoff("voltage at " + names.element(load.demand()) + " after the loss",
                    Quantity.of(load.afterV(), "V"), "V(plus) - V(minus), " + WITHOUT,
                    List.of(new Input("before", Quantity.of(load.beforeV(), "V"), WITH), least(load))));
        }
        return found;
    }

    private Input least(LossCase.LostLoad load) {
        Plan.Demand demand = (Plan.Demand) plan.elements().get(load.demand());
        double share = plan.practice().value(LossFunctions.DROP);
        return Double.isNaN(demand.minV())
                ? new Input("least", Quantity.of(load.beforeV() * (1 - share), "V"), LossFunctions.DROP + " of the practice")
                : new Input("least", Quantity.of(demand.minV(), "V"), names.id(load.demand()));
    }

    private Derivation hot(HotPart part) {
        Detour at = part.detour();
        String carrier = names.carrier(at.kind(), at.index());
        List<Input> inputs = new ArrayList<>(List.of(new Input("I after", Quantity.of(at.afterA(), "A"), WITHOUT),
                new Input("I before", Quantity.of(at.beforeA(), "A"), WITH),
                new Input("rating", Quantity.of(at.ratedA(), "A"), at.element())));
        if (Double.isNaN(part.afterC())) {
            return new Derivation("current of " + carrier + " that counts", Quantity.of(part.countsA(), "A"),
                    "root of the mean square over the cycle of the loads that come and go", inputs, "Joule's law");
        }
        inputs.add(new Input("T before", Quantity.of(part.beforeC(), "degC"), WITH));
        inputs.add(new Input("Tmax", Quantity.of(part.maxC(), "degC"), at.element()));
        return new Derivation("peak temperature of " + carrier, Quantity.of(part.afterC(), "degC"),
                "steady or periodic solution of C dT/dt = I^2 R(T) - (T - Ta) Iz^2 R(Tmax) / (Tmax - Tref)", inputs,
                "heat balance that the published rating implies");
    }

    private Derivation clearing(LossRow.Uncleared fault) {
        return new Derivation("time to clear a fault of " + names.conductorId(fault.conductor()) + " to "
                + names.body(fault.body()), Quantity.of(fault.afterS(), "s"),
                        "slowest curves of the devices at the smallest fault current, one opening after the other",
                List.of(new Input("I after", Quantity.of(fault.afterA(), "A"), "smallest fault current without the strap"),
                        new Input("I before", Quantity.of(fault.beforeA(), "A"), "smallest fault current"),
                        new Input("time before", Quantity.of(fault.beforeS(), "s"), names.id(fault.protector())),
                        LossFindings.limit(plan.practice().limit(FaultClearing.TIME))),
                "Ohm's law; curve of the device");
    }
}
