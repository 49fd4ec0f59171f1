// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;

/**
 * What is painted over the still layer while a tool is at work.
 *
 * @param hover   element under the pointer; null for none
 * @param ghosts  groups that are being moved, as they stand; to be painted moved by dx and dy
 * @param dxPx    to the right, px of the sheet
 * @param dyPx    downwards, px of the sheet
 * @param marquee rectangle being drawn, px of the sheet; null for none
 */
public record Feedback(String hover, List<Group> ghosts, double dxPx, double dyPx, Bounds marquee) {
    /** Nothing. */
    public static final Feedback NONE = new Feedback(null, List.of(), 0, 0, null);

    public Feedback {
        ghosts = List.copyOf(ghosts);
    }

    static Feedback hovering(String element) {
        return element == null ? NONE : new Feedback(element, List.of(), 0, 0, null);
    }

    static Feedback marquee(Bounds rectangle) {
        return new Feedback(null, List.of(), 0, 0, rectangle);
    }
}
