// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

/**
 * A key that was pressed over a diagram.
 *
 * @param key   which
 * @param shift shift is held
 * @param ctrl  ctrl (command on macOS) is held
 */
public record KeyEvent(Key key, boolean shift, boolean ctrl) {
    /** Keys that tools know, by what they mean. */
    public enum Key {
        /** Gives up what was begun. */
        ESCAPE,
        /** Moves, walks or turns to the left. */
        LEFT,
        /** Moves, walks or turns to the right. */
        RIGHT,
        /** Moves, walks or turns upwards. */
        UP,
        /** Moves, walks or turns downwards. */
        DOWN,
        /** Selects everything. */
        SELECT_ALL,
        /** The next element; with shift the one before. */
        TAB,
        /** Does what was prepared; at rest renames. */
        ENTER,
        /** Writes the name in place. */
        RENAME,
        /** Deletes. */
        DELETE,
        /** Copies into the clipboard. */
        COPY,
        /** Moves into the clipboard. */
        CUT,
        /** Adds what is in the clipboard. */
        PASTE,
        /** Puts a copy beside. */
        DUPLICATE,
        /** Begins to connect. */
        CONNECT,
        /** Begins to bend. */
        BEND,
        /** Adds a bend. */
        INSERT,
        /** Takes up the element as if it were drawn with the pointer. */
        SPACE
    }

    /** A key alone. */
    public static KeyEvent of(Key key) {
        return new KeyEvent(key, false, false);
    }

    /** The same with shift held. */
    public KeyEvent withShift() {
        return new KeyEvent(key, true, ctrl);
    }
}
