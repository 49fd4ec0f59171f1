// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * From px of a drawn plan to mm of the vehicle and back; found by the vehicle's outline, which every plan shows.
 *
 * @param mmPerPx scale
 * @param leftPx  x of the rearmost point on the sheet
 * @param rearMm  that point, mm forward
 * @param basePx  y of the lowest point on the sheet
 * @param lowMm   that point, mm upwards on the sheet: to the left of the vehicle from above, up from the side
 */
public record PlanScale(double mmPerPx, double leftPx, double rearMm, double basePx, double lowMm) {
    /** Name of the groups that are the plates of several devices at one place. */
    public static final String TRAY = "devices at one place, enlarged";

    /** The scale of a plan that was drawn of a vehicle; null when the scene is no plan. */
    public static PlanScale of(Vehicle vehicle, Arrangement arrangement, PlanView view, Scene scene) {
        Bounds drawn = null;
        for (Group group : scene.groups()) {
            if (group.name() != null && group.name().startsWith(GroundPainter.OUTLINE)) {
                drawn = Bounds.of(((org.loomwright.diagram.scene.Mark.Area) group.marks().get(0)).points());
            }
        }
        Outline outline = PlanReader.read(vehicle, arrangement, view).vehicle();
        if (drawn == null || drawn.width() <= 0) {
            return null;
        }
        return new PlanScale((outline.front() - outline.rear()) / drawn.width(), drawn.left(), outline.rear(), drawn.bottom(),
                outline.low());
    }

    /** A point of the sheet in mm: x forward, y upwards on the sheet. */
    public Point toMm(Point sheet) {
        return new Point(rearMm + (sheet.x() - leftPx) * mmPerPx, lowMm + (basePx - sheet.y()) * mmPerPx);
    }

    /** A point in mm, x forward and y upwards, on the sheet. */
    public Point toSheet(Point mm) {
        return new Point(leftPx + (mm.x() - rearMm) / mmPerPx, basePx - (mm.y() - lowMm) / mmPerPx);
    }
}
