// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** What a colour means; a theme gives each role its colour. A colour carries one meaning at a time. */
public enum Role {
    /** Ground of the sheet. */
    PAPER,
    /** Devices, cards, plates under text. */
    PLATE,
    /** Figures and energised lines. */
    INK,
    /** Context. */
    INK2,
    /** Off, spare, existing. */
    INK3,
    /** Rules and grids. */
    HAIR,
    /** Filled share of something. */
    FILL,
    /** A limit is broken. */
    ERROR,
    /** A wish is missed. */
    WARNING,
    /** A check holds. */
    OK,
    /** Selection and links. */
    SELECT,
    /** A state that is not now: fault, lost bond, preview. */
    WHAT_IF
}
