// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.Set;
import org.loomwright.diagram.scene.Point;

/**
 * An element was pressed: drawn on it moves, let go it stays selected.
 *
 * @param from  where it was pressed, screen px
 * @param alone element that is left selected alone when the button is let go; null when the selection stays
 */
public record PressTool(Point from, String alone) implements Tool {
    private static final double STILL_PX = 4;

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        return switch (event.what()) {
            case RELEASE -> alone == null ? ToolResult.to(new SelectTool(), Feedback.NONE)
                    : ToolResult.selecting(new SelectTool(), Set.of(alone));
            case MOVE -> from.distance(event.at()) < STILL_PX || context.selection().stream().noneMatch(context.advice()::movable)
                    ? ToolResult.to(this, Feedback.NONE)
                    : MoveTool.begin(from, context).pointer(event, context);
            case DOUBLE -> SelectTool.renaming(new SelectTool(), context.under(event.at()));
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        return event.key() == KeyEvent.Key.ESCAPE ? captureLost() : ToolResult.to(this, Feedback.NONE);
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(new SelectTool(), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.ARROW;
    }
}
