// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.model.parts.DeviceKind;

/**
 * A device that lies in conductors: fuse, switch, relay, cut-out, link, converter, connector. Each of its elements has a row of
 * its own, from the terminals that are fed at the left to those that feed at the right.
 */
final class SeriesDrawing {
    private static final double FIRST_ROW_Y = 38;
    private static final double ROW_PX = 36;
    private static final double INSET_PX = 8;
    private final Drafting drafting;
    private final Unit unit;
    private final Role tone;
    private final NodeMarks marks;
    private final Set<String> inlets;
    private final Set<String> outlets;
    private final Map<String, Double> leftRows = new LinkedHashMap<>();
    private final Map<String, Double> rightRows = new LinkedHashMap<>();
    private final List<LayoutPort> ports = new ArrayList<>();
    private final Map<String, Double> drives = new LinkedHashMap<>();
    private final double width;
    private double y = FIRST_ROW_Y;

    SeriesDrawing(Drafting drafting, Unit unit) {
        this.drafting = drafting;
        this.unit = unit;
        tone = drafting.tone(unit);
        marks = new NodeMarks(unit);
        inlets = new LinkedHashSet<>(drafting.inlets(unit));
        outlets = new LinkedHashSet<>(drafting.outlets(unit));
        double text = LineText.width(drafting.measure(), unit.designation(), true)
                + (drafting.figures().studied() ? 40 : 0);
        boolean named = unit.links().stream().anyMatch(this::named);
        width = StrictMath.ceil(StrictMath.max(minusRoom(), StrictMath.max(named ? 90 : 60, text + 12)) / 10) * 10;
    }

    LineNode node() {
        double centre = width / 2;
        boolean badge = drafting.figures().badge(unit.id()) != null;
        double text = LineText.width(drafting.measure(), unit.designation(), true);
        double start = centre - (text + (badge ? 26 : 0)) / 2;
        marks.text(LineText.start(start, 14, unit.designation(), true, tone));
        marks.badge(drafting.figures(), start + text + 14, 8, 16);
        for (Link link : unit.links()) {
            if (link.carries() && !minus(link.a()) && !minus(link.b())) {
                carry(link);
            }
        }
        unit.links().stream().filter(link -> !link.carries()).forEach(this::coil);
        inlets.forEach(this::spareTerminal);
        outlets.forEach(this::spareTerminal);
        minusRows();
        double height = StrictMath.max(y - ROW_PX + 16, 40);
        return new LineNode(unit.id(), unit.id(), width, height, ports,
                inlets.isEmpty() && !outlets.isEmpty() ? LayoutNode.Column.FIRST : LayoutNode.Column.ANY, marks.groups());
    }

    private boolean minus(String terminal) {
        return drafting.polarity().minus(LineContent.key(unit, terminal));
    }

    private boolean named(Link link) {
        return link.kind() != Link.Kind.WAY && link.kind() != Link.Kind.PROTECTOR && link.kind() != Link.Kind.BAR
                && unit.kind() != DeviceKind.ISOLATOR;
    }

