// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** What is to be told by a colour; a theme turns it into one. */
public sealed interface Tone permits Role, MapTone, CableTone, Veil {

    /** How much covers what lies below, 0 to 1. */
    default double opacity() {
        return 1;
    }
}
