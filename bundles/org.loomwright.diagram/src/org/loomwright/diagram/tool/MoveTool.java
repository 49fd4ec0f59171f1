// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;

/**
 * Moves what is selected, in steps of the grid; freely while ctrl is held, along one direction while shift is. Over an element
 * that takes
 * what is moved it is dropped there instead. A step of the drag only sets an offset: the groups to be painted are gathered
 * once, when it
 * begins.
 *
 * @param from     where it began, screen px
 * @param elements what is moved
 * @param ghosts   its groups
 */
public record MoveTool(Point from, Set<String> elements, List<Group> ghosts) implements Tool {
    public MoveTool {
        elements = Collections.unmodifiableSet(new LinkedHashSet<>(elements));
        ghosts = List.copyOf(ghosts);
    }

    /** Takes up the movable part of the selection. */
    static MoveTool begin(Point from, ToolContext context) {
        Set<String> moved = new LinkedHashSet<>(context.selection());
        moved.removeIf(id -> !context.advice().movable(id));
        List<Group> ghosts = new ArrayList<>();
        for (String id : moved) {
            // lines to a device stay where they are until it is put down
            context.hits().groups(id).stream().filter(group -> group.kind() != Group.Kind.EDGE).forEach(ghosts::add);
        }
        return new MoveTool(from, moved, ghosts);
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        if (event.what() == PointerEvent.What.LEAVE) {
            return ToolResult.to(this, Feedback.NONE);
        }
        Point by = by(event, context);
        Point at = context.viewport().toSheet(event.at());
        String target = context.under(event.at(), id -> !elements.contains(id)
                && context.advice().drop(elements, id, at) != null);
        Verdict drop = target == null ? null : context.advice().drop(elements, target, at);
        if (event.what() == PointerEvent.What.RELEASE) {
            if (drop != null) {
                return drop.possible() ? ToolResult.editing(new SelectTool(), new EditRequest.Drop(elements, target, at))
                        : captureLost();
            }
            return by.x() == 0 && by.y() == 0 ? captureLost()
                    : ToolResult.editing(new SelectTool(), new EditRequest.Move(elements, by.x(), by.y()));
        }
        if (drop == null) {
            return ToolResult.to(this, new Feedback(null, ghosts, by.x(), by.y(), null));
        }
        List<Group> over = new Overlay(context).frame(target, drop).bubble(event.at(), drop).groups();
        return ToolResult.to(this, new Feedback(target, ghosts, by.x(), by.y(), null, over, drop));
    }

    private Point by(PointerEvent event, ToolContext context) {
        double dx = (event.at().x() - from.x()) / context.viewport().scale();
        double dy = (event.at().y() - from.y()) / context.viewport().scale();
        if (event.shift()) {
            boolean across = StrictMath.abs(dx) >= StrictMath.abs(dy);
            dx = across ? dx : 0;
            dy = across ? 0 : dy;
        }
        double grid = event.ctrl() ? 0 : context.gridPx();
        return grid > 0 ? new Point(grid * StrictMath.rint(dx / grid), grid * StrictMath.rint(dy / grid)) : new Point(dx, dy);
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
        return Cursor.MOVE;
    }
}
