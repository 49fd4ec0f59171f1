// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/**
 * What a diagram or chart shows; the one source of its screen, SVG and PNG forms.
 *
 * @param title    title
 * @param widthPx  width of the sheet, px at 96 dpi
 * @param heightPx height of the sheet, px at 96 dpi
 * @param groups   groups in the order of painting
 */
public record Scene(String title, double widthPx, double heightPx, List<Group> groups) {
    public Scene {
        groups = List.copyOf(groups);
    }
}
