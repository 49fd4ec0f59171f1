// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/**
 * A colour of the one map that all overlays use.
 *
 * @param position 0 at the low end of the legend to 1 at its high end; values beyond are taken to the nearer end
 */
public record MapTone(double position) implements Tone {
    public MapTone {
        if (Double.isNaN(position)) {
            throw new IllegalArgumentException("a value that is not known has no colour on the map");
        }
        position = StrictMath.min(1, StrictMath.max(0, position));
    }
}
