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
    /** Keys that tools know. */
    public enum Key { ESCAPE, LEFT, RIGHT, UP, DOWN, SELECT_ALL }

    /** A key alone. */
    public static KeyEvent of(Key key) {
        return new KeyEvent(key, false, false);
    }
}
