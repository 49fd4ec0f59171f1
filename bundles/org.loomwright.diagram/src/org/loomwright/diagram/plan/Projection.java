// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Point;

/**
 * From mm of the vehicle to px of the sheet.
 *
 * @param pxPerMm scale
 * @param leftPx  x of the vehicle's rearmost point of the drawing
 * @param rearMm  that point
 * @param basePx  y of the lowest point of the drawing
 * @param lowMm   that point
 */
record Projection(double pxPerMm, double leftPx, double rearMm, double basePx, double lowMm) {

    Point at(Spot spot) {
        return new Point(x(spot.alongMm()), y(spot.upMm()));
    }

    double x(double alongMm) {
        return leftPx + (alongMm - rearMm) * pxPerMm;
    }

    double y(double upMm) {
        return basePx - (upMm - lowMm) * pxPerMm;
    }

    List<Point> at(Outline outline) {
        return outline.spots().stream().map(this::at).toList();
    }
}
