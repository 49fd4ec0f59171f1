// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.Way;

/** A distribution point: its bars, what feeds them at the left, its ways with their fuses at the right. */
final class BarDrawing {
    private static final double HEAD_PX = 26;
    private static final double FIRST_ROW_PX = 24;
    private static final double BAR_GAP_PX = 24;
    private static final double WAY_PX = 84;
    private final Drafting drafting;
    private final Unit unit;
    private final Role tone;
    private final NodeMarks marks;
    private final List<LayoutPort> ports = new ArrayList<>();
    private final Map<String, List<Row>> bars = new LinkedHashMap<>();
    private final double barX;
    private final double width;

    /** One line at a bar: a bare terminal, or a way with its fuse; and a terminal on the bar itself. */
    private record Row(String terminal, String bar, String way, String rating, boolean spare, boolean left) {
    }

    BarDrawing(Drafting drafting, Unit unit) {
        this.drafting = drafting;
        this.unit = unit;
        tone = drafting.tone(unit);
        marks = new NodeMarks(unit);
        rows();
        boolean waysLeft = bars.values().stream().flatMap(List::stream).anyMatch(row -> row.left() && row.way() != null);
        boolean ways = bars.values().stream().flatMap(List::stream).anyMatch(row -> !row.left() && row.way() != null);
        barX = waysLeft ? WAY_PX : drafting.figures().live() ? 54 : 34;
        double title = 12 + LineText.width(drafting.measure(), unit.designation(), true) + 8
                + LineText.width(drafting.measure(), label(), false) + (drafting.figures().studied() ? 54 : 8);
        width = StrictMath.ceil(StrictMath.max(barX + (ways ? WAY_PX : 34), title) / 10) * 10;
    }

    private String label() {
        return LineText.fitted(drafting.measure(), unit.label(), false, 120);
    }

    /** True for a mere joint: one terminal, or nothing but a few. */
    static boolean joint(Unit unit) {
        return unit.part() != null && unit.part().getWays().isEmpty() && unit.part().getTerminals().size() == 1;
    }

    LineNode node() {
        boolean known = !bars.isEmpty();
        double y = HEAD_PX + FIRST_ROW_PX;
        for (List<Row> rows : bars.values()) {
            y = bar(rows, y) + BAR_GAP_PX;
        }
        double height = known ? y - BAR_GAP_PX + 10 : 60;
        String empty = empty();
        if (!empty.isEmpty()) {
            marks.text(LineText.start(12, height + 8, empty, false, Role.INK3));
            height += 16;
        }
        Stroke chain = Stroke.dashed(Role.INK3, 1.25, 12.0, 3.0, 2.0, 3.0);
        marks.shapes(List.of(new Mark.Area(List.of(new Point(0, 0), new Point(width, 0), new Point(width, height),
                new Point(0, height)), null, chain)));
        marks.text(LineText.start(10, 18, unit.designation(), true, tone))
                .text(LineText.start(18 + LineText.width(drafting.measure(), unit.designation(), true), 18, label(), false,
                        tone == Role.INK ? Role.INK2 : tone))
                .badge(drafting.figures(), width - 32, 13, 18);
        boolean fed = !drafting.inlets(unit).isEmpty();
        boolean feeds = drafting.terminals(unit).stream()
                .anyMatch(name -> !drafting.flow().outOf(LineContent.key(unit, name)).isEmpty());
        return new LineNode(unit.id(), unit.id(), width, height, ports,
                feeds && !fed ? LayoutNode.Column.FIRST : LayoutNode.Column.ANY, marks.groups());
    }

    /** Ways of the part that the device does not list. */
    private String empty() {
        if (unit.part() == null) {
            return "";
        }
        long ways = unit.part().getWays().stream().filter(spec -> unit.way(spec.getName()) == null).count();
        return ways == 0 ? "" : ways + " of " + unit.part().getWays().size() + " ways empty";
    }

    private void rows() {
        Map<String, String> barOf = new LinkedHashMap<>();
        if (unit.part() != null) {
            for (TerminalSpec spec : unit.part().getTerminals()) {
                barOf.put(spec.getName(), spec.getBar() != null ? spec.getBar() : spec.getName());
            }
            unit.part().getWays().forEach(spec -> {
                if (spec.getOut() != null) {
                    barOf.remove(spec.getOut().getName());
                }
            });
        }
        for (String terminal : drafting.terminals(unit)) {
            String key = LineContent.key(unit, terminal);
            String bar = barOf.get(terminal);
            if (bar == null) {
                continue;
            }
            if (!drafting.flow().into(key).isEmpty()) {
                bars.computeIfAbsent(bar, none -> new ArrayList<>()).add(new Row(terminal, terminal, null, "", false, true));
            }
            if (!drafting.flow().outOf(key).isEmpty()) {
                bars.computeIfAbsent(bar, none -> new ArrayList<>()).add(new Row(terminal, terminal, null, "", false, false));
            }
        }
        if (unit.part() != null) {
            for (WaySpec spec : unit.part().getWays()) {
                Way way = unit.way(spec.getName());
                if (way != null && spec.getFrom() != null && spec.getOut() != null) {
                    boolean left = !drafting.flow().into(LineContent.key(unit, spec.getOut().getName())).isEmpty();
                    String bar = barOf.getOrDefault(spec.getFrom().getName(), spec.getFrom().getName());
                    boolean spare = way.getProtector() == null;
                    bars.computeIfAbsent(bar, none -> new ArrayList<>()).add(new Row(spec.getOut().getName(),
                            spec.getFrom().getName(), spec.getName(), spare ? "" : Unit.rating(way.getProtector()), spare, left));
                }
            }
        }
    }

