// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/** Distances from lines. */
public final class Segments {
    private Segments() {
    }

    /** Distance of a point from a line over points, px. */
    public static double distance(List<Point> line, Point point) {
        double least = line.get(0).distance(point);
        for (int i = 1; i < line.size(); i++) {
            least = StrictMath.min(least, distance(line.get(i - 1), line.get(i), point));
        }
        return least;
    }

    /** Distance of a point from a straight piece, px. */
    public static double distance(Point from, Point to, Point point) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double length = dx * dx + dy * dy;
        double share = length == 0 ? 0 : ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / length;
        share = StrictMath.min(1, StrictMath.max(0, share));
        return point.distance(new Point(from.x() + share * dx, from.y() + share * dy));
    }
}
