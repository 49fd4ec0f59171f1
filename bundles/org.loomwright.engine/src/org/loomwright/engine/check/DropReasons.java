// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.DropBreakdown.Share;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;

/** Says how the voltage at a load comes about and names the elements that lose most of it. */
final class DropReasons {
    private static final int NAMED = 3;
    private static final double WORTH_NAMING = 0.05;

    private final ElementNames names;
    private final PartWords words;

    DropReasons(Plan plan, ElementNames names) {
        this.names = names;
        words = new PartWords(plan, names);
    }

    /** Adds reasons and causes for a load that gets less than {@code wantedV}. */
    void tell(FindingBuilder builder, DropBreakdown parts, double wantedV) {
        String source = parts.source() == null ? "The source" : names.shown(parts.source());
        if (parts.sourceV() < wantedV) {
            builder.because(source + " itself has only " + Quantity.of(parts.sourceV(), "V")
                    + " at its terminals in this case; no cable mends that.");
            if (parts.source() != null) {
                builder.causedBy(parts.source(), "voltage at its terminals", Quantity.of(parts.sourceV(), "V"));
            }
        } else {
            builder.because(source + " has " + Quantity.of(parts.sourceV(), "V") + " at its terminals; "
                    + Quantity.of(parts.dropV(), "V") + " are lost on the way.");
        }
        causes(builder, parts);
    }

    /** Adds the elements with the largest shares as causes. */
    void causes(FindingBuilder builder, DropBreakdown parts) {
        List<Map.Entry<String, Double>> byElement = parts.byElement();
        for (int i = 0; i < StrictMath.min(NAMED, byElement.size()); i++) {
            Map.Entry<String, Double> entry = byElement.get(i);
            if (i == 0 || parts.shareOf(entry.getValue()) >= WORTH_NAMING) {
                builder.causedBy(entry.getKey(), Quantity.of(entry.getValue(), "V") + " in " + words.of(parts, entry.getKey()),
                        Quantity.of(100 * parts.shareOf(entry.getValue()), "%"));
            }
        }
    }

    /** How the voltage at the load comes about. */
    Derivation voltage(DropBreakdown parts) {
        List<Derivation.Input> inputs = new ArrayList<>();
        inputs.add(new Derivation.Input("Vsource", Quantity.of(parts.sourceV(), "V"),
                parts.source() == null ? "source" : parts.source()));
        inputs.addAll(shares(parts));
        return new Derivation("voltage at the load", Quantity.of(parts.loadV(), "V"),
                "Vsource - sum of the voltages lost on the way",
                inputs, "Kirchhoff's voltage law");
    }

    /** How the drop comes about. */
    Derivation drop(DropBreakdown parts) {
        return new Derivation("voltage drop", Quantity.of(parts.dropV(), "V"), "sum of I x R along supply and return",
                shares(parts),
                "Kirchhoff's voltage law; currents at nominal voltage, the battery's own drop left out");
    }

    private List<Derivation.Input> shares(DropBreakdown parts) {
        List<Derivation.Input> inputs = new ArrayList<>();
        for (Share share : parts.shares()) {
            inputs.add(new Derivation.Input((share.returns() ? "return: " : "supply: ") + PartWords.kind(share.part()),
                    Quantity.of(share.volts(), "V"), share.element() + ", " + Quantity.of(share.amps(), "A")));
        }
        return inputs;
    }
}
