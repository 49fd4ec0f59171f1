// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Point;

/**
 * Draws runs from place to place, click by click, one behind the other. A click on free ground makes a place there. Escape, a
 * double
 * click, or enter with nothing aimed at ends the chain.
 *
 * <p>Keys: tab and arrows walk over places; space puts a cross on free ground, which arrows move; enter takes the place or the
 * cross.
 *
 * @param from    place where the next run begins; null before the first
 * @param follows the next run begins at the place that is selected, since it was just made
 * @param aim     place aimed at by keys; null for none
 * @param cross   point of the sheet that keys move; null for none
 * @param pressed the button is down
 */
public record RunTool(String from, boolean follows, String aim, Point cross, boolean pressed) implements Tool {
    /** The tool as it is chosen. */
    public static RunTool chosen() {
        return new RunTool(null, false, null, null, false);
    }

    private RunTool at(String begin) {
        return new RunTool(begin, false, null, null, false);
    }

    /** The place where the next run begins. */
    private String begin(ToolContext context) {
        if (!follows || context.selection().size() != 1) {
            return from;
        }
        String selected = context.selection().iterator().next();
        return place(selected, context) ? selected : from;
    }

    private static boolean place(String id, ToolContext context) {
        return context.advice().isPlace(id);
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        String begin = begin(context);
        return switch (event.what()) {
            case LEAVE -> ToolResult.to(at(begin), Feedback.NONE);
            case DOUBLE -> ToolResult.to(new SelectTool(), Feedback.NONE);
            case PRESS -> event.button() != 1 ? ToolResult.to(new SelectTool(), Feedback.NONE)
                    : shown(new RunTool(begin, false, null, null, true), event, context);
            case RELEASE -> pressed ? take(begin, context.under(event.at(), id -> place(id, context)),
                    context.snapped(context.viewport().toSheet(event.at()), event.ctrl()), event, context)
                    : ToolResult.to(at(begin), Feedback.NONE);
            case MOVE -> shown(new RunTool(begin, false, null, null, pressed), event, context);
        };
    }

    private ToolResult take(String begin, String on, Point ground, PointerEvent event, ToolContext context) {
        if (on == null) {
            return context.advice().makePlace(ground).possible()
                    ? ToolResult.editing(new RunTool(null, true, null, null, false), new EditRequest.MakePlace(ground, begin))
                    : shown(at(begin), event, context);
        }
        if (begin == null || on.equals(begin)) {
            return shown(at(on), event, context);
        }
        return context.advice().makeRun(begin, on).possible() ? ToolResult.editing(at(on), new EditRequest.MakeRun(begin, on))
                : shown(at(begin), event, context);
    }

    private static ToolResult shown(RunTool next, PointerEvent event, ToolContext context) {
        String on = context.under(event.at(), id -> place(id, context));
        Point ground = context.snapped(context.viewport().toSheet(event.at()), event.ctrl());
        return shown(next, on, on == null ? ground : Walk.middle(on, context.hits()), context);
    }

    private static ToolResult shown(RunTool next, String on, Point at, ToolContext context) {
        Verdict verdict = on == null ? context.advice().makePlace(at)
                : next.from() == null || on.equals(next.from()) ? Verdict.allowed(context.advice().label(on))
                : context.advice().makeRun(next.from(), on);
        Point screen = context.viewport().toScreen(at);
        Overlay overlay = new Overlay(context);
        Point begin = next.from() == null ? null : Walk.middle(next.from(), context.hits());
        if (begin != null) {
            overlay.line(List.of(context.viewport().toScreen(begin), screen), verdict);
        }
        if (next.cross() != null) {
            overlay.cross(screen);
        }
        if (on == null) {
            overlay.ring(screen, verdict);
        }
        return ToolResult.to(next, Feedback.aiming(on, overlay.frame(on, verdict).bubble(screen, verdict).groups(), verdict));
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        String begin = begin(context);
        if (cross != null && Walk.walks(event.key()) && event.key() != KeyEvent.Key.TAB) {
            Point at = Caret.moved(cross, event, context);
            return shown(new RunTool(begin, false, null, at, false), null, at, context);
        }
        if (Walk.walks(event.key())) {
            Walk walk = Walk.over(context.hits(), id -> place(id, context) && !id.equals(begin));
            String to = walk.to(event, aim != null ? aim : begin);
            return to == null ? ToolResult.to(at(begin), Feedback.NONE)
                    : shown(new RunTool(begin, false, to, null, false), to, walk.middle(to), context);
        }
        return switch (event.key()) {
            case ESCAPE -> ToolResult.to(begin == null ? new SelectTool() : chosen(), Feedback.NONE);
            case SPACE -> {
                Point at = begin == null ? Caret.begin(context) : context.snapped(Walk.middle(begin, context.hits()), false);
                yield shown(new RunTool(begin, false, null, at, false), null, at, context);
            }
            case ENTER -> enter(begin, context);
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    private ToolResult enter(String begin, ToolContext context) {
        if (aim == null && cross == null) {
            return ToolResult.to(new SelectTool(), Feedback.NONE);
        }
        Point at = cross != null ? cross : Walk.middle(aim, context.hits());
        Point screen = context.viewport().toScreen(at);
        return take(begin, aim, at, PointerEvent.move(screen.x(), screen.y()), context);
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
