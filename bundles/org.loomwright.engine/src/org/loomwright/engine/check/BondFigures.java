// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** How the figures of a strap come about: the voltage lost over it in each case. */
final class BondFigures {
    private final CheckContext context;

    BondFigures(CheckContext context) {
        this.context = context;
    }

    /** The figures of a bond (index in the plan). */
    List<ElementFigures> of(int index) {
        Plan.Bond bond = context.plan().bonds().get(index);
        List<ElementFigures> figures = new ArrayList<>();
        for (SolvedCase solved : context.cases()) {
            double amps = StrictMath.abs(solved.running().itemA(solved.running().at().bondItem()[index]));
            Derivation lost = new Derivation("voltage lost",
                    Quantity.of(StrictMath.abs(solved.running().voltage(bond.a(), bond.b())), "V"), "I x R",
                    List.of(new Input("I", Quantity.of(amps, "A"), "operating point of the case"),
                            new Input("R", Quantity.of(1000 * bond.ohm(), "mohm"), bond.part() == null ? bond.id()
                                    : bond.part())),
                    "Ohm's law");
            figures.add(new ElementFigures(bond.id(), solved.state().name(), List.of(lost)));
        }
        return figures;
    }
}
