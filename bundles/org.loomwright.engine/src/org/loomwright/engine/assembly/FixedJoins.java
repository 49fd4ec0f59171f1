// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is conductively joined in every state: bars, conductors, joints, shunts, protectors, structure with its bonds, seams,
 * earth points and cases, and the two minus sides of a converter that is not isolated. Contacts and diodes are up to the caller.
 */
public final class FixedJoins {
    private FixedJoins() {
    }

    /** Sets over the terminals of the plan, followed by its bodies. */
    public static DisjointSets of(Plan plan) {
        int terminals = plan.terminals().size();
        DisjointSets sets = new DisjointSets(terminals + plan.bodies().size());
        joinTerminals(plan, sets);
        for (Plan.Conductor conductor : plan.conductors()) {
            sets.join(conductor.a(), conductor.b());
        }
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Joint joint) {
                sets.join(joint.a(), joint.b());
            } else if (element instanceof Plan.Shunt shunt) {
                sets.join(shunt.a(), shunt.b());
            } else if (element instanceof Plan.Protector protector) {
                sets.join(protector.a(), protector.b());
            } else if (element instanceof Plan.Converter converter && !converter.isolated()) {
                sets.join(converter.inB(), converter.outB());
            }
        }
        for (Plan.Bond bond : plan.bonds()) {
            sets.join(bond.a(), bond.b());
        }
        for (Plan.BodyLink link : plan.bodyLinks()) {
            sets.join(terminals + link.bodyA(), terminals + link.bodyB());
        }
        return sets;
    }

    private static void joinTerminals(Plan plan, DisjointSets sets) {
        List<Plan.Terminal> terminals = plan.terminals();
        Map<String, Integer> bars = new HashMap<>();
        for (int t = 0; t < terminals.size(); t++) {
            Plan.Terminal terminal = terminals.get(t);
            if (terminal.bar() != null && terminal.device() >= 0) {
                Integer first = bars.putIfAbsent(terminal.device() + " " + terminal.bar(), t);
                sets.join(t, first == null ? -1 : first);
            }
            int body = bodyOf(plan, terminal);
            sets.join(t, body < 0 ? -1 : terminals.size() + body);
        }
    }

    /** Body that a terminal touches: of an earth point, or of a case terminal of a device that is bolted to one. */
    static int bodyOf(Plan plan, Plan.Terminal terminal) {
        if (terminal.device() < 0) {
            return terminal.body();
        }
        return "case".equals(terminal.role()) ? plan.devices().get(terminal.device()).body() : -1;
    }
}
