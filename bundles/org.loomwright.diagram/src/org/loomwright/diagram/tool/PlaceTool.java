// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import org.loomwright.diagram.scene.Point;

/**
 * Places a part of the library where it is clicked: on an element or on free ground.
 *
 * <p>Keys: tab and arrows walk over the elements that take it; space puts a cross on free ground, which arrows then move on the
 * grid, by
 * ten steps with shift; enter places, escape gives up.
 *
 * @param part    {@code library/part}
 * @param target  element aimed at by keys; null for none
 * @param cross   point of the sheet that keys move; null for none
 * @param pressed the button is down
 */
public record PlaceTool(String part, String target, Point cross, boolean pressed) implements Tool {
    private static final double PLATE_WIDE_PX = 42;
    private static final double PLATE_HIGH_PX = 34;

    /** The tool for a part. */
    public static PlaceTool of(String part) {
        return new PlaceTool(part, null, null, false);
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
        // what does not take the part is ground
        String under = context.under(event.at(), id -> context.advice().place(part, id, at).possible());
        if (event.what() == PointerEvent.What.RELEASE && pressed) {
            return put(under, at, event.shift(), event.at(), context);
        }
        boolean down = event.what() == PointerEvent.What.PRESS || pressed && event.what() == PointerEvent.What.MOVE;
        return shown(new PlaceTool(part, null, null, down), under, at, event.at(), context);
    }

    private ToolResult put(String on, Point at, boolean again, Point screen, ToolContext context) {
        return context.advice().place(part, on, at).possible()
                ? ToolResult.editing(again ? of(part) : new SelectTool(), new EditRequest.PlacePart(part, on, at))
                : shown(of(part), on, at, screen, context);
    }

    private ToolResult shown(PlaceTool next, String on, Point at, Point screen, ToolContext context) {
        Verdict verdict = context.advice().place(part, on, at);
        Overlay overlay = new Overlay(context).frame(on, verdict);
        if (on == null) {
            overlay.plate(screen, PLATE_WIDE_PX, PLATE_HIGH_PX, verdict);
        }
        overlay.bubble(screen, verdict);
        return ToolResult.to(next, Feedback.aiming(on, overlay.groups(), verdict));
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        if (cross != null && Walk.walks(event.key()) && event.key() != KeyEvent.Key.TAB) {
            return onCross(Caret.moved(cross, event, context), context);
        }
        if (Walk.walks(event.key())) {
            Walk walk = Walk.over(context.hits(), id -> context.advice().place(part, id, Walk.middle(id, context.hits()))
                    .possible());
            String to = walk.to(event, target);
            if (to == null) {
                return onCross(Caret.begin(context), context);
            }
            Point at = walk.middle(to);
            return shown(new PlaceTool(part, to, null, false), to, at, context.viewport().toScreen(at), context);
        }
        return switch (event.key()) {
            case ESCAPE -> ToolResult.to(new SelectTool(), Feedback.NONE);
            case SPACE -> onCross(Caret.begin(context), context);
            case ENTER -> {
                Point at = cross != null ? cross : target != null ? Walk.middle(target, context.hits()) : null;
                yield at == null ? ToolResult.to(this, Feedback.NONE)
                        : put(cross != null ? null : target, at, event.shift(), context.viewport().toScreen(at), context);
            }
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    private ToolResult onCross(Point at, ToolContext context) {
        Verdict verdict = context.advice().place(part, null, at);
        Point screen = context.viewport().toScreen(at);
        return ToolResult.to(new PlaceTool(part, null, at, false), Feedback.aiming(null, new Overlay(context).cross(screen)
                .plate(screen, PLATE_WIDE_PX, PLATE_HIGH_PX, verdict).bubble(screen, verdict).groups(), verdict));
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(of(part), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.CROSS;
    }
}
