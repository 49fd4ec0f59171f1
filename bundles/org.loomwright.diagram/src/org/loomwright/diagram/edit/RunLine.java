// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.edits.RunLengths;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Run;

/**
 * A run as it is drawn on a plan, from its first place to its last.
 *
 * @param points   its line, px of the sheet; empty when it is not drawn
 * @param lengthMm its length, mm; NaN when not known
 */
record RunLine(List<Point> points, double lengthMm) {
    RunLine {
        points = List.copyOf(points);
    }

    static RunLine of(Drawn drawn, Run run) {
        List<List<Point>> lines = drawn.lines(Fragments.of(run));
        Bounds from = run.getFrom() == null ? null : drawn.shape(Fragments.of(run.getFrom()));
        Bounds to = run.getTo() == null ? null : drawn.shape(Fragments.of(run.getTo()));
        double lengthMm = RunLengths.mm(run);
        if (lines.isEmpty() || from == null || to == null) {
            return new RunLine(List.of(), lengthMm);
        }
        // walls are drawn beyond the places: the line itself lies between them
        List<Point> points = new ArrayList<>(lines.get(0));
        if (points.get(0).distance(from.centre()) > points.get(points.size() - 1).distance(from.centre())) {
            java.util.Collections.reverse(points);
        }
        points.set(0, from.centre());
        points.set(points.size() - 1, to.centre());
        return new RunLine(points, lengthMm);
    }

    /** The point at a distance from the first place, mm; null when the run is not drawn. */
    Point at(double mm) {
        if (points.isEmpty() || Double.isNaN(lengthMm) || lengthMm <= 0) {
            return null;
        }
        double left = StrictMath.min(1, StrictMath.max(0, mm / lengthMm)) * px();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double piece = a.distance(b);
            if (left <= piece && piece > 0) {
                return new Point(a.x() + left / piece * (b.x() - a.x()), a.y() + left / piece * (b.y() - a.y()));
            }
            left -= piece;
        }
        return points.get(points.size() - 1);
    }

    /** Distance from the first place of the point of the line nearest to another, mm; NaN when it is not known. */
    double mmAt(Point near) {
        double best = Double.POSITIVE_INFINITY;
        double along = Double.NaN;
        double before = 0;
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double piece = a.distance(b);
            double t = piece <= 0 ? 0 : StrictMath.min(1, StrictMath.max(0,
                    ((near.x() - a.x()) * (b.x() - a.x()) + (near.y() - a.y()) * (b.y() - a.y())) / (piece * piece)));
            double away = near.distance(new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y())));
            if (away < best) {
                best = away;
                along = before + t * piece;
            }
            before += piece;
        }
        return before <= 0 ? Double.NaN : along / before * lengthMm;
    }

    private double px() {
        double px = 0;
        for (int i = 1; i < points.size(); i++) {
            px += points.get(i - 1).distance(points.get(i));
        }
        return px;
    }
}
