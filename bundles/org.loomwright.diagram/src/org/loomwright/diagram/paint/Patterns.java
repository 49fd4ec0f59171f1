// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/** Lines and dots of filled areas, for media that have no patterns of their own; to be clipped to the area. */
final class Patterns {
    /** Distance of two lines of a hatch, px. */
    static final double HATCH_PX = 8;
    /** Width of a line of a hatch, px. */
    static final double HATCH_LINE_PX = 1.5;
    /** Distance of two dots, px. */
    static final double DOTS_PX = 9;
    /** Radius of a dot, px. */
    static final double DOT_PX = 0.9;

    private Patterns() {
    }

    /** A line of a hatch. */
    record Line(Point from, Point to) {
    }

    /** Lines at 45 degrees over a rectangle. */
    static List<Line> hatch(Bounds area) {
        List<Line> lines = new ArrayList<>();
        double reach = area.height();
        double step = HATCH_PX * StrictMath.sqrt(2);
        for (double x = area.left() - reach; x < area.right(); x += step) {
            lines.add(new Line(new Point(x, area.bottom()), new Point(x + reach, area.top())));
        }
        return lines;
    }

    /** Middles of the dots over a rectangle, on one grid for the whole sheet. */
    static List<Point> dots(Bounds area) {
        List<Point> dots = new ArrayList<>();
        for (double x = DOTS_PX * StrictMath.floor(area.left() / DOTS_PX); x < area.right(); x += DOTS_PX) {
            for (double y = DOTS_PX * StrictMath.floor(area.top() / DOTS_PX); y < area.bottom(); y += DOTS_PX) {
                dots.add(new Point(x + DOTS_PX / 2, y + DOTS_PX / 2));
            }
        }
        return dots;
    }
}
