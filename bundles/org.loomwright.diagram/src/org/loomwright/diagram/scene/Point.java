// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** A point of a sheet, px at 96 dpi, x to the right and y down from the upper left corner. */
public record Point(double x, double y) {

    /** The point elsewhere. */
    public Point moved(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** Distance from another point, px. */
    public double distance(Point other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return StrictMath.sqrt(dx * dx + dy * dy);
    }
}
