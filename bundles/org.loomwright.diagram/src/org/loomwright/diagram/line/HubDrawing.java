// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.model.vehicle.EarthPoint;

/** A bar of the return with what comes in at the right and what goes on at the left; or an element between two such. */
final class HubDrawing {
    private static final double HEAD_PX = 20;
    private static final double ROW_PX = 40;
    private final Drafting drafting;
    private final String id;
    private final Unit unit;
    private final String title;
    private final SymbolKind element;
    private final List<String> rights = new ArrayList<>();
    private final List<String> lefts = new ArrayList<>();
    private final List<String> from = new ArrayList<>();
    private final Map<String, Double> weights = new LinkedHashMap<>();

    HubDrawing(Drafting drafting, String id, ReturnHub hub) {
        this.drafting = drafting;
        this.id = id;
        unit = hub.unit();
        title = hub.shown();
        element = null;
    }

    /** @param aNearer end a is the nearer one to the battery */
    HubDrawing(Drafting drafting, String id, ReturnHubs.Between between, boolean aNearer) {
        this.drafting = drafting;
        this.id = id;
        unit = between.unit();
        ReturnHub near = aNearer ? between.a() : between.b();
        ReturnHub far = aNearer ? between.b() : between.a();
        title = unit.designation() + "  " + LineContent.terminalName(near.id()) + " / " + LineContent.terminalName(far.id());
        element = switch (between.link().kind()) {
            case SHUNT -> SymbolKind.SHUNT;
            case CONTACT -> between.link().closed() ? SymbolKind.CONTACT_CLOSED : SymbolKind.CONTACT_OPEN;
            case DIODE -> SymbolKind.DIODE;
            default -> SymbolKind.CONNECTOR;
        };
    }

    String id() {
        return id;
    }

    Unit unit() {
        return unit;
    }

    /** A port for one more line that comes in. */
    String right(String line, double px) {
        weights.put(line, px);
        rights.add(line);
        return id + ">" + line;
    }

    /** A port for one more line that goes on. */
    String left(String line, double px) {
        weights.put(line, px);
        lefts.add(line);
        return id + "<" + line;
    }

    /** Names of terminals that return here without a line of their own. */
    void from(List<String> terminals) {
        from.addAll(terminals);
    }

    LineNode node() {
        Role tone = drafting.tone(unit);
        NodeMarks marks = new NodeMarks(unit);
        boolean alone = drafting.inlets(unit).isEmpty() && drafting.outlets(unit).isEmpty();
        if (!alone) {
            marks.part();
        }
        boolean badge = drafting.figures().studied();
        double text = LineText.width(drafting.measure(), title, true);
        List<String> list = lines();
        double wide = StrictMath.max(60, text + (badge ? 40 : 10));
        for (String line : list) {
            wide = StrictMath.max(wide, LineText.width(drafting.measure(), line, false) + 10);
        }
        double width = StrictMath.ceil(wide / 10) * 10;
        double middle = width / 2;
        int rows = StrictMath.max(1, StrictMath.max(rights.size(), lefts.size()));
        List<LayoutPort> ports = new ArrayList<>();
        double near = element == null ? middle : middle - 15;
        double far = element == null ? middle : middle + 15;
        double top = HEAD_PX + ROW_PX / 2;
        double bottom = top + ROW_PX * (rows - 1);
        for (int i = 0; i < lefts.size(); i++) {
            double y = top + ROW_PX * i;
            ports.add(new LayoutPort(id + "<" + lefts.get(i), 0, y, LayoutPort.Side.LEFT));
            marks.line(lead(lefts.get(i), tone), 0, y, near, y);
        }
        for (int i = 0; i < rights.size(); i++) {
            double y = top + ROW_PX * i;
            ports.add(new LayoutPort(id + ">" + rights.get(i), width, y, LayoutPort.Side.RIGHT));
            marks.line(lead(rights.get(i), tone), far, y, width, y);
        }
        if (element == null) {
            marks.line(Stroke.solid(tone, LineWeight.BAR_PX), middle, top - 12, middle, bottom + 12);
        } else {
            if (lefts.size() > 1) {
                marks.line(Stroke.solid(tone, LineWeight.BAR_PX), near, top - 6, near, top + ROW_PX * (lefts.size() - 1) + 6);
            }
            if (rights.size() > 1) {
                marks.line(Stroke.solid(tone, LineWeight.BAR_PX), far, top - 6, far, top + ROW_PX * (rights.size() - 1) + 6);
            }
            marks.symbol(element, tone, middle, top);
        }
        marks.text(LineText.start(5, 13, title, true, tone)).badge(drafting.figures(), text + 18, 8, 16);
        double y = bottom + 28;
        for (String line : list) {
            marks.text(LineText.start(5, y, line, false, Role.INK2));
            y += 15;
        }
        double height = list.isEmpty() ? bottom + 16 : y - 8;
        LayoutNode.Column column = rights.isEmpty() && lefts.isEmpty() ? LayoutNode.Column.LAST : LayoutNode.Column.ANY;
        return new LineNode(id, alone ? unit.id() : null, width, height, ports, column, marks.groups());
    }

    private Stroke lead(String line, Role tone) {
        return new Stroke(tone, weights.get(line), List.of(8.0, 4.0));
    }

    /** {@code from -K1:85 -K2:85}, two names to a line. */
    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < from.size(); i += 2) {
            String pair = from.get(i) + (i + 1 < from.size() ? "  " + from.get(i + 1) : "");
            lines.add(i == 0 ? "from " + pair : pair);
        }
        return lines;
    }

    static LineNode earth(Drafting drafting, String id, EarthPoint earth) {
        String body = earth.getBody() == null || earth.getBody().getName() == null ? "" : "  " + earth.getBody().getName();
        String text = "-" + earth.getName() + body;
        double width = StrictMath.ceil((38 + LineText.width(drafting.measure(), text, false)) / 10) * 10;
        NodeMarks marks = new NodeMarks(org.loomwright.model.files.Fragments.of(earth), text);
        marks.line(Stroke.dashed(Role.INK, LineWeight.LIGHT.px(), 6.0, 3.0), width, 12, 15, 12).symbol(SymbolKind.FRAME, Role.INK,
                15, 22).text(LineText.start(34, 32, text, false, Role.INK2))
                .shapes(drafting.colours().body(earth.getBody(), 2, 32));
        return new LineNode(id, org.loomwright.model.files.Fragments.of(earth), width, 40,
                List.of(new LayoutPort(id + ">", width, 12, LayoutPort.Side.RIGHT)), LayoutNode.Column.ANY, marks.groups());
    }
}
