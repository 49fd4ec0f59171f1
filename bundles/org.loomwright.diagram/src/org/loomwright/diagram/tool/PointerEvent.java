// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import org.loomwright.diagram.scene.Point;

/**
 * What the pointer did.
 *
 * @param what   what happened
 * @param at     where, screen px of the window
 * @param button 1 for the first, 2 for the middle one, 3 for the context menu's; 0 while moving without
 * @param shift  shift is held
 * @param ctrl   ctrl (command on macOS) is held
 */
public record PointerEvent(What what, Point at, int button, boolean shift, boolean ctrl) {
    /** Kinds; a double click comes after the press and release of its second click. */
    public enum What { PRESS, MOVE, RELEASE, LEAVE, DOUBLE }

    /** A press of the first button. */
    public static PointerEvent press(double x, double y) {
        return new PointerEvent(What.PRESS, new Point(x, y), 1, false, false);
    }

    /** A movement. */
    public static PointerEvent move(double x, double y) {
        return new PointerEvent(What.MOVE, new Point(x, y), 0, false, false);
    }

    /** A release of the first button. */
    public static PointerEvent release(double x, double y) {
        return new PointerEvent(What.RELEASE, new Point(x, y), 1, false, false);
    }

    /** The same with shift held. */
    public PointerEvent withShift() {
        return new PointerEvent(what, at, button, true, ctrl);
    }

    /** The same with ctrl held. */
    public PointerEvent withCtrl() {
        return new PointerEvent(what, at, button, shift, true);
    }

    /** The same with another button. */
    public PointerEvent withButton(int other) {
        return new PointerEvent(what, at, other, shift, ctrl);
    }
}
