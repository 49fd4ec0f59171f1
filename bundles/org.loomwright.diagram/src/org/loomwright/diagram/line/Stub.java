// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.List;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;

/**
 * The end of a line that goes on in another section of the sheet: a tag that points along the flow of supply or return, with
 * where the line leads and the field of the sheet in which it goes on.
 *
 * @param id        id of its node
 * @param other     id of the stub at which the line goes on
 * @param section   index of the section in which it goes on
 * @param trace     the line
 * @param out       true where the line leaves a section, false where it comes in
 * @param rightward true when the flow is drawn to the right
 */
record Stub(String id, String other, int section, Trace trace, boolean out, boolean rightward) {
    private static final double HEIGHT_PX = 20;
    private static final double TIP_PX = 8;
    private static final double PAD_PX = 7;
    /** Room is kept for any field, so that the layout does not depend on where the other end comes to lie. */
    private static final String WIDEST_FIELD = "M20";

    /** Id of its only port. */
    String port() {
        return id + "|";
    }

    private String text() {
        return out ? trace.to() : trace.from();
    }

    /** True when the line meets the tag at its left side. */
    private boolean leftPort() {
        return out == rightward;
    }

    LineNode node(TextMeasure measure) {
        double width = StrictMath.ceil(PAD_PX + LineText.width(measure, text(), true) + 8
                + LineText.width(measure, WIDEST_FIELD, false) + PAD_PX + TIP_PX);
        LayoutPort port = new LayoutPort(port(), leftPort() ? 0 : width, HEIGHT_PX / 2,
                leftPort() ? LayoutPort.Side.LEFT : LayoutPort.Side.RIGHT);
        return new LineNode(id, null, width, HEIGHT_PX, List.of(port), LayoutNode.Column.ANY, List.of());
    }

    /** The tag with its upper left corner at 0, 0. */
    Group group(double width, String field, TextMeasure measure) {
        double tip = rightward ? width : 0;
        double flat = rightward ? 0 : width;
        double neck = rightward ? width - TIP_PX : TIP_PX;
        Role soft = trace.tone() == Role.INK ? Role.INK2 : trace.tone();
        double x = (rightward ? 0 : TIP_PX) + PAD_PX;
        Mark outline = new Mark.Area(List.of(new Point(flat, 0), new Point(neck, 0), new Point(tip, HEIGHT_PX / 2),
                new Point(neck, HEIGHT_PX), new Point(flat, HEIGHT_PX)), Fill.solid(Role.PLATE), Stroke.solid(soft, 1));
        return new Group(trace.element(), (out ? "goes on to " + trace.to() : "comes from " + trace.from()) + ", field " + field,
                Group.Kind.PORT, List.of(outline, LineText.start(x, 14.5, text(), true, trace.tone()),
                        LineText.start(x + LineText.width(measure, text(), true) + 8, 14.5, field, false, soft)));
    }
}
