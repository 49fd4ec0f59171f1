// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.ToolContext;
import org.loomwright.workbench.diagram.SceneCanvas;

/**
 * Where elements of a drawing can be pressed.
 *
 * @param canvas the drawing
 */
record Spots(SceneCanvas canvas) {
    /** A point of the window at which an element can be pressed; one that is still on it some px aside, if there is such. */
    Point of(String id) {
        for (double aside : new double[] {3, 1, 0}) {
            for (Point each : candidates(canvas.hits().groups(id))) {
                Point at = canvas.viewport().toScreen(each);
                if (hit(id, at, 0, 0) && hit(id, at, aside, 0) && hit(id, at, -aside, 0) && hit(id, at, 0, aside)
                        && hit(id, at, 0, -aside)) {
                    return at;
                }
            }
        }
        throw new AssertionError(id + " is not drawn where it can be pressed; drawn are " + canvas.hits().elements());
    }

    private boolean hit(String id, Point at, double dx, double dy) {
        HitIndex.Hit hit = canvas.hits().at(canvas.viewport().toSheet(new Point(StrictMath.rint(at.x()) + dx,
                StrictMath.rint(at.y()) + dy)), ToolContext.TOLERANCE_PX, canvas.viewport());
        return hit != null && hit.element().equals(id);
    }

    private static List<Point> candidates(List<Group> groups) {
        List<Point> points = new ArrayList<>();
        for (Group group : groups) {
            if (group.kind() == Group.Kind.NODE && group.shape() != null) {
                points.add(group.shape().centre());
            }
            for (Mark mark : group.marks()) {
                if (mark instanceof Mark.Line line) {
                    for (int i = 1; i < line.points().size(); i++) {
                        points.add(between(line.points().get(i - 1), line.points().get(i)));
                    }
                } else {
                    points.add(mark.outline().centre());
                }
            }
            Bounds room = group.shape();
            for (int step = 1; room != null && step < 64; step++) {
                points.add(new Point(room.left() + room.width() * (step % 8) / 8, room.top() + room.height() * (step / 8) / 8));
            }
        }
        return points;
    }

    private static Point between(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    /** The end of an edge that lies nearest to an element. */
    Point end(String edge, String at) {
        Point near = canvas.hits().bounds(at).centre();
        Point found = null;
        for (Group group : canvas.hits().groups(edge)) {
            for (Mark mark : group.marks()) {
                if (group.kind() == Group.Kind.EDGE && mark instanceof Mark.Line line) {
                    for (Point each : List.of(line.points().get(0), line.points().get(line.points().size() - 1))) {
                        found = found == null || each.distance(near) < found.distance(near) ? each : found;
                    }
                }
            }
        }
        return canvas.viewport().toScreen(found);
    }
}
