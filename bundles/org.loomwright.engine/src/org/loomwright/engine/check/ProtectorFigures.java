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

/** How the figures of a protective device come about: its heating current and loading in each case. */
final class ProtectorFigures {
    private final CheckContext context;

    ProtectorFigures(CheckContext context) {
        this.context = context;
    }

    /** The figures of a protective device (index in elements). */
    List<ElementFigures> of(int element, Plan.Protector protector) {
        ProtectorLoad load = new ProtectorLoad(context, element, protector);
        List<ElementFigures> figures = new ArrayList<>();
        for (SolvedCase solved : context.cases()) {
            double usableA = protector.ratingA() * load.ambientFactor(solved);
            Derivation loading = new Derivation("loading", Quantity.of(100 * load.heatingA(solved) / usableA, "%"),
                    "I / (In x f(T))",
                    List.of(new Input("I", Quantity.of(load.heatingA(solved), "A"), "heating current"),
                            new Input("In", Quantity.of(protector.ratingA(), "A"), String.valueOf(protector.part())),
                            new Input("f(T)", Quantity.of(load.ambientFactor(solved), "1"),
                                    protector.curve() == null ? "no ambient factors given" : protector.curve().source()),
                            new Input("T", Quantity.of(load.ambientC(solved), "degC"), "zone of the device in the case")),
                    "fuse makers' guides");
            figures.add(new ElementFigures(context.names().element(element), solved.state().name(),
                    List.of(load.derivation(solved), loading)));
        }
        return figures;
    }
}
