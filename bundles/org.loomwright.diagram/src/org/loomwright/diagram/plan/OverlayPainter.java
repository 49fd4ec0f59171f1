// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayValues;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;

/**
 * The colours of an overlay: runs by their fill or by the highest value of the cables in them, a strip along the edge of bodies
 * by their potential, a strip under a device by the load of its fuses. Symbols and texts keep their colours.
 */
final class OverlayPainter {
    private static final double STRIP_PX = 12;
    private static final double UNDER_PX = 5;
    private static final int NO_RUN = -1;
    private final PlanContent content;
    private final PlanLayout layout;
    private final OverlayValues overlay;
    private final SceneBuilder scene;

    OverlayPainter(PlanContent content, PlanLayout layout, OverlayValues overlay, SceneBuilder scene) {
        this.content = content;
        this.layout = layout;
        this.overlay = overlay;
        this.scene = scene;
    }

    /** True when it colours no runs, so that cables are drawn as without it. */
    boolean silent() {
        return silent(overlay.scale().kind());
    }

    /** True for an overlay that colours no runs. */
    static boolean silent(OverlayKind kind) {
        return kind == OverlayKind.POTENTIAL || kind == OverlayKind.FUSE_LOAD;
    }

    /** Colour of a run, or null. */
    Tone run(int run) {
        Double highest = overlay.values().get(content.runs().get(run).id());
        OverlayKind kind = overlay.scale().kind();
        if (kind == OverlayKind.VOLTAGE_DROP || kind == OverlayKind.TEMPERATURE) {
            for (int c : layout.lanes().cables(run)) {
                Double value = overlay.values().get(content.cables().get(c).id());
                highest = value == null || highest != null && highest > value ? highest : value;
            }
        }
        return highest == null ? null : overlay.scale().tone(highest);
    }

    /** Strips inside the edges of the bodies. */
    void bodies() {
        if (overlay.scale().kind() != OverlayKind.POTENTIAL) {
            return;
        }
        for (PlanContent.Body body : content.bodies()) {
            Double value = overlay.values().get(body.id());
            if (value != null) {
                scene.group(Group.Kind.OVERLAY, body.id(), "potential of " + body.name());
                List<Point> edge = inset(layout.to().at(body.outline()));
                List<Point> closed = new ArrayList<>(edge);
                closed.add(edge.get(0));
                closed.add(edge.get(1));
                scene.line(Stroke.solid(overlay.scale().tone(value), STRIP_PX), closed);
                for (int i = 2; i < closed.size(); i++) {
                    keepFree(closed.get(i - 1), closed.get(i));
                }
            }
        }
    }

    /** Texts stay off a strip, or lie on a plate over it. */
    private void keepFree(Point from, Point to) {
        int pieces = 1 + (int) (from.distance(to) / STRIP_PX);
        for (int i = 0; i < pieces; i++) {
            Point a = between(from, to, (double) i / pieces);
            Point b = between(from, to, (double) (i + 1) / pieces);
            layout.room().takeDuct(NO_RUN, Bounds.between(a, b).grown(STRIP_PX / 2));
        }
    }

    private static Point between(Point from, Point to, double share) {
        return new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }

    /** Strip along the lower edge of a device's plate. */
    void device(SeatForm.Cell cell) {
        Double value = overlay.values().get(content.devices().get(cell.device()).id());
        if (overlay.scale().kind() != OverlayKind.FUSE_LOAD || value == null) {
            return;
        }
        Bounds at = cell.ground();
        scene.group(Group.Kind.OVERLAY, content.devices().get(cell.device()).id(), "load of the fuse");
        scene.rectangle(Fill.solid(overlay.scale().tone(value)), Stroke.solid(Role.INK2, 0.75), at.left() + 2,
                at.bottom() - UNDER_PX, at.width() - 4, UNDER_PX);
    }

    /** The outline drawn in by half a strip towards its middle. */
    private static List<Point> inset(List<Point> outline) {
        Bounds bounds = Bounds.of(outline);
        double sx = 1 - STRIP_PX / StrictMath.max(2 * STRIP_PX, bounds.width());
        double sy = 1 - STRIP_PX / StrictMath.max(2 * STRIP_PX, bounds.height());
        Point middle = bounds.centre();
        return outline.stream().map(point -> new Point(middle.x() + sx * (point.x() - middle.x()),
                middle.y() + sy * (point.y() - middle.y()))).toList();
    }
}
