// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/**
 * How an area is filled.
 *
 * @param role    colour
 * @param pattern solid, or lines that also show in a grey print
 */
public record Fill(Role role, Pattern pattern) {
    /** Patterns. */
    public enum Pattern {
        /** The whole area. */
        SOLID,
        /** Lines at 45 degrees, 8 px apart. */
        HATCHED
    }

    /** A solid area. */
    public static Fill solid(Role role) {
        return new Fill(role, Pattern.SOLID);
    }

    /** A hatched area. */
    public static Fill hatched(Role role) {
        return new Fill(role, Pattern.HATCHED);
    }
}
