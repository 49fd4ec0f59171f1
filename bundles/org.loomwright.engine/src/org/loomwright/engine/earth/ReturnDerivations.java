// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.earth.ReturnRow.OtherWay;
import org.loomwright.engine.earth.ReturnRow.Way;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;

/** How the figures of a load's return came about. */
final class ReturnDerivations {
    private static final String POINT = "operating point of the case";

    private final Plan plan;
    private final EarthNames names;

    ReturnDerivations(Plan plan, EarthNames names) {
        this.plan = plan;
        this.names = names;
    }

    List<Derivation> of(ReturnRow row) {
        Practice.Limit asked = plan.practice().limit(LoadReturns.THRESHOLD);
        Input own = new Input("I", Quantity.of(row.currentA(), "A"), POINT);
        Input self = new Input("R", Quantity.of(1000 * row.selfOhm(), "mohm"), "way back with its parallel ways");
        List<Derivation> found = new ArrayList<>();
        found.add(LossFindings.kirchhoff("current", Quantity.of(row.currentA(), "A"), POINT,
                List.of(new Input("own return from", Quantity.of(asked.value(), "A"), asked.name() + ", " + asked.source()))));
        found.add(LossFindings.kirchhoff("resistance of the way back", Quantity.of(1000 * row.selfOhm(), "mohm"),
                "potential at the load's minus for 1 A through " + String.join(", ", row.path()), List.of()));
        if (row.sharedWith() >= 0) {
            found.add(LossFindings.kirchhoff("resistance shared with " + names.element(row.sharedWith()),
                    Quantity.of(1000 * row.sharedOhm(), "mohm"),
                            "potential at this load's minus for 1 A out of the other's minus",
                    List.of(new Input("moves it by", Quantity.of(row.sharedV(), "V"), "times the other's current"))));
        }
        found.add(LossFindings.kirchhoff("moved by others", Quantity.of(row.othersV(), "V"), "U - I x R",
                List.of(new Input("U", Quantity.of(row.returnV(), "V"), POINT), own, self)));
        if (row.other() != null) {
            found.add(copper(row.other()));
            found.add(otherVolts(row));
        }
        found.add(LossFindings.kirchhoff("voltage lost in the return", Quantity.of(row.returnV(), "V"),
                "I x R + what others cause", List.of(own, self, new Input("others", Quantity.of(row.othersV(), "V"), "above"))));
        return found;
    }

    private Derivation copper(OtherWay other) {
        return new Derivation("more copper with the other return", Quantity.of(other.moreCopperKg(), "kg"),
                "density x S x L - copper of its own return now",
                List.of(new Input("density", Quantity.of(Copper.DENSITY_KG_PER_DM3, "g/cm3"), "IEC 60028"),
                        new Input("S", Quantity.of(other.sectionMm2(), "mm2"), "as now"),
                        new Input("L", Quantity.of(other.lengthMm(), "mm"), other.way() == Way.OWN
                                ? "beside the supply of this load alone" : "straight to " + other.at() + ", slack and tails"),
                        new Input("now", Quantity.of(other.copperNowKg(), "kg"), "conductors that carry its return alone")),
                "geometry");
    }

    private Derivation otherVolts(ReturnRow row) {
        return new Derivation("voltage its own current would lose in the other return",
                Quantity.of(row.other().returnV(), "V"), row.other().way() == Way.OWN
                        ? "I x R of the supply of this load alone" : "I x (R of the stub + R of the structure from "
                                + row.other().at() + ")",
                List.of(new Input("I", Quantity.of(row.currentA(), "A"), POINT),
                        new Input("R", Quantity.of(1000 * row.other().returnV() / row.currentA(), "mohm"), "as told above")),
                "Ohm's law");
    }
}
