// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/**
 * A role's colour through which what lies below still shows: halos of selections and of what is not now.
 *
 * @param role    colour
 * @param opacity 0 to 1
 */
public record Veil(Role role, double opacity) implements Tone {
    /** Halo of a selected line. */
    public static Veil selection() {
        return new Veil(Role.SELECT, 0.3);
    }

    /** Halo of a state that is not now. */
    public static Veil whatIf() {
        return new Veil(Role.WHAT_IF, 0.45);
    }
}
