// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.services.Measures;
import org.loomwright.diagram.symbol.DeviceSymbols;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.model.parts.Cell;

/** A source: its plus at the right, its return below. */
final class SourceDrawing {
    private static final double CENTRE_X = 24;
    private static final double TEXT_X = 48;
    private static final double ROW_PX = 26;
    /** Room is kept for such figures, so that nothing moves from case to case. */
    private static final String WIDE_FIGURE = "888 Ah  88.8 V  \u221288.8 A";

    private SourceDrawing() {
    }

    static LineNode node(Drafting drafting, Unit unit) {
        Role tone = drafting.tone(unit);
        NodeMarks marks = new NodeMarks(unit);
        List<String> used = new ArrayList<>(drafting.inlets(unit));
        used.addAll(drafting.outlets(unit));
        List<String> taps = used.stream().filter(name -> drafting.polarity().minus(LineContent.key(unit, name))).toList();
        used.removeAll(taps);
        String figure = figure(drafting, unit);
        double width = 20 + TEXT_X + StrictMath.max(60,
                StrictMath.max(LineText.width(drafting.measure(), unit.designation(), true)
                + 26, StrictMath.max(LineText.width(drafting.measure(), label(drafting, unit), false),
                LineText.width(drafting.measure(), drafting.figures().live() ? WIDE_FIGURE : figure, false))));
        width = StrictMath.ceil(width / 10) * 10;
        List<LayoutPort> ports = new ArrayList<>();
        boolean battery = DeviceSymbols.of(unit.part()) == SymbolKind.BATTERY;
        double plusY = battery ? 16 : 30;
        double middleY = battery ? 52 : 30;
        boolean fed = false;
        for (int i = 0; i < used.size(); i++) {
            String key = LineContent.key(unit, used.get(i));
            double y = i == 0 ? plusY : middleY + 34 + ROW_PX * i;
            Stroke lead = drafting.lead(unit, used.get(i));
            double from = i == 0 ? battery ? CENTRE_X : CENTRE_X + 15 : width - 16;
            if (i > 0) {
                marks.symbol(SymbolKind.TERMINAL, tone, from - 2.75, y)
                        .text(LineText.text(from - 10, y + 4, used.get(i), false, org.loomwright.diagram.scene.Mark.Anchor.END,
                                Role.INK2));
            }
            marks.line(lead, from, y, width, y);
            ports.add(drafting.rightPort(key, width, y));
            if (!drafting.flow().into(key).isEmpty()) {
                double start = i == 0 && battery ? CENTRE_X : i == 0 ? CENTRE_X - 15 : from - 5.5;
                marks.line(lead, 0, y, start, y);
                ports.add(drafting.leftPort(key, y));
                fed = true;
            }
        }
        for (String tap : taps) {
            fed |= lower(drafting, unit, tap, marks, ports, width, middleY + (battery ? 20 : 15));
        }
        if (battery && !used.isEmpty()) {
            marks.line(drafting.lead(unit, used.get(0)), CENTRE_X, plusY, CENTRE_X, middleY - 20);
        }
        marks.symbol(kind(unit), tone, CENTRE_X, middleY);
        double textY = battery ? 48 : 50;
        marks.text(LineText.start(TEXT_X, textY, unit.designation(), true, tone))
                .text(LineText.start(TEXT_X, textY + 15, label(drafting, unit), false, tone == Role.INK ? Role.INK2 : tone))
                .text(LineText.start(TEXT_X, textY + 30, figure, false, tone == Role.INK ? Role.INK2 : tone));
        double end = back(drafting, unit, marks, tone, middleY + (battery ? 20 : 15), textY + 40);
        marks.badge(drafting.figures(), TEXT_X + LineText.width(drafting.measure(), unit.designation(), true) + 14,
                textY - 6, 16);
        double height = StrictMath.max(end + 6, middleY + 44 + ROW_PX * StrictMath.max(0, used.size() - 1));
        return new LineNode(unit.id(), unit.id(), width, height, ports,
                fed ? LayoutNode.Column.ANY : LayoutNode.Column.FIRST, marks.groups());
    }

