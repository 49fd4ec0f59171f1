// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

/** A tool in one of its states. Immutable: an event gives the next state. */
public interface Tool {
    /** The pointer did something. */
    ToolResult pointer(PointerEvent event, ToolContext context);

    /** A key was pressed. */
    ToolResult key(KeyEvent event, ToolContext context);

    /** The window lost the pointer: what was begun is given up, nothing is changed. */
    ToolResult captureLost();

    /** The shape of the pointer. */
    Cursor cursor();

    /** Shapes of the pointer. */
    enum Cursor { ARROW, CROSS, HAND, MOVE }
}
