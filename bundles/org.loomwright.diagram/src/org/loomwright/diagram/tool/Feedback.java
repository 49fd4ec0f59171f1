// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;

/**
 * What is painted over the still layer while a tool is at work.
 *
 * @param hover   element under the pointer, or the one that the gesture is aimed at; null for none
 * @param ghosts  groups that are being moved, as they stand; to be painted moved by dx and dy
 * @param dxPx    to the right, px of the sheet
 * @param dyPx    downwards, px of the sheet
 * @param marquee rectangle being drawn, px of the sheet; null for none
 * @param overlay marks over everything, in px of the window, not of the sheet: lines that follow the pointer, handles, texts
 * @param verdict what the model says to the gesture as it stands; null for nothing
 */
public record Feedback(String hover, List<Group> ghosts, double dxPx, double dyPx, Bounds marquee, List<Group> overlay,
        Verdict verdict) {
    /** Nothing. */
    public static final Feedback NONE = new Feedback(null, List.of(), 0, 0, null);

    public Feedback {
        ghosts = List.copyOf(ghosts);
        overlay = List.copyOf(overlay);
    }

    /** Without marks of its own and without a verdict. */
    public Feedback(String hover, List<Group> ghosts, double dxPx, double dyPx, Bounds marquee) {
        this(hover, ghosts, dxPx, dyPx, marquee, List.of(), null);
    }

    static Feedback hovering(String element) {
        return element == null ? NONE : new Feedback(element, List.of(), 0, 0, null);
    }

    static Feedback marquee(Bounds rectangle) {
        return new Feedback(null, List.of(), 0, 0, rectangle);
    }

    /** Aimed at an element, with marks in px of the window. */
    static Feedback aiming(String element, List<Group> overlay, Verdict verdict) {
        return new Feedback(element, List.of(), 0, 0, null, overlay, verdict);
    }
}
