// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.Collection;

/** An upright rectangle of a sheet, px; right and bottom lie at the far side. */
public record Bounds(double left, double top, double right, double bottom) {

    /** Around a point. */
    public static Bounds around(Point centre, double halfPx) {
        return new Bounds(centre.x() - halfPx, centre.y() - halfPx, centre.x() + halfPx, centre.y() + halfPx);
    }

    /** From two opposite corners. */
    public static Bounds between(Point a, Point b) {
        return new Bounds(StrictMath.min(a.x(), b.x()), StrictMath.min(a.y(), b.y()), StrictMath.max(a.x(), b.x()),
                StrictMath.max(a.y(), b.y()));
    }

    /** Around points, of which there is one at least. */
    public static Bounds of(Collection<Point> points) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            left = StrictMath.min(left, point.x());
            top = StrictMath.min(top, point.y());
            right = StrictMath.max(right, point.x());
            bottom = StrictMath.max(bottom, point.y());
        }
        return new Bounds(left, top, right, bottom);
    }

    /** Around this and another. */
    public Bounds with(Bounds other) {
        return other == null ? this
                : new Bounds(StrictMath.min(left, other.left), StrictMath.min(top, other.top), StrictMath.max(right, other.right),
                        StrictMath.max(bottom, other.bottom));
    }

    /** Larger on each side; smaller for a negative length. */
    public Bounds grown(double px) {
        return new Bounds(left - px, top - px, right + px, bottom + px);
    }

    /** Moved. */
    public Bounds moved(double dx, double dy) {
        return new Bounds(left + dx, top + dy, right + dx, bottom + dy);
    }

    /** Width, px. */
    public double width() {
        return right - left;
    }

    /** Height, px. */
    public double height() {
        return bottom - top;
    }

    /** The middle. */
    public Point centre() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    /** True when a point lies inside or on the rim. */
    public boolean holds(Point point) {
        return point.x() >= left && point.x() <= right && point.y() >= top && point.y() <= bottom;
    }

    /** True when another lies wholly inside or on the rim. */
    public boolean holds(Bounds other) {
        return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom;
    }

    /** True when both have more than a rim in common. */
    public boolean meets(Bounds other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** True when a straight line has a point inside (Liang and Barsky's clipping). */
    public boolean meets(Point from, Point to) {
        if (left >= right || top >= bottom) {
            return false;
        }
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {from.x() - left, right - from.x(), from.y() - top, bottom - from.y()};
        double first = 0;
        double last = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] <= 0) {
                    return false;
                }
            } else if (p[i] < 0) {
                first = StrictMath.max(first, q[i] / p[i]);
            } else {
                last = StrictMath.min(last, q[i] / p[i]);
            }
        }
        return first < last;
    }

    /** Distance of a point from the rectangle, px; 0 inside. */
    public double distance(Point point) {
        double dx = StrictMath.max(0, StrictMath.max(left - point.x(), point.x() - right));
        double dy = StrictMath.max(0, StrictMath.max(top - point.y(), point.y() - bottom));
        return StrictMath.sqrt(dx * dx + dy * dy);
    }
}
