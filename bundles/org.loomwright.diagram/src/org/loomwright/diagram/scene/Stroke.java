// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/**
 * How a line is drawn: butt ends, mitred corners.
 *
 * @param tone    colour
 * @param widthPx width, px
 * @param dashPx  lengths of dashes and gaps, px; empty for solid
 */
public record Stroke(Tone tone, double widthPx, List<Double> dashPx) {
    public Stroke {
        dashPx = List.copyOf(dashPx);
    }

    /** A solid line. */
    public static Stroke solid(Tone tone, double widthPx) {
        return new Stroke(tone, widthPx, List.of());
    }

    /** A dashed line. */
    public static Stroke dashed(Tone tone, double widthPx, Double... dashPx) {
        return new Stroke(tone, widthPx, List.of(dashPx));
    }
}
