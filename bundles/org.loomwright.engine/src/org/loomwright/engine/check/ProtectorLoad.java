// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Quantity;

/**
 * What a protective device carries. Loads with a form factor k draw a pulsating current; ripples of several loads are not in
 * step, so their squares add: I = sqrt(Idc^2 + sum of (k^2 - 1) Iload^2).
 */
final class ProtectorLoad {
    private final CheckContext context;
    private final int element;
    private final Plan.Protector protector;
    private final List<Integer> consumers;

    ProtectorLoad(CheckContext context, int element, Plan.Protector protector) {
        this.context = context;
        this.element = element;
        this.protector = protector;
        consumers = context.circuits().consumersBelow(element);
    }

    int element() {
        return element;
    }

    Plan.Protector protector() {
        return protector;
    }

    /** Heating current in a case, A. */
    double heatingA(SolvedCase solved) {
        double dc = solved.running().elementA(element);
        double squares = dc * dc;
        for (int e : consumers) {
            if (context.plan().elements().get(e) instanceof Plan.Demand load && load.formFactor() > 1) {
                double amps = solved.running().elementA(e);
                squares += (load.formFactor() * load.formFactor() - 1) * amps * amps;
            }
        }
        return StrictMath.sqrt(squares);
    }

    /** Ambient of the device, degrees Celsius. */
    double ambientC(SolvedCase solved) {
        return Ambients.ofDevice(context.plan(), solved.state(), protector.device());
    }

    /** Factor on the rating at the ambient, from the curve's points; 1 where none are given, the nearest beyond their ends. */
    double ambientFactor(SolvedCase solved) {
        Plan.FuseCurve curve = protector.curve();
        if (curve == null || curve.factors().isEmpty()) {
            return 1;
        }
        double ambientC = ambientC(solved);
        List<Double> at = curve.factorAmbientsC();
        int i = 0;
        while (i < at.size() && at.get(i) < ambientC) {
            i++;
        }
        if (i == 0 || i == at.size()) {
            return curve.factors().get(i == 0 ? 0 : i - 1);
        }
        double share = (ambientC - at.get(i - 1)) / (at.get(i) - at.get(i - 1));
        return curve.factors().get(i - 1) + share * (curve.factors().get(i) - curve.factors().get(i - 1));
    }

    /** The loads that make its current, the largest first, three at most. */
    List<Cause> causes(SolvedCase solved) {
        List<Cause> causes = new ArrayList<>();
        consumers.stream().filter(e -> solved.running().elementA(e) > 0)
                .sorted((a, b) -> Double.compare(solved.running().elementA(b), solved.running().elementA(a))).limit(3)
                .forEach(e -> causes.add(new Cause(context.names().element(e), "current of the load",
                        Quantity.of(solved.running().elementA(e), "A"))));
        return causes;
    }

    /** How the heating current comes about. */
    Derivation derivation(SolvedCase solved) {
        List<Derivation.Input> inputs = new ArrayList<>();
        inputs.add(new Derivation.Input("Idc", Quantity.of(StrictMath.abs(solved.running().elementA(element)), "A"),
                "operating point of the case"));
        for (int e : consumers) {
            if (context.plan().elements().get(e) instanceof Plan.Demand load && load.formFactor() > 1) {
                inputs.add(new Derivation.Input("k", Quantity.of(load.formFactor(), "1"), context.names().element(e)));
                inputs.add(new Derivation.Input("Iload", Quantity.of(solved.running().elementA(e), "A"),
                        context.names().element(e)));
            }
        }
        return new Derivation("heating current", Quantity.of(heatingA(solved), "A"), "sqrt(Idc^2 + sum of (k^2 - 1) Iload^2)",
                inputs, "root mean square of a direct current with ripple");
    }
}
