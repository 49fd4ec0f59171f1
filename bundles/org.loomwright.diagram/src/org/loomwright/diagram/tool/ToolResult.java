// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import org.loomwright.diagram.scene.Viewport;

/**
 * What comes of an event.
 *
 * @param next      the tool in its next state
 * @param feedback  what to paint over the still layer
 * @param selection new selection; null when it stays
 * @param viewport  new part of the sheet; null when it stays
 * @param edit      change of the model wanted; null for none, and always null before the button is let go
 */
public record ToolResult(Tool next, Feedback feedback, Set<String> selection, Viewport viewport, EditRequest edit) {
    public ToolResult {
        selection = selection == null ? null : Collections.unmodifiableSet(new LinkedHashSet<>(selection));
    }

    static ToolResult to(Tool next, Feedback feedback) {
        return new ToolResult(next, feedback, null, null, null);
    }

    static ToolResult selecting(Tool next, Set<String> selection) {
        return new ToolResult(next, Feedback.NONE, selection, null, null);
    }

    static ToolResult editing(Tool next, EditRequest edit) {
        return new ToolResult(next, Feedback.NONE, null, null, edit);
    }
}
