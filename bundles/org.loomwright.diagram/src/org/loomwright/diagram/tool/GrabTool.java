// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import org.loomwright.diagram.scene.Point;

/**
 * Puts what is selected on another element by keys: tab and arrows walk over the elements that take it, enter drops it there,
 * escape
 * gives up.
 *
 * @param elements what is put elsewhere
 * @param target   element aimed at; null for none
 */
public record GrabTool(Set<String> elements, String target) implements Tool {
    public GrabTool {
        elements = Collections.unmodifiableSet(new LinkedHashSet<>(elements));
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        return event.what() == PointerEvent.What.PRESS ? captureLost() : ToolResult.to(this, feedback(context));
    }

    private Verdict verdict(String on, ToolContext context) {
        return context.advice().drop(elements, on, Walk.middle(on, context.hits()));
    }

    private Feedback feedback(ToolContext context) {
        if (target == null) {
            return Feedback.NONE;
        }
        Verdict verdict = verdict(target, context);
        Point at = context.viewport().toScreen(Walk.middle(target, context.hits()));
        return Feedback.aiming(target, new Overlay(context).frame(target, verdict).bubble(at, verdict).groups(), verdict);
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        if (Walk.walks(event.key())) {
            Walk walk = Walk.over(context.hits(), id -> !elements.contains(id) && verdict(id, context) != null);
            String from = target != null || elements.isEmpty() ? target : elements.iterator().next();
            GrabTool next = new GrabTool(elements, walk.to(event, from));
            return ToolResult.to(next, next.feedback(context));
        }
        if (event.key() == KeyEvent.Key.ENTER && target != null && verdict(target, context) != null
                && verdict(target, context).possible()) {
            return ToolResult.editing(new SelectTool(), new EditRequest.Drop(elements, target,
                    Walk.middle(target, context.hits())));
        }
        return event.key() == KeyEvent.Key.ESCAPE ? captureLost() : ToolResult.to(this, feedback(context));
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
