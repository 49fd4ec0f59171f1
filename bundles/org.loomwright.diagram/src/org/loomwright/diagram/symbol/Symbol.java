// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;

/**
 * A drawn symbol around its centre 0, 0.
 *
 * @param marks marks in the order of painting
 * @param ports where conductors meet it
 */
public record Symbol(List<Mark> marks, List<Port> ports) {
    public Symbol {
        marks = List.copyOf(marks);
        ports = List.copyOf(ports);
    }

    /** The marks around another centre. */
    public List<Mark> at(double x, double y) {
        return marks.stream().map(mark -> mark.moved(x, y)).toList();
    }

    /** The marks around another centre, smaller or larger. */
    public List<Mark> at(double x, double y, double scale) {
        List<Mark> scaled = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Line line) {
                scaled.add(new Mark.Line(scaled(line.points(), scale), line.stroke()).moved(x, y));
            } else if (mark instanceof Mark.Area area) {
                scaled.add(new Mark.Area(scaled(area.points(), scale), area.fill(), area.stroke()).moved(x, y));
            } else if (mark instanceof Mark.Disc disc) {
                scaled.add(new Mark.Disc(scaled(disc.centre(), scale), disc.radiusPx() * scale, disc.fill(), disc.stroke())
                        .moved(x, y));
            } else if (mark instanceof Mark.Text text) {
                double size = StrictMath.max(Mark.LEAST_TEXT_PX, text.sizePx() * scale);
                scaled.add(new Mark.Text(scaled(text.at(), scale), text.text(), size, text.bold(), text.anchor(), text.tone(),
                        text.plated()).moved(x, y));
            }
        }
        return scaled;
    }

    /** A port of a name. */
    public Port port(String name) {
        return ports.stream().filter(port -> port.name().equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no port " + name));
    }

    /** The room the lines take. */
    public Bounds bounds() {
        Bounds all = null;
        for (Mark mark : marks) {
            all = mark.outline().with(all);
        }
        return all;
    }

    private static List<Point> scaled(List<Point> points, double scale) {
        return points.stream().map(point -> scaled(point, scale)).toList();
    }

    private static Point scaled(Point point, double scale) {
        return new Point(point.x() * scale, point.y() * scale);
    }
}
