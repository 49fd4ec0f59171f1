// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Group;

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

    /** What is painted while nothing happens, for example handles of what is selected; px of the window. */
    default List<Group> resting(ToolContext context) {
        return List.of();
    }

    /** Shapes of the pointer. */
    enum Cursor { ARROW, CROSS, HAND, MOVE }
}
