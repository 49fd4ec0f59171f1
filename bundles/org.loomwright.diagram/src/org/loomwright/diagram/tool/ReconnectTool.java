// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Point;

/**
 * Fixes an end of an edge elsewhere: drawn from its handle, or by keys.
 *
 * <p>Keys: space takes the next end of the edge before anything is aimed at, then the next ending; tab and arrows walk over
 * elements; enter
 * fixes the end there, escape gives up.
 *
 * @param edge the edge
 * @param end  the end that is moved
 * @param aim  where it would be fixed
 */
public record ReconnectTool(String edge, Advice.EdgeEnd end, Joint aim) implements Tool {

    /** For the first end of an edge; null when none can be fixed elsewhere. */
    static ReconnectTool of(String edge, ToolContext context) {
        List<Advice.EdgeEnd> ends = context.advice().ends(edge);
        return ends.isEmpty() ? null : new ReconnectTool(edge, ends.get(0), Joint.NONE);
    }

    private Joint.Judge judge(ToolContext context) {
        return ending -> context.advice().reconnect(end, ending);
    }

    /** The ending at the end that stays, so that the likeliest terminal is found; null when it is not known. */
    private String kept(ToolContext context) {
        return context.advice().kept(end);
    }

    /** Where the end that stays is drawn. */
    private Point keptPoint(ToolContext context) {
        for (Advice.EdgeEnd other : context.advice().ends(edge)) {
            if (other.core().equals(end.core()) && other.end() != end.end()) {
                return Walk.middle(other.at(), context.hits());
            }
        }
        return null;
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        return switch (event.what()) {
            case LEAVE -> ToolResult.to(this, Feedback.NONE);
            case RELEASE -> {
                Joint here = Joint.under(event.at(), aim, kept(context), context, judge(context));
                yield here.possible() && !here.element().equals(end.at()) ? fixed(here) : captureLost();
            }
            default -> {
                Joint here = Joint.under(event.at(), aim, kept(context), context, judge(context));
                yield ToolResult.to(new ReconnectTool(edge, end, here), here.feedback(keptPoint(context), event.at(), context));
            }
        };
    }

    private ToolResult fixed(Joint here) {
        return ToolResult.editing(new SelectTool(), new EditRequest.Reconnect(end, here.ending()));
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        if (Walk.walks(event.key())) {
            Walk walk = Walk.over(context.hits(), id -> !context.advice().endings(id).isEmpty());
            String to = walk.to(event, aim.element() != null ? aim.element() : end.at());
            return to == null ? ToolResult.to(this, Feedback.NONE)
                    : shown(Joint.at(to, kept(context), context, judge(context)), context);
        }
        return switch (event.key()) {
            case SPACE -> aim.element() != null ? shown(aim.turned(context, judge(context)), context) : nextEnd(context);
            case ENTER -> aim.possible() ? fixed(aim) : shown(aim, context);
            case ESCAPE -> captureLost();
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    private ToolResult nextEnd(ToolContext context) {
        List<Advice.EdgeEnd> ends = context.advice().ends(edge);
        int at = ends.indexOf(end);
        ReconnectTool next = new ReconnectTool(edge, ends.get((at + 1) % ends.size()), Joint.NONE);
        return ToolResult.to(next, Feedback.aiming(next.end().at(), new Overlay(context).frame(next.end().at(), null).groups(),
                null));
    }

    private ToolResult shown(Joint joint, ToolContext context) {
        return ToolResult.to(new ReconnectTool(edge, end, joint), joint.feedback(keptPoint(context), null, context));
    }

    @Override
    public ToolResult captureLost() {
        return ToolResult.to(new SelectTool(), Feedback.NONE);
    }

    @Override
    public Cursor cursor() {
        return Cursor.CROSS;
    }
}
