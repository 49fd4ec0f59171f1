// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;
import org.loomwright.diagram.symbol.LineWeight;

/**
 * What a line of the drawing stands for.
 *
 * @param element id of its cable; null for what gathers several
 * @param name    what it is, in words; may be null
 * @param weight  how heavy it is
 * @param back    true for a return
 * @param tone    ink, or that of what is off
 * @param from    where it comes from, as documents write it
 * @param to      where it leads
 */
record Trace(String element, String name, LineWeight weight, boolean back, Role tone, String from, String to) {

    /** A wire, drawn from one of its ends to the other. */
    static Trace of(Drafting drafting, Wire wire, boolean back, String from, String to) {
        String name = (wire.designation() + " " + BackText.shown(wire.a()) + " / " + BackText.shown(wire.b())).strip();
        return new Trace(wire.cableId(), name, LineWeight.of(wire.sectionMm2()), back, drafting.tone(wire), BackText.shown(from),
                BackText.shown(to));
    }

    /** The same without words, for a short piece beside the line itself. */
    Trace unnamed() {
        return new Trace(element, null, weight, back, tone, from, to);
    }

    /** The stroke in a colour. */
    Stroke stroke(Tone colour) {
        return back ? weight.back(colour) : weight.supply(colour);
    }
}