    private void carry(Link link) {
        boolean aIn = inlets.contains(link.a());
        boolean bIn = inlets.contains(link.b());
        if (!aIn && !bIn && !outlets.contains(link.a()) && !outlets.contains(link.b()) && unit.links().size() > 1) {
            return;
        }
        if (link.kind() == Link.Kind.BAR) {
            return;
        }
        String left = bIn && !aIn ? link.b() : link.a();
        String right = left.equals(link.a()) ? link.b() : link.a();
        double row = y;
        y += ROW_PX;
        double centre = width / 2;
        lead(left, true, row, centre - 15, named(link));
        marks.symbol(symbol(link), tone, centre, row);
        if (link.kind() == Link.Kind.WAY || link.kind() == Link.Kind.PROTECTOR) {
            String id = link.kind() == Link.Kind.WAY ? unit.id() + "/" + link.name() : unit.id();
            marks.shapes(drafting.colours().fuse(id, centre, row));
        }
        if (!link.rating().isEmpty()) {
            marks.text(LineText.middle(centre, row - 10, link.rating(), false, tone == Role.INK ? Role.INK2 : tone));
        }
        if (inlets.contains(right)) {
            // fed from both ends: the line turns back to the left in a row of its own
            double below = y;
            y += ROW_PX;
            double turn = width - INSET_PX;
            marks.line(drafting.lead(unit, right), centre + 15, row, turn, row, turn, below, 0, below);
            if (named(link)) {
                marks.text(LineText.start(4, below - 6, right, false, Role.INK2));
            }
            if (leftRows.putIfAbsent(right, below) == null) {
                port(right, below, true);
            }
        } else {
            lead(right, false, row, centre + 15, named(link));
        }
        if (link.drive() != null) {
            drives.put(link.drive(), row);
            threshold(link, row);
        }
    }

    /** A line between an element and its terminal's port, or to the row in which the port lies already. */
    private void lead(String terminal, boolean left, double row, double from, boolean show) {
        Map<String, Double> rows = left ? leftRows : rightRows;
        Stroke stroke = drafting.lead(unit, terminal);
        boolean wired = inlets.contains(terminal) || outlets.contains(terminal);
        Double before = rows.putIfAbsent(terminal, row);
        double edge = left ? 0 : width;
        double inset = left ? INSET_PX : width - INSET_PX;
        if (before != null) {
            marks.line(stroke, from, row, inset, row, inset, before).symbol(SymbolKind.JUNCTION, tone, inset, before);
            return;
        }
        if (wired) {
            marks.line(stroke, from, row, edge, row);
            port(terminal, row, left);
        } else {
            double ring = left ? INSET_PX : width - INSET_PX;
            marks.line(stroke, from, row, left ? ring + 2.75 : ring - 2.75, row).symbol(SymbolKind.TERMINAL, tone, ring, row);
        }
        if (show) {
            marks.text(left ? LineText.start(4, row - 6, terminal, false, Role.INK2)
                    : LineText.text(width - 4, row - 6, terminal, false, Mark.Anchor.END, Role.INK2));
        }
    }

    private void port(String terminal, double row, boolean left) {
        String key = LineContent.key(unit, terminal);
        if (left && inlets.contains(terminal)) {
            ports.add(drafting.passesOn(key) ? drafting.leftPort(key + "|", row) : drafting.leftPort(key, row));
        } else {
            ports.add(left ? new LayoutPort(Drafting.right(key), 0, row, LayoutPort.Side.LEFT)
                    : drafting.rightPort(key, width, row));
        }
    }

    private SymbolKind symbol(Link link) {
        return switch (link.kind()) {
            case WAY, PROTECTOR -> SymbolKind.FUSE;
            case CONTACT -> drafting.closed(unit, link) ? SymbolKind.CONTACT_CLOSED : SymbolKind.CONTACT_OPEN;
            case DIODE -> SymbolKind.DIODE;
            case SHUNT -> SymbolKind.SHUNT;
            case CONVERTER -> SymbolKind.CONVERTER;
            case JOINT -> SymbolKind.CONNECTOR;
            case COIL -> SymbolKind.COIL;
            case BAR -> SymbolKind.JUNCTION;
        };
    }

    private void threshold(Link link, double row) {
        boolean known = unit.part().getThresholds().stream().anyMatch(each -> link.drive().equals(each.getName()));
        if (!known) {
            return;
        }
        double centre = width / 2;
        double middle = y - ROW_PX + 28;
        marks.line(Stroke.dashed(tone, 1, 4.0, 2.0), centre, row, centre, middle - 9);
        marks.shapes(List.of(new Mark.Area(List.of(new Point(centre - 14, middle - 9), new Point(centre + 14, middle - 9),
                new Point(centre + 14, middle + 9), new Point(centre - 14, middle + 9)), Fill.solid(Role.PLATE),
                Stroke.solid(tone, LineWeight.LIGHT.px()))));
        marks.text(LineText.middle(centre, middle + 4, unit.kind() == DeviceKind.CUT_OUT ? "U <" : "U >", false, tone));
        y += 18;
    }

