// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import org.loomwright.diagram.scene.Bounds;

/**
 * A plan on paper: its ground and its scale.
 *
 * @param widthPx  width of the ground, px of the drawing; with lists and key, without frame and title block
 * @param heightPx height of the ground, px of the drawing
 * @param pxPerMm  px of the drawing for each mm of the vehicle
 */
public record PlotScale(double widthPx, double heightPx, double pxPerMm) {
    /** Narrowest ground on which the lists and the key below the vehicle can be read, px. */
    public static final double LEAST_WIDTH_PX = 1000;
    /** What the scene has around the ground for a frame of its own, px; the frame is as far from the edge of the scene. */
    private static final double AROUND_PX = PlanSheet.FRAME_PX + PlanSheet.INSIDE_PX - 2;
    /** Less below, where the title block would be. */
    private static final double BELOW_PX = AROUND_PX - 10;

    /** Where the ground lies in the scene, px. */
    public Bounds ground() {
        return new Bounds(AROUND_PX, AROUND_PX, AROUND_PX + widthPx, AROUND_PX + heightPx);
    }

    PlanSheet sheet() {
        return new PlanSheet(widthPx + 2 * AROUND_PX, heightPx + AROUND_PX + BELOW_PX, PlanFoot.HEIGHT_PX, pxPerMm);
    }
}
