// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Scene;

/**
 * A part of a scene on a sheet of paper; what lies beyond the part is not seen.
 *
 * @param scene scene
 * @param view  part of it, px of the scene
 * @param at    where the part lies, px of the paper at 96 dpi; of the same shape as the part
 */
public record Layer(Scene scene, Bounds view, Bounds at) {
    /** Px of the paper for each px of the scene. */
    public double scale() {
        return at.width() / view.width();
    }
}
