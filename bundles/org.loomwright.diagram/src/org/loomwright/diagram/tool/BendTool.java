// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * Shifts the stretches of an edge aside: that adds bends, moves them, and takes them away where stretches fall into one line.
 *
 * <p>Keys: tab takes the next stretch; arrows shift it by a step of the grid, by ten with shift; delete lets the layout choose
 * again;
 * enter is done, escape gives up.
 *
 * @param edge    the edge
 * @param line    its line as it was, px of the sheet
 * @param shifted its line as it would be
 * @param stretch index of the stretch in {@code line} that is shifted
 * @param to      where that lies now: y of a level one, x of an upright one; NaN for where it was
 * @param drawn   by the pointer, not by keys
 */
public record BendTool(String edge, List<Point> line, List<Point> shifted, int stretch, double to, boolean drawn)
        implements Tool {
    public BendTool {
        line = List.copyOf(line);
        shifted = List.copyOf(shifted);
    }

    static BendTool drawing(Handle handle, ToolContext context) {
        List<Point> line = context.advice().line(handle.edge());
        return new BendTool(handle.edge(), line, line, handle.stretch(), Double.NaN, true);
    }

    /** By keys, at the longest stretch; null for an edge that cannot be bent. */
    static BendTool keyed(String edge, ToolContext context) {
        List<Point> line = context.advice().line(edge);
        if (line == null) {
            return null;
        }
        int longest = 0;
        for (int i = 1; i < line.size() - 1; i++) {
            longest = length(line, i) > length(line, longest) ? i : longest;
        }
        return new BendTool(edge, line, line, longest, Double.NaN, false);
    }

    private static double length(List<Point> line, int stretch) {
        return line.get(stretch).distance(line.get(stretch + 1));
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        if (!drawn) {
            return event.what() == PointerEvent.What.PRESS ? captureLost() : ToolResult.to(this, feedback(context));
        }
        return switch (event.what()) {
            case LEAVE -> ToolResult.to(this, Feedback.NONE);
            case RELEASE -> done();
            default -> {
                Point at = context.snapped(context.viewport().toSheet(event.at()), event.ctrl());
                BendTool next = shiftedTo(Stretches.level(line, stretch) ? at.y() : at.x());
                yield ToolResult.to(next, next.feedback(context));
            }
        };
    }

    private BendTool shiftedTo(double target) {
        return new BendTool(edge, line, Stretches.shifted(line, stretch, target), stretch, target, drawn);
    }

    private ToolResult done() {
        return shifted.equals(line) ? captureLost()
                : ToolResult.editing(new SelectTool(), new EditRequest.Bend(edge, shifted.subList(1, shifted.size() - 1)));
    }

    private Feedback feedback(ToolContext context) {
        Overlay overlay = new Overlay(context).line(shifted.stream().map(context.viewport()::toScreen).toList(), null);
        if (!drawn && shifted.size() > stretch + 1) {
            Point a = context.viewport().toScreen(shifted.get(stretch));
            Point b = context.viewport().toScreen(shifted.get(stretch + 1));
            overlay.handle(Bounds.between(a, b).centre(), true, true);
        }
        return Feedback.aiming(edge, overlay.groups(), null);
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        return switch (event.key()) {
            case TAB -> {
                int count = shifted.size() - 1;
                BendTool next = new BendTool(edge, shifted, shifted, (stretch + (event.shift() ? count - 1 : 1)) % count,
                        Double.NaN, false);
                yield ToolResult.to(next, next.feedback(context));
            }
            case LEFT, RIGHT, UP, DOWN -> {
                BendTool next = stepped(Caret.step(event, context));
                yield ToolResult.to(next, next.feedback(context));
            }
            case DELETE -> ToolResult.editing(new SelectTool(), new EditRequest.Bend(edge, List.of()));
            case ENTER -> done();
            case ESCAPE -> captureLost();
            default -> ToolResult.to(this, feedback(context));
        };
    }

    private BendTool stepped(Point by) {
        boolean level = Stretches.level(line, stretch);
        double step = level ? by.y() : by.x();
        double now = !Double.isNaN(to) ? to : level ? line.get(stretch).y() : line.get(stretch).x();
        return step == 0 ? this : shiftedTo(now + step);
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(new SelectTool(), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.MOVE;
    }
}
