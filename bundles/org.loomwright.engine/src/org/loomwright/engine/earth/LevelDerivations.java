// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.CaseEarth.ContactFlow;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** How potentials of bodies and currents of contacts and seams came about. */
final class LevelDerivations {
    private static final String POINT = "operating point of the case";

    private final Plan plan;
    private final EarthNames names;
    private final PlanItems items;

    LevelDerivations(Plan plan, EarthNames names, PlanItems items) {
        this.plan = plan;
        this.names = names;
        this.items = items;
    }

    /** The figures of a body, an earth point, a case contact or a seam in one case. */
    List<ElementFigures> of(String element, CaseEarth at, EarthNetwork network) {
        List<ElementFigures> figures = new ArrayList<>();
        for (int body = 0; body < plan.bodies().size(); body++) {
            if (plan.bodies().get(body).id().equals(element) && !Double.isNaN(at.bodyV().get(body))) {
                figures.add(new ElementFigures(element, at.caseName(), List.of(potential(body, at, network))));
            }
        }
        for (ContactFlow contact : at.contacts()) {
            if (plan.terminals().get(contact.terminal()).id().equals(element)) {
                figures.add(new ElementFigures(element, at.caseName(), contact(contact)));
            }
        }
        for (int seam = 0; seam < plan.bodyLinks().size(); seam++) {
            if (plan.bodyLinks().get(seam).id().equals(element)) {
                figures.add(new ElementFigures(element, at.caseName(), List.of(LossFindings.kirchhoff("current of the seam",
                        Quantity.of(StrictMath.abs(at.seamA().get(seam)), "A"), POINT,
                        List.of(new Input("R", Quantity.of(1000 * plan.bodyLinks().get(seam).ohm(), "mohm"), element))))));
            }
        }
        return figures;
    }

    /** Along the way of fewest steps from the battery's minus; any other way gives the same. */
    private Derivation potential(int body, CaseEarth at, EarthNetwork network) {
        List<Input> inputs = new ArrayList<>();
        int[] way = network.way(network.home(), network.solved().at().bodyNode()[body]);
        int node = network.home();
        for (int item : way == null ? new int[0] : way) {
            int next = network.other(item, node);
            NetworkIndex.Owner owner = network.index().owner(item);
            double amps = StrictMath.abs(network.solved().itemA(item));
            inputs.add(new Input(owner == null ? network.index().network().items().get(item).id()
                    : names.carrier(owner.kind(), owner.index()),
                    Quantity.of(network.aboveMinusV(next) - network.aboveMinusV(node), "V"),
                    Quantity.of(amps, "A") + " x " + Quantity.of(1000 * network.ohm(item), "mohm")
                            + (owner == null ? "" : ", " + items.id(owner))));
            node = next;
        }
        return LossFindings.kirchhoff("potential of " + names.body(body) + " against the battery's minus",
                Quantity.of(at.bodyV().get(body), "V"),
                way == null ? "nodal equations; no closed way leads to it" : "sum of I x R on the way from the battery's minus",
                        inputs);
    }

    private static List<Derivation> contact(ContactFlow contact) {
        double ohm = contact.currentA() == 0 ? Double.NaN : contact.dropV() / contact.currentA();
        Input amps = new Input("I", Quantity.of(StrictMath.abs(contact.currentA()), "A"), POINT);
        Input resistance = new Input("R", Quantity.of(1000 * ohm, "mohm"), "contact and half of the body, or joint limits");
        return List.of(new Derivation("voltage over the contact", Quantity.of(StrictMath.abs(contact.dropV()), "V"), "I x R",
                List.of(amps, resistance), "Ohm's law"),
                new Derivation("heat in the contact", Quantity.of(contact.heatW(), "W"), "I^2 x R", List.of(amps, resistance),
                        "Joule's law"));
    }
}
