// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * Draws a rectangle and selects what lies wholly in it.
 *
 * @param from   where it began, screen px; null before a press
 * @param kept   what stays selected beside
 * @param passing goes back to selecting when done; else the tool stays
 */
public record MarqueeTool(Point from, Set<String> kept, boolean passing) implements Tool {
    public MarqueeTool {
        kept = Collections.unmodifiableSet(new LinkedHashSet<>(kept));
    }

    /** The tool as it is chosen, before a press. */
    public static MarqueeTool chosen() {
        return new MarqueeTool(null, Set.of(), false);
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        if (from == null) {
            return event.what() != PointerEvent.What.PRESS ? ToolResult.to(this, Feedback.NONE)
                    : ToolResult.to(new MarqueeTool(event.at(),
                            event.shift() || event.ctrl() ? context.selection() : Set.of(), passing), Feedback.NONE);
        }
        Bounds rectangle = Bounds.between(context.viewport().toSheet(from), context.viewport().toSheet(event.at()));
        return switch (event.what()) {
            case RELEASE -> {
                Set<String> selection = new LinkedHashSet<>(kept);
                selection.addAll(context.hits().inside(rectangle));
                yield ToolResult.selecting(rest(), selection);
            }
            case LEAVE -> ToolResult.to(this, Feedback.NONE);
            default -> ToolResult.to(this, Feedback.marquee(rectangle));
        };
    }

    private Tool rest() {
        return passing ? new SelectTool() : chosen();
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        return event.key() == KeyEvent.Key.ESCAPE ? ToolResult.to(from == null ? new SelectTool() : rest(), Feedback.NONE)
                : ToolResult.to(this, Feedback.NONE);
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(rest(), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.CROSS;
    }
}