    /** A minus terminal in the supply: the middle of batteries in series. True when a wire comes to it. */
    private static boolean lower(Drafting drafting, Unit unit, String terminal, NodeMarks marks, List<LayoutPort> ports,
            double width, double from) {
        String key = LineContent.key(unit, terminal);
        Stroke lead = drafting.lead(unit, terminal);
        double y = from + 8;
        marks.line(lead, CENTRE_X, from, CENTRE_X, y);
        boolean in = !drafting.flow().into(key).isEmpty();
        if (in) {
            marks.line(lead, 0, y, CENTRE_X, y);
            ports.add(drafting.leftPort(key, y));
        }
        if (!drafting.flow().outOf(key).isEmpty()) {
            marks.line(lead, CENTRE_X, y, width, y);
            ports.add(drafting.rightPort(key, width, y));
        }
        return in;
    }

    private static SymbolKind kind(Unit unit) {
        SymbolKind kind = DeviceSymbols.of(unit.part());
        return kind == SymbolKind.MOTOR ? SymbolKind.GENERATOR : kind;
    }

    /** The return: down from the symbol to the sign of the frame, or the terminal that gathers it; gives the lowest y. */
    private static double back(Drafting drafting, Unit unit, NodeMarks marks, Role tone, double from, double textEnd) {
        Returns returns = LoadDrawing.returns(drafting, unit);
        String body = returns.structure() ? returns.bodyName()
                : returns.target() == null && unit.device().getBody() != null
                        ? String.valueOf(unit.device().getBody().getName()) : "";
        double y = StrictMath.max(from + 14, textEnd);
        double px = returns.wires().isEmpty() ? LineWeight.LIGHT.px() : LineWeight.of(returns.wires().get(0).sectionMm2()).px();
        if (!body.isEmpty()) {
            marks.line(Stroke.dashed(tone, px, 6.0, 3.0), CENTRE_X, from, CENTRE_X, y).symbol(SymbolKind.FRAME, tone, CENTRE_X, y)
                    .text(LineText.start(TEXT_X, y + 7, cable(returns) + body, false, tone == Role.INK ? Role.INK2 : tone))
                    .shapes(drafting.colours().body(returns.structure() ? returns.earth().getBody() : unit.device().getBody(),
                            CENTRE_X - 13, y + 10));
            return y + 16;
        }
        if (returns.target() != null) {
            marks.line(Stroke.dashed(tone, px, 6.0, 3.0), CENTRE_X, from, CENTRE_X, y)
                    .symbol(SymbolKind.TERMINAL, tone, CENTRE_X, y + 2.75)
                    .text(LineText.start(TEXT_X, y + 7, cable(returns) + "to " + BackText.shown(returns.target()), false,
                            tone == Role.INK ? Role.INK2 : tone));
            return y + 12;
        }
        return textEnd;
    }

    private static String cable(Returns returns) {
        return returns.wires().isEmpty() ? "" : returns.wires().get(0).designation() + "  ";
    }

    private static String label(Drafting drafting, Unit unit) {
        return LineText.fitted(drafting.measure(), unit.label(), false, 120);
    }

    /** Capacity, and in a case the voltage and the current given; a negative current is taken. */
    private static String figure(Drafting drafting, Unit unit) {
        List<String> words = new ArrayList<>();
        for (Cell cell : unit.part().getCells()) {
            if (cell.getCapacityAh() != null && words.isEmpty()) {
                words.add(Measures.number(cell.getCapacityAh()) + " Ah");
            }
        }
        drafting.outlets(unit).stream().filter(name -> !drafting.polarity().minus(LineContent.key(unit, name)))
                .map(name -> drafting.figures().terminalV(LineContent.key(unit, name))).filter(OptionalDouble::isPresent)
                .findFirst().ifPresent(volts -> words.add(LineText.volts(volts.getAsDouble())));
        OptionalDouble amps = drafting.figures().sourceA(unit.id());
        if (amps.isPresent() && StrictMath.abs(amps.getAsDouble()) > Drafting.NOTHING_A) {
            words.add(LineText.figure(amps.getAsDouble()) + " A");
        }
        return String.join("  ", words);
    }
}
