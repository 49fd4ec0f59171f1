// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import org.loomwright.diagram.scene.Bounds;

/** The plates of paper under texts that lie over a grid or a line. */
public final class Plates {
    /** Paper left and right of a text, px. */
    private static final double SIDE_PX = 3;
    /** Paper above and below it, px. */
    private static final double ABOVE_PX = 1;

    private Plates() {
    }

    /** The plate under a text that takes this room. */
    public static Bounds under(Bounds text) {
        return new Bounds(text.left() - SIDE_PX, text.top() - ABOVE_PX, text.right() + SIDE_PX, text.bottom() + ABOVE_PX);
    }
}
