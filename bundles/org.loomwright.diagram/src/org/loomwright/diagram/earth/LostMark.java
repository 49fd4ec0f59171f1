// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Veil;
import org.loomwright.diagram.symbol.LineWeight;

/** Draws a lost strap: both stubs grey, a cross with a halo between them; and what it means in the key. */
final class LostMark {
    /** Width of a halo, px. */
    static final double HALO_PX = 10;
    /** How much further from the line than elsewhere the texts stand, so that the cross is free of them, px. */
    static final double ASIDE_PX = 6;
    private static final double CROSS_PX = 9;
    private static final double CROSS_HALO_PX = 6;
    private static final double GAP_PX = 22;
    private final SceneBuilder scene;

    LostMark(SceneBuilder scene) {
        this.scene = scene;
    }

    void paint(EarthContent.Join join, List<Point> way) {
        LineWeight weight = Double.isNaN(join.sectionMm2()) ? LineWeight.of(35) : LineWeight.of(join.sectionMm2());
        int longest = longest(way);
        Point a = way.get(longest);
        Point b = way.get(longest + 1);
        double length = StrictMath.max(0.01, a.distance(b));
        double gap = StrictMath.min(GAP_PX, length / 3);
        Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
        double dx = (b.x() - a.x()) / length * gap;
        double dy = (b.y() - a.y()) / length * gap;
        List<Point> first = new ArrayList<>(way.subList(0, longest + 1));
        first.add(middle.moved(-dx, -dy));
        List<Point> last = new ArrayList<>(List.of(middle.moved(dx, dy)));
        last.addAll(way.subList(longest + 1, way.size()));
        scene.group(Kind.EDGE, join.id(), join.shown() + ", lost");
        scene.line(weight.back(Role.INK3), first);
        scene.line(weight.back(Role.INK3), last);
        scene.group(Kind.OVERLAY, join.id(), join.shown() + " is lost");
        cross(middle);
    }

    private static int longest(List<Point> way) {
        int longest = 0;
        for (int i = 1; i + 1 < way.size(); i++) {
            if (way.get(i).distance(way.get(i + 1)) > way.get(longest).distance(way.get(longest + 1))) {
                longest = i;
            }
        }
        return longest;
    }

    private void cross(Point at) {
        for (Stroke stroke : List.of(Stroke.solid(Veil.whatIf(), CROSS_HALO_PX), Stroke.solid(Role.INK, 2.25))) {
            scene.line(stroke, at.moved(-CROSS_PX, -CROSS_PX), at.moved(CROSS_PX, CROSS_PX));
            scene.line(stroke, at.moved(-CROSS_PX, CROSS_PX), at.moved(CROSS_PX, -CROSS_PX));
        }
    }

    /** The key, its middle line at y. */
    void key(double x, double y) {
        scene.group(null, "key of a lost strap");
        cross(new Point(x + 12, y));
        scene.text(x + 32, y + 4, "lost strap", 12, false, Anchor.START, Role.INK2);
        scene.group(null, "key of a detour");
        scene.line(Stroke.solid(Veil.whatIf(), HALO_PX), new Point(x + 112, y), new Point(x + 156, y));
        scene.line(LineWeight.of(4).back(Role.INK), new Point(x + 112, y), new Point(x + 156, y));
        scene.text(x + 164, y + 4, "carries more than before", 12, false, Anchor.START, Role.INK2);
    }
}