    private void coil(Link link) {
        String plus = minus(link.a()) && !minus(link.b()) ? link.b() : link.a();
        String other = plus.equals(link.a()) ? link.b() : link.a();
        double row = y;
        y += ROW_PX;
        double centre = width / 2;
        lead(plus, true, row, centre - 10, true);
        Double contact = drives.get(link.name());
        if (contact != null) {
            marks.line(Stroke.dashed(tone, 1, 4.0, 2.0), centre, contact, centre, row - 7);
        }
        marks.symbol(SymbolKind.COIL, tone, centre, row);
        if (inlets.contains(other) || outlets.contains(other)) {
            lead(other, false, row, centre + 10, true);
        }
    }

    /** A supply terminal that no element was drawn for. */
    private void spareTerminal(String terminal) {
        if (leftRows.containsKey(terminal) || rightRows.containsKey(terminal)) {
            return;
        }
        double row = y;
        y += ROW_PX - 10;
        boolean left = inlets.contains(terminal);
        (left ? leftRows : rightRows).put(terminal, row);
        double ring = left ? 14 : width - 14;
        marks.line(drafting.lead(unit, terminal), left ? 0 : width, row, left ? ring - 2.75 : ring + 2.75, row)
                .symbol(SymbolKind.TERMINAL, tone, ring, row)
                .text(left ? LineText.start(ring + 8, row + 4, terminal, false, Role.INK2)
                        : LineText.text(ring - 8, row + 4, terminal, false, Mark.Anchor.END, Role.INK2));
        port(terminal, row, left);
    }

    /** Terminals of the return side that are not in the return's own path: coils, electronics. */
    private List<String> minusTerminals() {
        return drafting.terminals(unit).stream().filter(terminal -> {
            String key = LineContent.key(unit, terminal);
            return drafting.polarity().minus(key) && !Returns.collects(drafting.content(), key)
                    && drafting.content().at(key).stream().anyMatch(drafting.polarity()::back);
        }).toList();
    }

    private double minusRoom() {
        double room = 0;
        for (String terminal : minusTerminals()) {
            Returns returns = Returns.of(drafting, LineContent.key(unit, terminal));
            room = StrictMath.max(room, 56 + LineText.width(drafting.measure(), terminal, false)
                    + LineText.width(drafting.measure(), end(returns), false));
        }
        return room;
    }

    private static String end(Returns returns) {
        return returns.structure() ? returns.bodyName()
                : returns.target() == null ? "" : "to " + BackText.shown(returns.target());
    }

    private void minusRows() {
        for (String terminal : minusTerminals()) {
            Returns returns = Returns.of(drafting, LineContent.key(unit, terminal));
            double row = y;
            y += ROW_PX;
            double from = 18 + LineText.width(drafting.measure(), terminal, false);
            Role soft = tone == Role.INK ? Role.INK2 : tone;
            marks.text(LineText.start(12, row + 4, terminal, false, soft));
            marks.line(Stroke.dashed(tone, LineWeight.FINE.px(), 6.0, 3.0), from, row, from + 16, row);
            if (returns.structure()) {
                marks.frame(from + 16, row, end(returns), tone)
                        .shapes(drafting.colours().body(returns.earth().getBody(), from + 16 + FrameStub.SIGN_PX, row + 9));
            } else {
                marks.symbol(SymbolKind.TERMINAL, tone, from + 18.75, row)
                        .text(LineText.start(from + 27, row + 4, end(returns), false, soft));
            }
        }
    }
}
