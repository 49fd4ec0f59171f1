// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

/**
 * A conductive way between two terminals of one device.
 *
 * @param kind    what lies in it
 * @param name    name of the way or element; that of the bar for a bar
 * @param a       terminal
 * @param b       terminal
 * @param rating  what is written at it, may be empty
 * @param closed  rest state of a contact
 * @param drive   name of the coil or threshold that drives a contact; null when none does
 */
record Link(Kind kind, String name, String a, String b, String rating, boolean closed, String drive) {
    /** What lies in a link. */
    enum Kind { WAY, BAR, JOINT, CONTACT, PROTECTOR, DIODE, SHUNT, CONVERTER, COIL }

    /** True for what carries the load's current; a coil does not. */
    boolean carries() {
        return kind != Kind.COIL;
    }
}
