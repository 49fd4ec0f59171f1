// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import org.loomwright.diagram.scene.Point;

/**
 * Makes a place of the vehicle where the plan is clicked.
 *
 * <p>Keys: arrows move a cross on the grid, by ten steps with shift; enter makes the place, escape gives up.
 *
 * @param cross   point of the sheet that keys move; null for none
 * @param pressed the button is down
 */
public record NewPlaceTool(Point cross, boolean pressed) implements Tool {
    /** The tool as it is chosen. */
    public static NewPlaceTool chosen() {
        return new NewPlaceTool(null, false);
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        if (event.what() == PointerEvent.What.LEAVE) {
            return ToolResult.to(this, Feedback.NONE);
        }
        if (event.what() == PointerEvent.What.PRESS && event.button() != 1) {
            return ToolResult.to(new SelectTool(), Feedback.NONE);
        }
        Point at = context.snapped(context.viewport().toSheet(event.at()), event.ctrl());
        if (event.what() == PointerEvent.What.RELEASE && pressed && context.advice().makePlace(at).possible()) {
            return make(at, event.shift());
        }
        return shown(new NewPlaceTool(null, event.what() == PointerEvent.What.PRESS
                || pressed && event.what() == PointerEvent.What.MOVE), at, context);
    }

    private static ToolResult make(Point at, boolean again) {
        return ToolResult.editing(again ? chosen() : new SelectTool(), new EditRequest.MakePlace(at, null));
    }

    private static ToolResult shown(NewPlaceTool next, Point at, ToolContext context) {
        Verdict verdict = context.advice().makePlace(at);
        Point screen = context.viewport().toScreen(at);
        Overlay overlay = new Overlay(context);
        if (next.cross() != null) {
            overlay.cross(screen);
        }
        return ToolResult.to(next, Feedback.aiming(null, overlay.ring(screen, verdict).bubble(screen, verdict).groups(),
                verdict));
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        return switch (event.key()) {
            case ESCAPE -> ToolResult.to(new SelectTool(), Feedback.NONE);
            case LEFT, RIGHT, UP, DOWN -> {
                Point at = cross == null ? Caret.begin(context) : Caret.moved(cross, event, context);
                yield shown(new NewPlaceTool(at, false), at, context);
            }
            case SPACE -> shown(new NewPlaceTool(Caret.begin(context), false), Caret.begin(context), context);
            case ENTER -> cross != null && context.advice().makePlace(cross).possible() ? make(cross, event.shift())
                    : ToolResult.to(this, Feedback.NONE);
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(chosen(), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.CROSS;
    }
}
