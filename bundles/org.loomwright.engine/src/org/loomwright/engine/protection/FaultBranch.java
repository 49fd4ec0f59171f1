// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/**
 * One resistance on the way of fault currents. Its current counts positive from a to b.
 *
 * @param kind  what it stands for
 * @param index index in the plan's list of that kind; for earth points and cases that of the terminal
 * @param a     node
 * @param b     node
 * @param ohm   resistance, above 0 ohm
 */
public record FaultBranch(Kind kind, int index, int a, int b, double ohm) {

    /** What a resistance on the way stands for. */
    public enum Kind {
        /** A core of a cable with its joints. */
        CONDUCTOR,
        /** A joint, closed contact, shunt or protective device. */
        ELEMENT,
        /** A strap or bolted joint between earth points. */
        BOND,
        /** A seam between bodies. */
        SEAM,
        /** An earth point's contact with its body. */
        EARTH_POINT,
        /** A device's case on its body. */
        CASE;

        /** Part of the structure's way back. */
        public boolean structure() {
            return ordinal() >= BOND.ordinal();
        }
    }
}
