// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;

/**
 * The sheet of a plan: head above, the vehicle with room around it, lists and key below.
 *
 * @param widthPx  width
 * @param heightPx height, sides 1 : 1.414
 * @param footPx   height of the lists and the key, title block included
 * @param pxPerMm  scale; 0 for the largest that leaves room around the vehicle
 */
record PlanSheet(double widthPx, double heightPx, double footPx, double pxPerMm) {
    /** Distance of the frame from the sheet's edge, px. */
    static final double FRAME_PX = 20;
    /** Content lies this far inside the frame, px. */
    static final double INSIDE_PX = 20;
    private static final double HEAD_PX = 92;
    private static final double SIDE_PX = 120;
    private static final double LEAST_ABOVE_PX = 105;
    private static final double ABOVE_SHARE = 0.24;

    /** Sheets to try, each twice the area of the one before; A4 at 80 % first. */
    static List<PlanSheet> sizes(double footPx) {
        return List.of(new PlanSheet(1400, 990, footPx, 0), new PlanSheet(1980, 1400, footPx, 0), new PlanSheet(2800, 1980, footPx, 0),
                new PlanSheet(3960, 2800, footPx, 0), new PlanSheet(5600, 3960, footPx, 0));
    }

    double left() {
        return FRAME_PX + INSIDE_PX;
    }

    double right() {
        return widthPx - FRAME_PX - INSIDE_PX;
    }

    double top() {
        return FRAME_PX + INSIDE_PX;
    }

    double bottom() {
        return heightPx - FRAME_PX - INSIDE_PX;
    }

    double footTop() {
        return heightPx - FRAME_PX - footPx;
    }

    /** Ground for the vehicle and what stands around it. */
    Bounds field() {
        return new Bounds(left(), top() + HEAD_PX, right(), footTop() - 12);
    }

    /** True when the vehicle has the least room around it at the scale that was asked for. */
    boolean takes(Outline vehicle) {
        Bounds field = field();
        return pxPerMm == 0 || (vehicle.front() - vehicle.rear()) * pxPerMm <= field.width() - 2 * SIDE_PX
                && (vehicle.high() - vehicle.low()) * pxPerMm <= field.height() - 2 * LEAST_ABOVE_PX;
    }

    /** The vehicle in the middle of the field. */
    Projection projection(Outline vehicle) {
        Bounds field = field();
        double aroundPx = StrictMath.max(LEAST_ABOVE_PX, ABOVE_SHARE * field.height());
        double lengthMm = vehicle.front() - vehicle.rear();
        double acrossMm = vehicle.high() - vehicle.low();
        double scale = pxPerMm > 0 ? pxPerMm
                : StrictMath.min((field.width() - 2 * SIDE_PX) / lengthMm, (field.height() - 2 * aroundPx) / acrossMm);
        double leftPx = field.centre().x() - scale * lengthMm / 2;
        double basePx = field.centre().y() + scale * acrossMm / 2;
        return new Projection(scale, leftPx, vehicle.rear(), basePx, vehicle.low());
    }
}
