// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.services.Measures;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.diagram.symbol.DeviceSymbols;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.diagram.symbol.Symbol;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.diagram.symbol.Symbols;

/** What takes current: its symbol at the end of the supply, and the beginning of its return. */
final class LoadDrawing {
    /** Height of the row in which supply and return lie, px below the upper side. */
    static final double ROW_Y = 17;
    private static final double HEIGHT_PX = 34;
    private static final double CENTRE_X = 34;
    private static final double STUB_X = 62;
    private static final double EXTRA_ROW_PX = 24;
    private final Drafting drafting;
    private final Unit unit;
    private final List<String> inlets;
    private final Returns returns;

    LoadDrawing(Drafting drafting, Unit unit) {
        this.drafting = drafting;
        this.unit = unit;
        inlets = drafting.inlets(unit);
        returns = returns(drafting, unit);
    }

    /** How a device returns: by its first minus or case terminal that is connected, or by the body its case is bolted to. */
    static Returns returns(Drafting drafting, Unit unit) {
        for (String terminal : drafting.terminals(unit)) {
            String key = LineContent.key(unit, terminal);
            if (drafting.polarity().minus(key) && drafting.content().at(key).stream().anyMatch(drafting.polarity()::back)) {
                return Returns.of(drafting, key);
            }
        }
        return Returns.NONE;
    }

    Returns returns() {
        return returns;
    }

    /** True when its case carries the return to the body it is bolted to. */
    private boolean byCase() {
        return returns == Returns.NONE && unit.device().getBody() != null && unit.part() != null
                && unit.part().getTerminals().stream().anyMatch(spec -> "case".equals(spec.getName()));
    }

    private String bodyName() {
        return byCase() ? String.valueOf(unit.device().getBody().getName()) : returns.bodyName();
    }

    /** Text of a return cable that is not the supply's, for example {@code -W13  6 mm2}. */
    private String cableText() {
        for (Wire wire : returns.wires()) {
            boolean shared = inlets.stream().flatMap(name -> drafting.flow().into(LineContent.key(unit, name)).stream())
                    .anyMatch(supply -> supply.cableId().equals(wire.cableId()));
            if (!shared) {
                return wire.designation()
                        + (wire.sectionMm2() == null ? "" : "  " + drafting.measures().section(wire.sectionMm2()));
            }
        }
        return "";
    }

    private double textX() {
        return STUB_X + (drafting.figures().studied() ? 20 : 0);
    }

    /** End of the line drawn for the return within the node. */
    private double stubEnd() {
        double label = LineText.width(drafting.measure(), cableText(), false);
        return StrictMath.max(STUB_X + 16, label == 0 ? 0 : textX() + label + 8);
    }

    /** Terminals that are fed. */
    int inlets() {
        return inlets.size();
    }

    /** Width of a column of loads, px. */
    static double width(Collection<LoadDrawing> column) {
        return StrictMath.ceil(column.stream().mapToDouble(LoadDrawing::need).max().orElse(0) / 10) * 10;
    }

    /** Width wanted, px. */
    private double need() {
        double frame = returns.structure() || byCase()
                ? FrameStub.SIGN_PX + LineText.width(drafting.measure(), bodyName(), false) + 10 : 0;
        return stubEnd() + frame;
    }

    /** The node, as wide as all of its column. */
    LineNode node(double width) {
        Role tone = drafting.tone(unit);
        NodeMarks marks = new NodeMarks(unit);
        List<LayoutPort> ports = new ArrayList<>();
        SymbolKind kind = DeviceSymbols.of(unit.part());
        Symbol symbol = Symbols.of(taker(kind) ? kind : SymbolKind.LOAD, tone);
        double y = ROW_Y;
        double x = symbol.port("in").at().x() + CENTRE_X;
        for (int i = 0; i < inlets.size(); i++) {
            String key = LineContent.key(unit, inlets.get(i));
            ports.add(drafting.passesOn(key) ? drafting.leftPort(key + "|", y) : drafting.leftPort(key, y));
            if (i == 0) {
                marks.line(drafting.lead(unit, inlets.get(i)), 0, y, x, y);
            } else {
                marks.line(drafting.lead(unit, inlets.get(i)), 0, y, 12, y).symbol(SymbolKind.TERMINAL, tone, 14.75, y)
                        .text(LineText.start(22, y + 4, inlets.get(i), false, Role.INK2));
            }
            y += EXTRA_ROW_PX;
        }
        marks.shapes(symbol.at(CENTRE_X, ROW_Y));
        back(marks, tone, width, CENTRE_X + symbol.port("out").at().x());
        marks.badge(drafting.figures(), STUB_X - 6, 4, Badge.SIZE_PX);
        double height = HEIGHT_PX + EXTRA_ROW_PX * StrictMath.max(0, inlets.size() - 1);
        return new LineNode(unit.id(), unit.id(), width, height, ports,
                inlets.isEmpty() ? LayoutNode.Column.ANY : LayoutNode.Column.LAST, marks.groups());
    }

    private void back(NodeMarks marks, Role tone, double width, double from) {
        boolean structure = returns.structure() || byCase();
        if (!structure && returns.target() == null) {
            marks.line(Stroke.dashed(tone, LineWeight.FINE.px(), 6.0, 3.0), from, ROW_Y, from + 14, ROW_Y)
                    .symbol(SymbolKind.TERMINAL, tone, from + 16.75, ROW_Y);
            return;
        }
        double px = returns.wires().isEmpty() ? LineWeight.LIGHT.px() : LineWeight.of(returns.wires().get(0).sectionMm2()).px();
        double end = structure ? stubEnd() : width;
        marks.line(Stroke.dashed(tone, px, 6.0, 3.0), from, ROW_Y, end, ROW_Y);
        String text = cableText();
        if (!text.isEmpty()) {
            marks.text(LineText.start(textX(), ROW_Y - 7, text, false, tone == Role.INK ? Role.INK2 : tone));
        }
        if (structure) {
            marks.frame(end, ROW_Y, bodyName(), tone).shapes(drafting.colours().body(byCase() ? unit.device().getBody()
                    : returns.earth().getBody(), end + FrameStub.SIGN_PX, ROW_Y + 9));
        }
    }

    private static boolean taker(SymbolKind kind) {
        return switch (kind) {
            case MOTOR, LAMP, HEATER, COOLER, SOCKET, LOAD, METER, INVERTER, CONVERTER, RECTIFIER, RADIO, SENSOR, SCREEN,
                    CONTROLLER, BOX -> true;
            default -> false;
        };
    }
}
