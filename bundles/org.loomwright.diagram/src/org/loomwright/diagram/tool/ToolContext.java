// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.Set;
import java.util.function.Predicate;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Viewport;

/**
 * What a tool may look at.
 *
 * @param hits      what lies where
 * @param viewport  the part of the sheet seen
 * @param selection ids of what is selected
 * @param advice    what the model says to gestures
 * @param gridPx    grid to which movements snap, px of the sheet; 0 for none
 */
public record ToolContext(HitIndex hits, Viewport viewport, Set<String> selection, Advice advice, double gridPx) {
    /** How near counts as on a line, screen px. */
    public static final double TOLERANCE_PX = 5;

    /** For a drawing on which things can be moved and nothing else. */
    public ToolContext(HitIndex hits, Viewport viewport, Set<String> selection, Predicate<String> movable, double gridPx) {
        this(hits, viewport, selection, Advice.moving(movable), gridPx);
    }

    String under(Point screen) {
        return under(screen, id -> true);
    }

    /** What lies under a point of the window, of the elements that are wanted. */
    String under(Point screen, Predicate<String> wanted) {
        HitIndex.Hit hit = hits.at(viewport.toSheet(screen), TOLERANCE_PX, viewport, wanted);
        return hit == null ? null : hit.element();
    }

    /** A point of the sheet on the grid. */
    Point snapped(Point sheet, boolean freely) {
        if (freely || gridPx <= 0) {
            return sheet;
        }
        Point origin = advice.gridOrigin();
        return new Point(origin.x() + gridPx * StrictMath.rint((sheet.x() - origin.x()) / gridPx),
                origin.y() + gridPx * StrictMath.rint((sheet.y() - origin.y()) / gridPx));
    }
}
