// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.List;
import org.loomwright.diagram.overlay.OverlayFigures;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayScale;
import org.loomwright.diagram.overlay.OverlayValues;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Body;

/**
 * Colours of an overlay on a line diagram: the lines of cables by drop or temperature, a strip below a fuse by its load, a strip
 * beside the sign of the frame by the potential of the body. Symbols and texts keep their colours. The fill of ducts is a matter
 * of the plan.
 */
final class LineColours {
    /** No overlay. */
    static final LineColours NONE = new LineColours(null);
    /** A coloured line is wider than its weight, so that thin ones show their colour too. */
    private static final double WIDER_PX = 2;
    private static final double STRIP_PX = 5;
    private final OverlayValues values;

    private LineColours(OverlayValues values) {
        this.values = values;
    }

    static LineColours of(DrawingRequest request) {
        return request.overlay() == null || request.overlay() == OverlayKind.FILL || request.study() == null ? NONE
                : new LineColours(OverlayFigures.of(request.overlay(), request.study(), request.caseName()));
    }

    /** The scale for the legend; null without an overlay. */
    OverlayScale scale() {
        return values == null ? null : values.scale();
    }

    /** Colour of the line of a cable; its own where the overlay says nothing of it. */
    Tone tone(String cable, Role own) {
        boolean lines = values != null && (values.scale().kind() == OverlayKind.VOLTAGE_DROP
                || values.scale().kind() == OverlayKind.TEMPERATURE);
        Double value = lines && cable != null ? values.values().get(cable) : null;
        return value == null ? own : values.scale().tone(value);
    }

    /** The line of a cable. */
    Stroke line(Trace trace, Role own) {
        Tone tone = tone(trace.element(), own);
        Stroke plain = trace.stroke(tone);
        return tone == own ? plain : new Stroke(tone, plain.widthPx() + WIDER_PX, plain.dashPx());
    }

    /** Strip below a fuse around x, y. */
    List<Mark> fuse(String id, double x, double y) {
        return strip(OverlayKind.FUSE_LOAD, id, x - 15, y + 8, 30);
    }

    /** Strip with its upper left corner at x, y for the potential of a body. */
    List<Mark> body(Body body, double x, double y) {
        return body == null ? List.of() : strip(OverlayKind.POTENTIAL, Fragments.of(body), x, y, 26);
    }

    private List<Mark> strip(OverlayKind kind, String id, double x, double y, double width) {
        Double value = values == null || values.scale().kind() != kind ? null : values.values().get(id);
        return value == null ? List.of() : List.of(new Mark.Area(List.of(new Point(x, y), new Point(x + width, y),
                new Point(x + width, y + STRIP_PX), new Point(x, y + STRIP_PX)), Fill.solid(values.scale().tone(value)),
                Stroke.solid(Role.INK2, 0.75)));
    }
}
