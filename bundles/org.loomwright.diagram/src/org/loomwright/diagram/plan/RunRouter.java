// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * Draws runs between their places at right angles. Where nobody chose their bends each takes the shape that shares least ground
 * with those laid before it, the longest first.
 */
final class RunRouter {
    /** Free ground between two ducts side by side, px. */
    private static final double GAP_PX = 4;
    private static final double BEND_COST = 12;
    private static final double SHARED_COST = 4;
    private static final double OUTSIDE_COST = 150;
    private static final int CHANNELS = 3;
    private final double widthPx;
    private final Bounds field;
    private final Bounds vehicle;
    private final List<List<Point>> laid = new ArrayList<>();

    /** For ducts of a width within a field of the sheet, better within the vehicle. */
    RunRouter(double widthPx, Bounds field, Bounds vehicle) {
        this.vehicle = vehicle.grown(-widthPx / 2);
        this.widthPx = widthPx;
        this.field = field;
    }

    /**
     * The lines of the runs, in their order; two points or more each, only upright and level pieces.
     *
     * @param bends bends that a person chose, by the run's index, px; they are kept, with corners where two are not in line
     */
    List<List<Point>> route(List<Point> places, List<PlanContent.Run> runs, Map<Integer, List<Point>> bends) {
        List<List<Point>> lines = new ArrayList<>();
        runs.forEach(run -> lines.add(null));
        bends.forEach((r, chosen) -> {
            lines.set(r, square(places.get(runs.get(r).from()), chosen, places.get(runs.get(r).to())));
            laid.add(lines.get(r));
        });
        List<Integer> order = IntStream.range(0, runs.size()).boxed()
                .sorted(Comparator.comparingDouble((Integer r) -> -places.get(runs.get(r).from())
                        .distance(places.get(runs.get(r).to()))).thenComparing(r -> r)).toList();
        for (int r : order) {
            if (bends.containsKey(r)) {
                continue;
            }
            List<Point> line = best(places.get(runs.get(r).from()), places.get(runs.get(r).to()), places);
            lines.set(r, line);
            laid.add(line);
        }
        return lines;
    }

    /** A line over the bends with square corners: it goes on level where it can, and turns at the next bend. */
    static List<Point> square(Point from, List<Point> bends, Point to) {
        List<Point> line = new ArrayList<>(List.of(from));
        List<Point> rest = new ArrayList<>(bends);
        rest.add(to);
        for (Point next : rest) {
            Point last = line.get(line.size() - 1);
            boolean upright = line.size() > 1 && line.get(line.size() - 2).x() == last.x();
            line.add(upright ? new Point(last.x(), next.y()) : new Point(next.x(), last.y()));
            line.add(next);
        }
        return clean(line);
    }

    private List<Point> best(Point a, Point b, List<Point> places) {
        List<Point> best = null;
        double least = Double.POSITIVE_INFINITY;
        for (List<Point> line : shapes(a, b)) {
            double cost = cost(line, a, b, places);
            if (cost < least) {
                least = cost;
                best = line;
            }
        }
        return best;
    }

    private List<List<Point>> shapes(Point a, Point b) {
        List<List<Point>> shapes = new ArrayList<>();
        shapes.add(clean(List.of(a, new Point(b.x(), a.y()), b)));
        shapes.add(clean(List.of(a, new Point(a.x(), b.y()), b)));
        double step = widthPx + GAP_PX;
        for (int k = -CHANNELS; k <= CHANNELS; k++) {
            double y = (k <= 0 ? StrictMath.min(a.y(), b.y()) : StrictMath.max(a.y(), b.y())) + k * step;
            double x = (k <= 0 ? StrictMath.min(a.x(), b.x()) : StrictMath.max(a.x(), b.x())) + k * step;
            shapes.add(clean(List.of(a, new Point(a.x(), y), new Point(b.x(), y), b)));
            shapes.add(clean(List.of(a, new Point(x, a.y()), new Point(x, b.y()), b)));
        }
        shapes.add(clean(List.of(a, new Point((a.x() + b.x()) / 2, a.y()), new Point((a.x() + b.x()) / 2, b.y()), b)));
        shapes.add(clean(List.of(a, new Point(a.x(), (a.y() + b.y()) / 2), new Point(b.x(), (a.y() + b.y()) / 2), b)));
        return shapes;
    }

    private double cost(List<Point> line, Point a, Point b, List<Point> places) {
        double cost = BEND_COST * (line.size() - 2);
        for (int i = 1; i < line.size(); i++) {
            Bounds own = duct(line.get(i - 1), line.get(i), widthPx);
            cost += line.get(i - 1).distance(line.get(i));
            if (!field.holds(own)) {
                cost += 1000;
            }
            if (vehicle.holds(a) && vehicle.holds(b) && !vehicle.holds(Bounds.between(line.get(i - 1), line.get(i)))) {
                cost += OUTSIDE_COST;
            }
            for (List<Point> other : laid) {
                for (int j = 1; j < other.size(); j++) {
                    cost += SHARED_COST * shared(own, duct(other.get(j - 1), other.get(j), widthPx)) / widthPx;
                }
            }
            for (Point place : places) {
                if (own.holds(place) && !place.equals(a) && !place.equals(b)) {
                    cost += 3 * widthPx;
                }
            }
        }
        return cost;
    }

    private static double shared(Bounds a, Bounds b) {
        if (!a.meets(b)) {
            return 0;
        }
        return (StrictMath.min(a.right(), b.right()) - StrictMath.max(a.left(), b.left()))
                * (StrictMath.min(a.bottom(), b.bottom()) - StrictMath.max(a.top(), b.top()));
    }

    /** The ground of a piece of a duct. */
    static Bounds duct(Point a, Point b, double widthPx) {
        return Bounds.between(a, b).grown(widthPx / 2);
    }

    /** Without points that repeat or lie on a straight stretch; a run from a place to the same spot keeps both ends. */
    static List<Point> clean(List<Point> line) {
        List<Point> kept = new ArrayList<>();
        for (Point point : line) {
            if (!kept.isEmpty() && kept.get(kept.size() - 1).distance(point) < 0.01) {
                continue;
            }
            int n = kept.size();
            if (n >= 2 && straight(kept.get(n - 2), kept.get(n - 1), point)) {
                kept.remove(n - 1);
            }
            kept.add(point);
        }
        if (kept.size() == 1) {
            kept.add(kept.get(0));
        }
        return kept;
    }

    private static boolean straight(Point a, Point b, Point c) {
        return StrictMath.abs(a.x() - b.x()) < 0.01 && StrictMath.abs(b.x() - c.x()) < 0.01 && (b.y() - a.y()) * (c.y() - b.y()) > 0
                || StrictMath.abs(a.y() - b.y()) < 0.01 && StrictMath.abs(b.y() - c.y()) < 0.01
                && (b.x() - a.x()) * (c.x() - b.x()) > 0;
    }
}
