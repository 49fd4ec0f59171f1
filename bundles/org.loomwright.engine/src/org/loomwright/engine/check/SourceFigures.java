// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/**
 * How the voltage of a battery, regulated source or converter, or the current of a contact, joint, shunt or coil comes about
 * in each case.
 */
final class SourceFigures {
    private final CheckContext context;

    SourceFigures(CheckContext context) {
        this.context = context;
    }

    /** The figures of an element of a device (index in elements). */
    List<ElementFigures> of(int element) {
        List<ElementFigures> figures = new ArrayList<>();
        for (SolvedCase solved : context.cases()) {
            int item = solved.running().at().elementItem()[element];
            if (item >= 0) {
                Derivation derivation = derivation(solved, element, item);
                if (derivation != null) {
                    figures.add(new ElementFigures(context.names().element(element), solved.state().name(), List.of(derivation)));
                }
            }
        }
        return figures;
    }

    private Derivation derivation(SolvedCase solved, int element, int item) {
        Network.Item it = solved.running().point().network().items().get(item);
        double amps = solved.running().itemA(item);
        String id = context.plan().elements().get(element).id();
        if (it instanceof Network.Emf emf) {
            return new Derivation("voltage at the terminals", volts(solved, emf.a(), emf.b()), "E - Idrawn x Ri",
                    List.of(new Input("E", Quantity.of(emf.volt(), "V"), id + ", at its charge in the case"),
                            new Input("Idrawn", Quantity.of(-amps, "A"), "operating point of the case; below 0 while charging"),
                            new Input("Ri", Quantity.of(1000 * emf.ohmAt(amps), "mohm"), id
                                    + (emf.ohmAt(amps) > emf.ohm() ? ", by the charging current that it accepts"
                                            : ", at its age and temperature in the case"))),
                    "open-circuit voltage behind a resistance");
        } else if (it instanceof Network.Regulator regulator) {
            boolean limiting = solved.running().point().limiting()[item];
            return new Derivation("voltage at the terminals", volts(solved, regulator.a(), regulator.b()),
                    limiting ? "what the network takes at the current limit"
                            : "set voltage - Idrawn x droop, at the sense terminals",
                    List.of(new Input("set voltage", Quantity.of(regulator.setV(), "V"), id),
                            new Input("Idrawn", Quantity.of(-amps, "A"), "operating point of the case"),
                            new Input("droop", Quantity.of(1000 * regulator.droopOhm(), "mohm"), id
                                    + ", or source.droop of the practice"),
                            new Input("current limit", Quantity.of(regulator.limitA(), "A"), id)),
                    "constant voltage up to a constant current");
        } else if (it instanceof Network.ConverterItem converter) {
            return new Derivation("current at the input", Quantity.of(amps, "A"), "(Vout x Iout / efficiency + standby) / Vin",
                    List.of(new Input("Vout", volts(solved, converter.outA(), converter.outB()), "operating point of the case"),
                            new Input("Iout", Quantity.of(solved.running().point().outputA()[item], "A"),
                                    "operating point of the case"),
                            new Input("efficiency", Quantity.of(converter.efficiency(), "1"), id),
                            new Input("standby", Quantity.of(converter.standbyW(), "W"), id),
                            new Input("Vin", volts(solved, converter.inA(), converter.inB()), "operating point of the case")),
                    "power balance of the converter");
        }
        int[] ends = NetworkIndex.nodes(it);
        if (ends.length < 2) {
            return null;
        }
        return new Derivation("current", Quantity.of(StrictMath.abs(amps), "A"), "operating point",
                List.of(new Input("voltage over it", Quantity.of(StrictMath.abs(solved.running().point().voltage(ends[0],
                        ends[1])),
                        "V"), "operating point of the case")),
                "Kirchhoff's laws");
    }

    private static Quantity volts(SolvedCase solved, int plus, int minus) {
        return Quantity.of(solved.running().point().voltage(plus, minus), "V");
    }
}
