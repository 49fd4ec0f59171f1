// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.check.NetworkIndex.Owner;
import org.loomwright.engine.heat.ConductorRating;

/** Finds the same thing of the plan in different networks of it, and what it bears. */
final class PlanItems {
    private final Plan plan;
    private final ElementNames names;

    PlanItems(Plan plan, ElementNames names) {
        this.plan = plan;
        this.names = names;
    }

    /** Item of a network that stands for something of the plan, -1 when it is not part of it. */
    static int item(CaseNetwork at, Owner owner) {
        int[] items = switch (owner.kind()) {
            case CONDUCTOR -> at.conductorItem();
            case ELEMENT -> at.elementItem();
            case BOND -> at.bondItem();
            case SEAM -> at.linkItem();
            case EARTH_CONTACT -> at.earthItem();
            case CASE_CONTACT -> at.caseItem();
        };
        return items[owner.index()];
    }

    /** Id under which findings name it: of the contact of a case its device. */
    String id(Owner owner) {
        return switch (owner.kind()) {
            case CONDUCTOR -> names.conductor(owner.index());
            case ELEMENT -> names.element(owner.index());
            case BOND -> plan.bonds().get(owner.index()).id();
            case SEAM -> plan.bodyLinks().get(owner.index()).id();
            case EARTH_CONTACT -> plan.terminals().get(owner.index()).id();
            case CASE_CONTACT -> plan.devices().get(plan.terminals().get(owner.index()).device()).id();
        };
    }

    /** Continuous rating, A; NaN when none is stated. */
    double ratedA(Owner owner, List<ConductorRating> ratings) {
        if (owner.kind() == NetworkIndex.Kind.CONDUCTOR) {
            return ratings.get(owner.index()).correctedA();
        } else if (owner.kind() == NetworkIndex.Kind.BOND) {
            return plan.bonds().get(owner.index()).currentMaxA();
        } else if (owner.kind() != NetworkIndex.Kind.ELEMENT) {
            return Double.NaN;
        }
        Plan.Element element = plan.elements().get(owner.index());
        return element instanceof Plan.Joint joint ? joint.currentMaxA()
                : element instanceof Plan.Contact contact ? contact.continuousA()
                : element instanceof Plan.Shunt shunt ? shunt.currentMaxA()
                : element instanceof Plan.Diode diode ? diode.currentMaxA()
                : element instanceof Plan.Protector protector ? protector.ratingA() : Double.NaN;
    }
}
