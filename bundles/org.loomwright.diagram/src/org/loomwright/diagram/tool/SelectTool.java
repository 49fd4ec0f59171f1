// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * The tool at rest. A press on an element selects it, with shift or ctrl adds or takes it away; drawn on, it moves what is
 * selected; a press beside all elements begins a rectangle; the middle button pans.
 */
public record SelectTool() implements Tool {

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        String under = event.what() == PointerEvent.What.LEAVE ? null : context.under(event.at());
        if (event.what() != PointerEvent.What.PRESS) {
            return ToolResult.to(this, Feedback.hovering(under));
        }
        if (event.button() == 2) {
            return ToolResult.to(new PanTool(event.at(), this, true), Feedback.NONE);
        }
        if (event.button() == 3) {
            return under == null || context.selection().contains(under) ? ToolResult.to(this, Feedback.NONE)
                    : ToolResult.selecting(this, Set.of(under));
        }
        boolean more = event.shift() || event.ctrl();
        if (under == null) {
            return new ToolResult(new MarqueeTool(event.at(), more ? context.selection() : Set.of(), true), Feedback.NONE,
                    more ? null : Set.of(), null, null);
        }
        Set<String> selection = new LinkedHashSet<>(more ? context.selection() : Set.of());
        if (more && context.selection().contains(under)) {
            selection.remove(under);
            return ToolResult.selecting(this, selection);
        }
        selection.add(under);
        boolean kept = !more && context.selection().contains(under);
        PressTool pressed = new PressTool(event.at(), kept ? under : null);
        return new ToolResult(pressed, Feedback.NONE, kept ? null : selection, null, null);
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        double step = context.gridPx() > 0 ? context.gridPx() : 1;
        return switch (event.key()) {
            case ESCAPE -> ToolResult.selecting(this, Set.of());
            case SELECT_ALL -> ToolResult.selecting(this, context.hits().elements());
            case LEFT -> nudge(context, -step, 0);
            case RIGHT -> nudge(context, step, 0);
            case UP -> nudge(context, 0, -step);
            case DOWN -> nudge(context, 0, step);
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    private ToolResult nudge(ToolContext context, double dx, double dy) {
        Set<String> moved = new LinkedHashSet<>(context.selection());
        moved.removeIf(id -> !context.advice().movable(id));
        return moved.isEmpty() ? ToolResult.to(this, Feedback.NONE)
                : ToolResult.editing(this, new EditRequest.Move(moved, dx, dy));
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(this, Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.ARROW;
    }
}
