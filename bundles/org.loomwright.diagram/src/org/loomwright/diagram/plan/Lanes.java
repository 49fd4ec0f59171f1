// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Point;

/** Lays cables as parallel lines into the ducts of their runs. */
final class Lanes {
    /** Distance of two lines where there is room, px. */
    private static final double WIDEST_PX = 3.4;
    private final List<PlanContent.Run> runs;
    private final List<List<Point>> lines;
    private final List<List<Integer>> inRun = new ArrayList<>();
    private final double innerPx;

    /**
     * For the cables of a plan.
     *
     * @param lines   line of each run
     * @param innerPx width within a duct for its lines
     */
    Lanes(PlanContent content, List<List<Point>> lines, double innerPx) {
        runs = content.runs();
        this.lines = lines;
        this.innerPx = innerPx;
        runs.forEach(run -> inRun.add(new ArrayList<>()));
        for (int c = 0; c < content.cables().size(); c++) {
            for (int run : content.cables().get(c).path()) {
                if (!inRun.get(run).contains(c)) {
                    inRun.get(run).add(c);
                }
            }
        }
    }

    /** Cables in a run, as indexes in the plan's list. */
    List<Integer> cables(int run) {
        return List.copyOf(inRun.get(run));
    }

    /** Distance of two lines in a run, px. */
    double spacingPx(int run) {
        return StrictMath.min(WIDEST_PX, innerPx / StrictMath.max(1, inRun.get(run).size()));
    }

    /** Smallest distance of two lines along a cable, px. */
    double spacingPx(PlanContent.Cable cable) {
        return cable.path().stream().mapToDouble(this::spacingPx).min().orElse(WIDEST_PX);
    }

    /** The line of a cable over all its runs; empty for one that has no runs. */
    List<Point> line(int index, PlanContent.Cable cable) {
        List<Point> out = new ArrayList<>();
        int at = cable.start();
        Piece before = null;
        for (int run : cable.path()) {
            boolean forward = runs.get(run).from() == at;
            at = forward ? runs.get(run).to() : runs.get(run).from();
            List<Integer> all = inRun.get(run);
            double offset = (all.indexOf(index) - (all.size() - 1) / 2.0) * spacingPx(run);
            List<Point> line = lines.get(run);
            for (int i = 1; i < line.size(); i++) {
                Point a = forward ? line.get(i - 1) : line.get(line.size() - i);
                Point b = forward ? line.get(i) : line.get(line.size() - 1 - i);
                if (a.distance(b) < 0.01) {
                    continue;
                }
                Piece piece = Piece.of(a, b, forward ? offset : -offset);
                join(out, before, piece, a);
                before = piece;
            }
        }
        if (before != null) {
            out.add(before.end());
        }
        return out.isEmpty() ? out : RunRouter.clean(out);
    }

    private static void join(List<Point> out, Piece before, Piece next, Point corner) {
        if (before == null) {
            out.add(next.start());
        } else if (before.level() != next.level()) {
            out.add(before.level() ? new Point(next.start().x(), before.start().y())
                    : new Point(before.start().x(), next.start().y()));
        } else if (before.level()) {
            out.add(new Point(corner.x(), before.start().y()));
            out.add(new Point(corner.x(), next.start().y()));
        } else {
            out.add(new Point(before.start().x(), corner.y()));
            out.add(new Point(next.start().x(), corner.y()));
        }
    }

    /** A straight piece of a cable, aside from the middle of its duct. */
    private record Piece(Point start, Point end, boolean level) {
        static Piece of(Point a, Point b, double offset) {
            boolean level = StrictMath.abs(a.y() - b.y()) < 0.01;
            double dx = level ? 0 : StrictMath.signum(b.y() - a.y()) * offset;
            double dy = level ? -StrictMath.signum(b.x() - a.x()) * offset : 0;
            return new Piece(a.moved(dx, dy), b.moved(dx, dy), level);
        }
    }
}
