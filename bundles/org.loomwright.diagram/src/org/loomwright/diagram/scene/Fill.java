// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/**
 * How an area is filled.
 *
 * @param tone    colour
 * @param pattern solid, or lines or dots that also show in a grey print; these let what lies below show between them
 */
public record Fill(Tone tone, Pattern pattern) {
    /** Patterns. */
    public enum Pattern {
        /** The whole area. */
        SOLID,
        /** Lines at 45 degrees, 8 px apart. */
        HATCHED,
        /** Dots, 9 px apart. */
        DOTTED
    }

    /** A solid area. */
    public static Fill solid(Tone tone) {
        return new Fill(tone, Pattern.SOLID);
    }

    /** A hatched area. */
    public static Fill hatched(Tone tone) {
        return new Fill(tone, Pattern.HATCHED);
    }

    /** A dotted area. */
    public static Fill dotted(Tone tone) {
        return new Fill(tone, Pattern.DOTTED);
    }
}
