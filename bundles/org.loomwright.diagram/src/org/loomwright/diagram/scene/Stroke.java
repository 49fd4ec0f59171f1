// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/**
 * How a line is drawn: butt ends, mitred corners.
 *
 * @param role    colour
 * @param widthPx width, px
 * @param dashPx  lengths of dashes and gaps, px; empty for solid
 */
public record Stroke(Role role, double widthPx, List<Double> dashPx) {
    public Stroke {
        dashPx = List.copyOf(dashPx);
    }

    /** A solid line. */
    public static Stroke solid(Role role, double widthPx) {
        return new Stroke(role, widthPx, List.of());
    }

    /** A dashed line. */
    public static Stroke dashed(Role role, double widthPx, Double... dashPx) {
        return new Stroke(role, widthPx, List.of(dashPx));
    }
}