    private double bar(List<Row> rows, double top) {
        int left = 0;
        int right = 0;
        for (Row row : rows) {
            double y = top + Drafting.ROW_PX * (row.left() ? left++ : right++);
            if (row.way() == null) {
                bare(row, y);
            } else {
                way(row, y);
            }
        }
        double bottom = top + Drafting.ROW_PX * (StrictMath.max(left, right) - 1);
        marks.line(Stroke.solid(tone, LineWeight.BAR_PX), barX, top - 10, barX, bottom + 10);
        OptionalDouble volts = volts(rows);
        if (volts.isEmpty()) {
            return bottom + 10;
        }
        boolean fuses = rows.stream().anyMatch(row -> row.left() && row.way() != null);
        double base = fuses ? top + Drafting.ROW_PX * (left - 1) + 28 : top + 16;
        marks.text(LineText.text(barX - 8, base, LineText.volts(volts.getAsDouble()), false, Mark.Anchor.END, tone));
        return StrictMath.max(bottom + 10, base);
    }

    /** Potential of a bar: that of a terminal on it. */
    private OptionalDouble volts(List<Row> rows) {
        return rows.stream().map(row -> row.way() == null ? row.terminal() : row.bar())
                .map(name -> drafting.figures().terminalV(LineContent.key(unit, name))).filter(OptionalDouble::isPresent)
                .findFirst().orElse(OptionalDouble.empty());
    }

    private void bare(Row row, double y) {
        double end = row.left() ? 0 : width;
        marks.line(drafting.lead(unit, row.terminal()), barX, y, end, y);
        marks.text(row.left() ? LineText.start(6, y - 6, row.terminal(), false, Role.INK2)
                : LineText.start(barX + 8, y - 6, row.terminal(), false, Role.INK2));
        port(row, y);
    }

    private void way(Row row, double y) {
        double side = row.left() ? -1 : 1;
        double centre = barX + side * 47;
        double end = row.left() ? 0 : width;
        Role soft = tone == Role.INK ? Role.INK2 : tone;
        Mark.Anchor anchor = row.left() ? Mark.Anchor.END : Mark.Anchor.START;
        if (row.spare()) {
            marks.line(Stroke.dashed(Role.INK3, 1.25, 3.0, 3.0), barX, y, centre - side * 15, y)
                    .symbol(SymbolKind.FUSE_SPARE, Role.INK3, centre, y)
                    .line(Stroke.solid(Role.INK3, 1.25), centre + side * 15, y, centre + side * 24, y)
                    .symbol(SymbolKind.TERMINAL, Role.INK3, centre + side * 26.75, y)
                    .text(LineText.text(barX + side * 8, y - 6, row.way(), false, anchor, Role.INK3))
                    .text(LineText.middle(centre, y - 9, "spare", false, Role.INK3));
        } else {
            Stroke lead = drafting.lead(unit, row.terminal());
            boolean wired = !drafting.content().at(LineContent.key(unit, row.terminal())).isEmpty();
            marks.line(lead, barX, y, wired ? end : centre + side * 24, y)
                    .symbol(SymbolKind.FUSE, drafting.tone(unit, row.terminal()), centre, y)
                    .text(LineText.text(barX + side * 8, y - 6, row.way(), false, anchor, soft))
                    .text(LineText.middle(centre, y - 9, row.rating(), false, soft));
            if (!wired) {
                marks.symbol(SymbolKind.TERMINAL, tone, centre + side * 26.75, y);
            }
            marks.shapes(drafting.colours().fuse(unit.id() + "/" + row.way(), centre, y));
            wayBadge(row, centre + side * 30, y);
        }
        port(row, y);
    }

    /** Findings of a way carry its own id. */
    private void wayBadge(Row row, double x, double y) {
        String id = unit.id() + "/" + row.way();
        var badge = drafting.figures().badge(id);
        if (badge != null) {
            marks.badgeOf(id, badge.marks(x, y - 13, 14));
        }
    }

    private void port(Row row, double y) {
        String key = LineContent.key(unit, row.terminal());
        if (row.left()) {
            ports.add(drafting.leftPort(key, y));
            if (row.way() != null && !drafting.flow().outOf(key).isEmpty()) {
                ports.add(new LayoutPort(Drafting.right(key), 0, y, LayoutPort.Side.LEFT));
            }
        } else {
            ports.add(drafting.rightPort(key, width, y));
        }
    }
}
