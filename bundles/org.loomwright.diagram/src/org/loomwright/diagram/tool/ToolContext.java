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
 * @param movable   whether an element may be moved
 * @param gridPx    grid to which movements snap, px of the sheet; 0 for none
 */
public record ToolContext(HitIndex hits, Viewport viewport, Set<String> selection, Predicate<String> movable, double gridPx) {
    /** How near counts as on a line, screen px. */
    public static final double TOLERANCE_PX = 5;

    String under(Point screen) {
        HitIndex.Hit hit = hits.at(viewport.toSheet(screen), TOLERANCE_PX, viewport);
        return hit == null ? null : hit.element();
    }
}
