// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.graphics.Path;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * Hatches and dots cut to an area by themselves: clipping by a path is slow in the toolkit and not kept under a transform.
 */
final class Patterns {
    private static final double HATCH_PX = 8;
    private static final double DOTS_PX = 9;
    private static final double DOT_PX = 0.9;

    private Patterns() {
    }

    /** Lines at 45 degrees within an area. */
    static void hatch(Path into, List<Point> area) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : area) {
            low = StrictMath.min(low, point.x() + point.y());
            high = StrictMath.max(high, point.x() + point.y());
        }
        double step = HATCH_PX * StrictMath.sqrt(2);
        for (double sum = step * StrictMath.ceil(low / step); sum < high; sum += step) {
            double[] cuts = cuts(area, sum);
            for (int i = 0; i + 1 < cuts.length; i += 2) {
                into.moveTo((float) cuts[i], (float) (sum - cuts[i]));
                into.lineTo((float) cuts[i + 1], (float) (sum - cuts[i + 1]));
            }
        }
    }

    /** Where the line x + y = sum crosses the rim: x, ascending. */
    private static double[] cuts(List<Point> area, double sum) {
        List<Double> xs = new ArrayList<>();
        for (int i = 0; i < area.size(); i++) {
            Point a = area.get(i);
            Point b = area.get((i + 1) % area.size());
            double from = a.x() + a.y() - sum;
            double to = b.x() + b.y() - sum;
            if (from < 0 != to < 0) {
                xs.add(a.x() + (b.x() - a.x()) * from / (from - to));
            }
        }
        double[] sorted = xs.stream().mapToDouble(x -> x).toArray();
        Arrays.sort(sorted);
        return sorted;
    }

    /** Dots within an area. */
    static void dots(Path into, List<Point> area) {
        Bounds room = Bounds.of(area);
        float side = (float) (2 * DOT_PX);
        for (double x = DOTS_PX * StrictMath.floor(room.left() / DOTS_PX) + DOTS_PX / 2; x < room.right(); x += DOTS_PX) {
            for (double y = DOTS_PX * StrictMath.floor(room.top() / DOTS_PX) + DOTS_PX / 2; y < room.bottom(); y += DOTS_PX) {
                if (holds(area, x, y)) {
                    into.moveTo((float) (x + DOT_PX), (float) y);
                    into.addArc((float) (x - DOT_PX), (float) (y - DOT_PX), side, side, 0, 360);
                }
            }
        }
    }

    private static boolean holds(List<Point> area, double x, double y) {
        boolean inside = false;
        for (int i = 0; i < area.size(); i++) {
            Point a = area.get(i);
            Point b = area.get((i + 1) % area.size());
            if (a.y() > y != b.y() > y && x < a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y())) {
                inside = !inside;
            }
        }
        return inside;
    }
}
