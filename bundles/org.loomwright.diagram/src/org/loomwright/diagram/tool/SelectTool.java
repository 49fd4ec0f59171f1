// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;

/**
 * The tool at rest. A press on an element selects it, with shift or ctrl adds or takes it away; drawn on, it moves what is
 * selected; a press on a handle of the selected edge fixes its end elsewhere or bends it; a press beside all elements begins a
 * rectangle; the middle button pans; a double click renames.
 *
 * <p>Keys: tab walks over the elements; arrows move what is selected by a step of the grid, by ten with shift; enter renames; c
 * connects
 * from the selected element, or fixes an end of the selected edge elsewhere; b bends the selected edge; space takes up what is
 * selected
 * to put it on another element.
 */
public record SelectTool() implements Tool {

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        String under = event.what() == PointerEvent.What.LEAVE ? null : context.under(event.at());
        if (event.what() == PointerEvent.What.DOUBLE) {
            return renaming(this, under);
        }
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
        Handle handle = Handle.under(event.at(), context);
        if (handle != null) {
            return ToolResult.to(handle.end() == null ? BendTool.drawing(handle, context)
                    : new ReconnectTool(handle.edge(), handle.end(), Joint.NONE), Feedback.NONE);
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

    /** Wants a name to be written; nothing where there is no element. */
    static ToolResult renaming(Tool next, String element) {
        return element == null ? ToolResult.to(next, Feedback.NONE)
                : ToolResult.editing(next, new EditRequest.Rename(element));
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        Set<String> selection = context.selection();
        String single = selection.size() == 1 ? selection.iterator().next() : null;
        return switch (event.key()) {
            case ESCAPE -> ToolResult.selecting(this, Set.of());
            case SELECT_ALL -> ToolResult.selecting(this, context.hits().elements());
            case LEFT, RIGHT, UP, DOWN -> nudge(context, Caret.step(event, context));
            case TAB -> {
                String to = Walk.over(context.hits(), id -> true).to(event, single);
                yield to == null ? ToolResult.to(this, Feedback.NONE) : ToolResult.selecting(this, Set.of(to));
            }
            case ENTER, RENAME -> renaming(this, single);
            case PASTE -> ToolResult.editing(this, new EditRequest.Paste(single));
            case CONNECT -> taken(single == null ? ConnectTool.chosen() : connecting(single, context));
            case BEND -> taken(single == null ? null : BendTool.keyed(single, context));
            case SPACE -> taken(selection.isEmpty() ? null : new GrabTool(selection, null));
            default -> selection.isEmpty() ? ToolResult.to(this, Feedback.NONE) : onSelection(event.key(), selection);
        };
    }

    private ToolResult onSelection(KeyEvent.Key key, Set<String> selection) {
        EditRequest request = switch (key) {
            case DELETE -> new EditRequest.Delete(selection);
            case COPY -> new EditRequest.Copy(selection);
            case CUT -> new EditRequest.Cut(selection);
            case DUPLICATE -> new EditRequest.Duplicate(selection);
            default -> null;
        };
        return request == null ? ToolResult.to(this, Feedback.NONE) : ToolResult.editing(this, request);
    }

    private static Tool connecting(String element, ToolContext context) {
        Tool end = ReconnectTool.of(element, context);
        return end != null ? end : ConnectTool.from(element, context);
    }

    private ToolResult taken(Tool tool) {
        return ToolResult.to(tool == null ? this : tool, Feedback.NONE);
    }

    private ToolResult nudge(ToolContext context, Point by) {
        Set<String> moved = new LinkedHashSet<>(context.selection());
        moved.removeIf(id -> !context.advice().movable(id));
        return moved.isEmpty() ? ToolResult.to(this, Feedback.NONE)
                : ToolResult.editing(this, new EditRequest.Move(moved, by.x(), by.y()));
    }

    @Override
    public List<Group> resting(ToolContext context) {
        Overlay overlay = new Overlay(context);
        Handle.of(context).forEach(handle -> overlay.handle(handle.at(), handle.end() == null, false));
        return overlay.groups();
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
