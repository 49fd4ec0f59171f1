// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import org.loomwright.diagram.scene.Point;

/**
 * Draws an edge: from the element pressed to the one where the button is let go, or from the one clicked to the next one
 * clicked. What
 * the edge can end at is offered below the element; the likeliest is chosen beforehand.
 *
 * <p>Keys: tab and arrows walk over the elements, space takes the next ending of the element, enter begins and ends the edge,
 * escape
 * gives up.
 *
 * @param start   where the edge begins; its ending is null before it has begun
 * @param aim     where it would end, or where it would begin when it has not begun
 * @param pressed where the button was pressed, px of the window; null while it is up
 * @param staying is taken up again when an edge is done
 */
public record ConnectTool(Joint start, Joint aim, Point pressed, boolean staying) implements Tool {
    private static final double STILL_PX = 4;

    /** The tool as it is chosen. */
    public static ConnectTool chosen() {
        return new ConnectTool(Joint.NONE, Joint.NONE, null, false);
    }

    /** An edge that begins at an element; null when none can begin there. */
    static ConnectTool from(String element, ToolContext context) {
        Joint start = Joint.at(element, null, context, ending -> Verdict.allowed(""));
        return start.ending() == null ? null : new ConnectTool(start, Joint.NONE, null, false);
    }

    private boolean begun() {
        return start.ending() != null;
    }

    private Joint.Judge judge(ToolContext context) {
        return begun() ? ending -> context.advice().connect(start.ending(), ending) : ending -> Verdict.allowed("");
    }

    @Override
    public ToolResult pointer(PointerEvent event, ToolContext context) {
        if (event.what() == PointerEvent.What.LEAVE) {
            return ToolResult.to(this, Feedback.NONE);
        }
        Joint here = Joint.under(event.at(), aim, start.ending(), context, judge(context));
        return switch (event.what()) {
            case PRESS -> press(event, here, context);
            case RELEASE -> release(event, here, context);
            default -> shown(new ConnectTool(start, here, pressed, staying), event.at(), context);
        };
    }

    private ToolResult press(PointerEvent event, Joint here, ToolContext context) {
        if (event.button() != 1) {
            return ToolResult.to(new SelectTool(), Feedback.NONE);
        }
        if (begun()) {
            return shown(new ConnectTool(start, here, event.at(), staying), event.at(), context);
        }
        Joint begin = here.possible() ? here : Joint.NONE;
        return shown(new ConnectTool(begin, Joint.NONE, event.at(), staying || event.shift()), event.at(), context);
    }

    private ToolResult release(PointerEvent event, Joint here, ToolContext context) {
        boolean still = pressed != null && pressed.distance(event.at()) < STILL_PX;
        boolean onStart = here.element() != null && here.element().equals(start.element()) && here.ending() != null
                && (here.ending().equals(start.ending()) || still);
        if (begun() && here.possible() && !onStart) {
            return done(here, event.shift());
        }
        // let go where it may not end: the edge stays at hand, the reason is told
        return shown(new ConnectTool(start, here, null, staying), event.at(), context);
    }

    private ToolResult done(Joint end, boolean shift) {
        return ToolResult.editing(staying || shift ? new ConnectTool(Joint.NONE, Joint.NONE, null, true) : new SelectTool(),
                new EditRequest.Connect(start.ending(), end.ending()));
    }

    private ToolResult shown(ConnectTool next, Point screen, ToolContext context) {
        Point from = next.begun() ? Walk.middle(next.start().element(), context.hits()) : null;
        return ToolResult.to(next, next.aim().feedback(from, screen, context));
    }

    @Override
    public ToolResult key(KeyEvent event, ToolContext context) {
        if (Walk.walks(event.key())) {
            Walk walk = Walk.over(context.hits(), id -> !context.advice().endings(id).isEmpty()
                    && !(begun() && id.equals(start.element())));
            String to = walk.to(event, aim.element() != null ? aim.element() : start.element());
            return to == null ? ToolResult.to(this, Feedback.NONE)
                    : shown(new ConnectTool(start, Joint.at(to, start.ending(), context, judge(context)), null, staying), null,
                            context);
        }
        return switch (event.key()) {
            case ESCAPE -> begun() ? ToolResult.to(new ConnectTool(Joint.NONE, Joint.NONE, null, staying), Feedback.NONE)
                    : ToolResult.to(new SelectTool(), Feedback.NONE);
            case SPACE -> aim.element() != null
                    ? shown(new ConnectTool(start, aim.turned(context, judge(context)), null, staying), null, context)
                    : turnedStart(context);
            case ENTER -> enter(event, context);
            default -> ToolResult.to(this, Feedback.NONE);
        };
    }

    private ToolResult turnedStart(ToolContext context) {
        Joint turned = start.turned(context, ending -> Verdict.allowed(""));
        return ToolResult.to(new ConnectTool(turned, Joint.NONE, null, staying), turned.feedback(null, null, context));
    }

    private ToolResult enter(KeyEvent event, ToolContext context) {
        if (begun() && aim.possible()) {
            return done(aim, event.shift());
        }
        if (!begun() && aim.possible()) {
            return ToolResult.to(new ConnectTool(aim, Joint.NONE, null, staying), aim.feedback(null, null, context));
        }
        return shown(this, null, context);
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
