// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Point;

/** A line of level and upright stretches that are shifted aside, each by itself; its two ends stay. */
final class Stretches {
    /** Corners nearer than this fall together, and stretches nearer than this lie in one line, px of the sheet. */
    private static final double SAME_PX = 3;

    private Stretches() {
    }

    /** True for a stretch that is more level than upright. */
    static boolean level(List<Point> line, int stretch) {
        Point a = line.get(stretch);
        Point b = line.get(stretch + 1);
        return StrictMath.abs(a.x() - b.x()) >= StrictMath.abs(a.y() - b.y());
    }

    /**
     * The line with one stretch shifted aside: a level one up or down, an upright one to the left or right. Where it ends at an
     * end of the
     * line a corner is added, so that the end stays; stretches that fall into one line become one, and so bends go.
     *
     * @param to where the stretch is to lie: y of a level one, x of an upright one, px of the sheet
     */
    static List<Point> shifted(List<Point> line, int stretch, double to) {
        boolean level = level(line, stretch);
        List<Point> points = new ArrayList<>(line);
        int at = stretch;
        if (at == 0) {
            Point a = points.get(0);
            Point b = points.get(1);
            points.add(1, between(a, b, points.size() == 2 ? 0.25 : 0.5, level));
            points.add(1, points.get(1));
            at = 2;
        }
        if (at + 1 == points.size() - 1) {
            Point a = points.get(at);
            Point b = points.get(at + 1);
            Point mid = line.size() == 2 ? between(line.get(0), b, 0.75, level) : between(a, b, 0.5, level);
            points.add(at + 1, mid);
            points.add(at + 2, mid);
        }
        points.set(at, aside(points.get(at), level, to));
        points.set(at + 1, aside(points.get(at + 1), level, to));
        return clean(points);
    }

    private static Point between(Point a, Point b, double share, boolean level) {
        return level ? new Point(a.x() + share * (b.x() - a.x()), a.y()) : new Point(a.x(), a.y() + share * (b.y() - a.y()));
    }

    private static Point aside(Point at, boolean level, double to) {
        return level ? new Point(at.x(), to) : new Point(to, at.y());
    }

    /** Without corners that fall together or lie within a straight stretch. */
    static List<Point> clean(List<Point> line) {
        List<Point> kept = new ArrayList<>(line);
        for (int i = 1; i < kept.size() - 1;) {
            Point a = kept.get(i - 1);
            Point b = kept.get(i);
            Point c = kept.get(i + 1);
            boolean level = StrictMath.abs(a.y() - b.y()) < SAME_PX && StrictMath.abs(b.y() - c.y()) < SAME_PX;
            boolean upright = StrictMath.abs(a.x() - b.x()) < SAME_PX && StrictMath.abs(b.x() - c.x()) < SAME_PX;
            if (level || upright) {
                kept.remove(i);
                if (i < kept.size() - 1) {
                    straighten(kept, i, level);
                }
                i = StrictMath.max(1, i - 1);
            } else {
                i++;
            }
        }
        return List.copyOf(kept);
    }

    /** Takes out the small step that is left where two stretches fell into one line. */
    private static void straighten(List<Point> line, int corner, boolean level) {
        Point before = line.get(corner - 1);
        Point at = line.get(corner);
        line.set(corner, level ? new Point(at.x(), before.y()) : new Point(before.x(), at.y()));
    }
}
