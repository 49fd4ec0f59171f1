// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.scene.Veil;

/** Marks that a tool lays over everything, in px of the window. */
final class Overlay {
    /** Half the side of a handle, px. */
    static final double HANDLE_PX = 4;
    private static final double TEXT_PX = 12;
    private static final double PAD_PX = 5;
    private static final double LINE_PX = 16;
    private static final double BUBBLE_PX = 360;
    private static final double AWAY_PX = 18;
    private final ToolContext context;
    private final List<Mark> marks = new ArrayList<>();

    Overlay(ToolContext context) {
        this.context = context;
    }

    /** The group of it all; no group when it is empty. */
    List<Group> groups() {
        return marks.isEmpty() ? List.of() : List.of(new Group(null, null, Group.Kind.OVERLAY, marks));
    }

    /** Colour of a verdict. */
    static Role tone(Verdict verdict) {
        return verdict == null ? Role.SELECT : switch (verdict.kind()) {
            case ALLOWED -> Role.SELECT;
            case WARNED -> Role.WARNING;
            case REFUSED -> Role.ERROR;
        };
    }

    /** A line that follows the pointer; dashed where it may not be drawn. */
    Overlay line(List<Point> points, Verdict verdict) {
        marks.add(new Mark.Line(points, verdict == null || verdict.possible() ? Stroke.solid(tone(verdict), 2)
                : Stroke.dashed(tone(verdict), 2, 5.0, 4.0)));
        return this;
    }

    /** A frame around the shape of an element. */
    Overlay frame(String element, Verdict verdict) {
        Bounds shape = element == null ? null : context.hits().shape(element);
        if (shape != null) {
            Bounds room = context.viewport().toScreen(shape).grown(4);
            marks.add(new Mark.Area(corners(room), Fill.solid(new Veil(tone(verdict), 0.15)),
                    verdict == null || verdict.possible() ? Stroke.solid(tone(verdict), 2)
                            : Stroke.dashed(tone(verdict), 2, 5.0, 4.0)));
        } else if (element != null) {
            context.hits().lines(element).forEach(line -> marks.add(new Mark.Line(line.stream()
                    .map(context.viewport()::toScreen).toList(), Stroke.solid(new Veil(tone(verdict), 0.4), 8))));
        }
        return this;
    }

    /** A plate that stands for what will be placed. */
    Overlay plate(Point middle, double widthPx, double heightPx, Verdict verdict) {
        marks.add(new Mark.Area(corners(new Bounds(middle.x() - widthPx / 2, middle.y() - heightPx / 2, middle.x() + widthPx / 2,
                middle.y() + heightPx / 2)), null, Stroke.dashed(tone(verdict), 1.5, 4.0, 3.0)));
        return this;
    }

    /** A ring that stands for a place. */
    Overlay ring(Point middle, Verdict verdict) {
        marks.add(new Mark.Disc(middle, 5, Fill.solid(Role.PLATE), Stroke.solid(tone(verdict), 2)));
        return this;
    }

    /** A cross that the keyboard moves. */
    Overlay cross(Point at) {
        marks.add(new Mark.Line(List.of(at.moved(-12, 0), at.moved(12, 0)), Stroke.solid(Role.SELECT, 1.5)));
        marks.add(new Mark.Line(List.of(at.moved(0, -12), at.moved(0, 12)), Stroke.solid(Role.SELECT, 1.5)));
        return this;
    }

    /** A handle: square for an end, round for a stretch that can be shifted. */
    Overlay handle(Point at, boolean round, boolean chosen) {
        Fill fill = Fill.solid(chosen ? Role.SELECT : Role.PAPER);
        Stroke stroke = Stroke.solid(Role.SELECT, 1.5);
        marks.add(round ? new Mark.Disc(at, HANDLE_PX, fill, stroke)
                : new Mark.Area(corners(Bounds.around(at, HANDLE_PX)), fill, stroke));
        return this;
    }

    /** The endings of an element, one chosen. */
    Overlay chips(List<Chip> chips, String chosen, Verdict verdict) {
        for (Chip chip : chips) {
            boolean own = chip.ending().id().equals(chosen);
            marks.add(new Mark.Area(corners(chip.room()), Fill.solid(own ? Role.WASH : Role.PLATE),
                    Stroke.solid(own ? tone(verdict) : Role.INK3, own ? 2 : 1)));
            marks.add(new Mark.Text(new Point(chip.room().centre().x(), chip.room().centre().y() + TEXT_PX * 0.36),
                    chip.ending().label(), TEXT_PX, own, Mark.Anchor.MIDDLE, Role.INK));
        }
        return this;
    }

    /** What is said about the gesture, beside a point, within the window; a mark says the kind beside its colour. */
    Overlay bubble(Point at, Verdict verdict) {
        if (verdict == null || verdict.text().isBlank()) {
            return this;
        }
        String sign = verdict.kind() == Verdict.Kind.REFUSED ? "\u2715 " : verdict.kind() == Verdict.Kind.WARNED ? "! " : "";
        List<String> lines = wrapped(sign + verdict.text());
        TextMeasure type = context.hits().measure();
        double width = lines.stream().mapToDouble(line -> type.widthPx(line, TEXT_PX, false)).max().orElse(0) + 2 * PAD_PX;
        double height = lines.size() * LINE_PX + PAD_PX;
        double x = StrictMath.max(2, StrictMath.min(at.x() + AWAY_PX, context.viewport().widthPx() - width - 2));
        boolean above = at.y() + AWAY_PX + height > context.viewport().heightPx();
        double y = StrictMath.max(2, above ? at.y() - AWAY_PX - height : at.y() + AWAY_PX);
        marks.add(new Mark.Area(corners(new Bounds(x, y, x + width, y + height)), Fill.solid(Role.PLATE),
                Stroke.solid(tone(verdict), 1.5)));
        for (int i = 0; i < lines.size(); i++) {
            marks.add(new Mark.Text(new Point(x + PAD_PX, y + LINE_PX * (i + 1) - 3), lines.get(i), TEXT_PX, false,
                    Mark.Anchor.START, Role.INK));
        }
        return this;
    }

    private List<String> wrapped(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && context.hits().measure().widthPx(line + " " + word, TEXT_PX, false) > BUBBLE_PX) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<Point> corners(Bounds room) {
        return List.of(new Point(room.left(), room.top()), new Point(room.right(), room.top()),
                new Point(room.right(), room.bottom()), new Point(room.left(), room.bottom()));
    }
}
