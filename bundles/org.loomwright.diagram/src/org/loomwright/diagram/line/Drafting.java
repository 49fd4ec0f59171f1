// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.List;
import java.util.Set;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.Measures;
import org.loomwright.diagram.symbol.LineWeight;

/**
 * What every node of a line diagram is drawn with.
 *
 * @param content  what is shown
 * @param polarity supply and return side
 * @param flow     direction of the drawing
 * @param figures  what the studies said
 * @param measures how sections, lengths and temperatures are written
 * @param measure  metrics of the typeface
 * @param colours  those of the overlay
 * @param inService keys of the wires that carry current for what is on
 */
record Drafting(LineContent content, Polarity polarity, Flow flow, LineFigures figures, Measures measures, TextMeasure measure,
        LineColours colours, Set<String> inService) {
    /** Pitch of rows, px. */
    static final double ROW_PX = 40;
    /** Below this no figure is written: it is nothing but rounding. */
    static final double NOTHING_A = 1e-4;

    static Drafting of(LineContent content, LineFigures figures, Measures measures, TextMeasure measure, LineColours colours) {
        Polarity polarity = Polarity.of(content);
        return new Drafting(content, polarity, Flow.of(content, polarity), figures, measures, measure, colours,
                InService.of(content, polarity, figures));
    }

    /** Colour of a device: grey when a case is drawn in which it neither is on nor carries current for what is. */
    Role tone(Unit unit) {
        if (!figures.live() || figures.loadOn(unit.id())) {
            return Role.INK;
        }
        boolean known = figures.loadA(unit.id()).isPresent();
        for (String terminal : terminals(unit)) {
            for (Wire wire : content.at(LineContent.key(unit, terminal))) {
                known |= figures.cableA(wire.cableId()).isPresent();
                if (inService.contains(wire.key())) {
                    return Role.INK;
                }
            }
        }
        return known ? Role.INK3 : Role.INK;
    }

    /** Colour of a wire: grey when a case is drawn in which it carries no current for anything that is on. */
    Role tone(Wire wire) {
        return figures.live() && figures.cableA(wire.cableId()).isPresent() && !inService.contains(wire.key()) ? Role.INK3
                : Role.INK;
    }

    /** The line inside a device that leads to a terminal: as heavy as the heaviest conductor there. */
    Stroke lead(Unit unit, String terminal) {
        double px = LineWeight.FINE.px();
        for (Wire wire : content.at(LineContent.key(unit, terminal))) {
            px = StrictMath.max(px, LineWeight.of(wire.sectionMm2()).px());
        }
        return Stroke.solid(tone(unit, terminal), px);
    }

    /** Colour of what leads to a terminal: that of the wires there; that of the device without any. */
    Role tone(Unit unit, String terminal) {
        List<Wire> there = content.at(LineContent.key(unit, terminal));
        if (there.isEmpty()) {
            return tone(unit);
        }
        return there.stream().anyMatch(wire -> tone(wire) == Role.INK) ? Role.INK : Role.INK3;
    }

    /** True when a contact is drawn closed: as it is in the case that is drawn; its rest state without one. */
    boolean closed(Unit unit, Link link) {
        return figures.live() ? figures.closed(unit.id() + "#" + link.name()) : link.closed();
    }

    /** Terminals of a device that the part states or a wire uses, in the order of the part. */
    List<String> terminals(Unit unit) {
        return List.copyOf(content.terminals(unit));
    }

    /** Terminals on the supply side with a wire that comes in. */
    List<String> inlets(Unit unit) {
        return terminals(unit).stream().filter(name -> !flow.into(LineContent.key(unit, name)).isEmpty()).toList();
    }

    /** Terminals on the supply side that only feed. */
    List<String> outlets(Unit unit) {
        return terminals(unit).stream().filter(name -> flow.into(LineContent.key(unit, name)).isEmpty()
                && !flow.outOf(LineContent.key(unit, name)).isEmpty()).toList();
    }

    /** True when a terminal is reached by a wire and feeds others too. */
    boolean passesOn(String key) {
        return !flow.into(key).isEmpty() && !flow.outOf(key).isEmpty();
    }

    /** Id of the port that takes incoming wires. */
    static String left(String key) {
        return key + "<";
    }

    /** Id of the port from which wires leave. */
    static String right(String key) {
        return key + ">";
    }

    LayoutPort leftPort(String key, double y) {
        return new LayoutPort(left(key), 0, y, LayoutPort.Side.LEFT);
    }

    LayoutPort rightPort(String key, double x, double y) {
        return new LayoutPort(right(key), x, y, LayoutPort.Side.RIGHT);
    }
}
