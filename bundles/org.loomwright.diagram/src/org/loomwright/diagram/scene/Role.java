// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** What a colour means; a theme gives each role its colour. A colour carries one meaning at a time. */
public enum Role implements Tone {
    /** Ground of the sheet. */
    PAPER,
    /** Devices, cards, plates under text. */
    PLATE,
    /** Parts of a window. */
    PANEL,
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
    /** Metal of the structure. */
    BODY,
    /** A zone that is neither hot nor wet. */
    DRY,
    /** A zone near a source of heat; hatched too, so that it prints. */
    HOT,
    /** A wet zone; dotted too, so that it prints. */
    WET,
    /** A limit is broken. */
    ERROR,
    /** Sign within a mark of an error. */
    ON_ERROR,
    /** A wish is missed. */
    WARNING,
    /** Sign within a mark of a warning. */
    ON_WARNING,
    /** A check holds. */
    OK,
    /** Selection and links. */
    SELECT,
    /** Ground of what is selected. */
    WASH,
    /** A state that is not now: fault, lost bond, preview. */
    WHAT_IF,
    /** What a search found, as an underlay. */
    MARK
}
