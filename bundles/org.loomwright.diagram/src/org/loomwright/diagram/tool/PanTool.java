// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import org.loomwright.diagram.scene.Point;

/**
 * Shifts the sheet under the pointer.
 *
 * @param last    where the pointer was last, screen px; null before a press
 * @param rest    the tool to go back to
 * @param passing goes back when the button is let go; else the tool stays
 */
public record PanTool(Point last, Tool rest, boolean passing) implements Tool {

    /** The tool as it is chosen, before a press. */
    public static PanTool chosen() {
        return new PanTool(null, new SelectTool(), false);
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        if (last == null) {
            return ToolResult.to(event.what() == PointerEvent.What.PRESS ? new PanTool(event.at(), rest, passing) : this,
                    Feedback.NONE);
        }
        if (event.what() == PointerEvent.What.LEAVE) {
            return ToolResult.to(this, Feedback.NONE);
        }
        Tool next = event.what() == PointerEvent.What.RELEASE ? done() : new PanTool(event.at(), rest, passing);
        return new ToolResult(next, Feedback.NONE, null,
                context.viewport().panned(event.at().x() - last.x(), event.at().y() - last.y()), null);
    }

    private Tool done() {
        return passing ? rest : new PanTool(null, rest, false);
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        return ToolResult.to(event.key() == KeyEvent.Key.ESCAPE ? rest : this, Feedback.NONE);
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(done(), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.HAND;
    }
}
