// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;

/** Draws one symbol around 0, 0; used once. */
final class Pen {
    /** Weight of the lines of symbols, px. */
    static final double WEIGHT_PX = 1.5;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private final Tone tone;
    private final Stroke stroke;

    Pen(Tone tone) {
        this.tone = tone;
        stroke = Stroke.solid(tone, WEIGHT_PX);
    }

    /** A line over x, y pairs. */
    Pen line(double... xy) {
        marks.add(new Mark.Line(points(xy), stroke));
        return this;
    }

    /** A line of another weight. */
    Pen line(double widthPx, double[] xy) {
        marks.add(new Mark.Line(points(xy), Stroke.solid(tone, widthPx)));
        return this;
    }

    /** A dashed line over x, y pairs. */
    Pen dashed(double widthPx, double dash, double gap, double... xy) {
        marks.add(new Mark.Line(points(xy), Stroke.dashed(tone, widthPx, dash, gap)));
        return this;
    }

    /** A rectangle around a centre, on plate. */
    Pen box(double x, double y, double width, double height) {
        marks.add(new Mark.Area(rectangle(x, y, width, height), Fill.solid(Role.PLATE), stroke));
        return this;
    }

    /** A dashed rectangle around a centre. */
    Pen dashedBox(double width, double height) {
        marks.add(new Mark.Area(rectangle(0, 0, width, height), null, Stroke.dashed(tone, 1.25, 3.0, 3.0)));
        return this;
    }

    /** A circle on plate. */
    Pen circle(double x, double y, double radius) {
        marks.add(new Mark.Disc(new Point(x, y), radius, Fill.solid(Role.PLATE), stroke));
        return this;
    }

    /** A filled circle. */
    Pen dot(double x, double y, double radius) {
        marks.add(new Mark.Disc(new Point(x, y), radius, Fill.solid(tone), null));
        return this;
    }

    /** A filled area over x, y pairs. */
    Pen solid(double... xy) {
        marks.add(new Mark.Area(points(xy), Fill.solid(tone), null));
        return this;
    }

    /** Part of a circle, degrees clockwise from the right. */
    Pen arc(double x, double y, double radius, double fromDegrees, double toDegrees) {
        List<Point> points = new ArrayList<>();
        int steps = 18;
        for (int i = 0; i <= steps; i++) {
            double angle = StrictMath.toRadians(fromDegrees + (toDegrees - fromDegrees) * i / steps);
            points.add(new Point(x + radius * StrictMath.cos(angle), y + radius * StrictMath.sin(angle)));
        }
        marks.add(new Mark.Line(points, stroke));
        return this;
    }

    /** A text around its middle. */
    Pen text(double x, double baseline, double sizePx, String text) {
        marks.add(new Mark.Text(new Point(x, baseline), text, sizePx, false, Mark.Anchor.MIDDLE, tone));
        return this;
    }

    /** A port. */
    Pen port(String name, double x, double y) {
        ports.add(new Port(name, new Point(x, y)));
        return this;
    }

    Symbol symbol() {
        return new Symbol(marks, ports);
    }

    private static List<Point> rectangle(double x, double y, double width, double height) {
        return List.of(new Point(x - width / 2, y - height / 2), new Point(x + width / 2, y - height / 2),
                new Point(x + width / 2, y + height / 2), new Point(x - width / 2, y + height / 2));
    }

    private static List<Point> points(double[] xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }
}
