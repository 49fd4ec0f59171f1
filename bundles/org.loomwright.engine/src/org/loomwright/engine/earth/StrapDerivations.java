// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.earth.StrapRow.StrapState;
import org.loomwright.engine.earth.StrapRow.SufficientStrap;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** How the figures of a strap came about. */
final class StrapDerivations {
    private final Plan plan;

    StrapDerivations(Plan plan) {
        this.plan = plan;
    }

    /** The strap that would do, once; current, voltage and heat in each case. */
    List<ElementFigures> of(StrapRow row) {
        Plan.Bond bond = plan.bonds().get(row.bond());
        List<ElementFigures> figures = new ArrayList<>();
        if (row.sufficient() != null) {
            figures.add(new ElementFigures(bond.id(), null, sufficient(bond, row.sufficient())));
        }
        for (StrapState state : row.states()) {
            if (state.currentA() > 0) {
                figures.add(new ElementFigures(bond.id(), state.caseName(), state(bond, state)));
            }
        }
        return figures;
    }

    private List<Derivation> state(Plan.Bond bond, StrapState state) {
        Input amps = new Input("I", Quantity.of(state.currentA(), "A"), "operating point of the case");
        Input ohm = new Input("R", Quantity.of(1000 * bond.ohm(), "mohm"), bond.part() == null ? bond.id() : bond.part());
        Practice.Limit limit = StrapLoads.limit(plan.practice(), state.cranking());
        return List.of(LossFindings.kirchhoff("current of the strap", Quantity.of(state.currentA(), "A"),
                "operating point of the case",
                List.of(new Input("rating", Quantity.of(bond.currentMaxA(), "A"), bond.part() == null ? bond.id()
                        : bond.part()))),
                new Derivation("heat of the strap", Quantity.of(state.heatW(), "W"), "I^2 x R", List.of(amps, ohm),
                        "Joule's law"),
                new Derivation("voltage over the strap", Quantity.of(state.dropV(), "V"), "I x R",
                        List.of(amps, ohm, LossFindings.limit(limit)), "Ohm's law"));
    }

    private List<Derivation> sufficient(Plan.Bond bond, SufficientStrap strap) {
        StrapState at = strap.dropState();
        Practice.Limit limit = StrapLoads.limit(plan.practice(), at.cranking());
        Practice.Limit lay = plan.practice().limit(StrapLoads.LAY);
        List<Derivation> found = new ArrayList<>();
        found.add(new Derivation("section that the permitted voltage asks for", Quantity.of(strap.forDropMm2(), "mm2"),
                "rho x lay x L / (U / I - Rjoints)",
                List.of(new Input("rho", Quantity.of(StrapLoads.COPPER_OHM_MM2_PER_M, "ohm mm2/m"), "IEC 60028"),
                        new Input("lay", Quantity.of(lay.value(), lay.unit()), lay.name() + ", " + lay.source()),
                        new Input("L", Quantity.of(strap.lengthMm(), "mm"), bond.id()),
                        new Input("U", Quantity.of(limit.value(), "V"), limit.name() + ", " + limit.source()),
                        new Input("I", Quantity.of(at.currentA(), "A"), "case " + at.caseName()),
                        new Input("Rjoints", Quantity.of(1000 * strap.jointsOhm(), "mohm"), "two times " + StrapLoads.JOINT)),
                "Ohm's law"));
        if (strap.ratingState() != null) {
            found.add(new Derivation("section that the current asks for", Quantity.of(strap.forRatingMm2(), "mm2"),
                    "S x (I / Imax)^(4/3)",
                    List.of(new Input("S", Quantity.of(bond.sectionMm2(), "mm2"), bond.part() == null ? bond.id() : bond.part()),
                            new Input("I", Quantity.of(strap.ratingState().currentA(), "A"), "case "
                                    + strap.ratingState().caseName()),
                            new Input("Imax", Quantity.of(bond.currentMaxA(), "A"), bond.part() == null ? bond.id()
                                    : bond.part())),
                    "conductors of like shape give off heat through their surface, which goes with the root of the section"));
        }
        found.add(new Derivation("strap that would do", Quantity.of(strap.sectionMm2(), "mm2"),
                "the larger of both, up to whole mm2",
                List.of(new Input("for the voltage", Quantity.of(strap.forDropMm2(), "mm2"), "above"),
                        new Input("for the current", Quantity.of(strap.forRatingMm2(), "mm2"), "above")), "common practice"));
        return found;
    }
}
