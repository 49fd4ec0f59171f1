// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.loomwright.engine.assembly.RunGraph.Piece;
import org.loomwright.engine.assembly.RunGraph.Route;
import org.loomwright.engine.assembly.RunGraph.Spot;

/** A path that somebody fixed: checks that its runs join and lead from one end to the other, and adds up its length. */
final class FixedPath {
    private final List<Plan.Run> runs;

    FixedPath(List<Plan.Run> runs) {
        this.runs = runs;
    }

    /**
     * The route along the path, which may be given in either direction.
     *
     * @param a    where the cable starts; an end that is nowhere takes the path's end as it is
     * @param b    where it ends
     * @param path runs, at least one
     * @return the route from a to b, or null when the path does not join them
     */
    Route route(Spot a, Spot b, List<Integer> path) {
        Route route = along(a, b, path);
        if (route == null) {
            List<Integer> back = new ArrayList<>(path);
            Collections.reverse(back);
            route = along(a, b, back);
        }
        return route;
    }

    private Route along(Spot a, Spot b, List<Integer> path) {
        for (boolean forward : new boolean[] {true, false}) {
            Route route = walk(a, b, path, forward);
            if (route != null) {
                return route;
            }
        }
        return null;
    }

    private Route walk(Spot a, Spot b, List<Integer> path, boolean forward) {
        List<Piece> pieces = new ArrayList<>();
        int place = -1;
        for (int i = 0; i < path.size(); i++) {
            Plan.Run run = runs.get(path.get(i));
            boolean last = i == path.size() - 1;
            boolean onward = i == 0 ? forward : run.from() == place;
            if (i > 0 && !onward && run.to() != place) {
                return null;
            }
            double from = i == 0 ? position(a, path.get(i), onward) : onward ? 0 : run.lengthMm();
            double to = last ? position(b, path.get(i), !onward) : onward ? run.lengthMm() : 0;
            if (Double.isNaN(from) || Double.isNaN(to)) {
                return null;
            }
            if (i == 0 && a.place() >= 0 && from != (onward ? 0 : run.lengthMm())
                    || last && b.place() >= 0 && to != (onward ? run.lengthMm() : 0)) {
                return null;
            }
            pieces.add(new Piece(path.get(i), StrictMath.abs(to - from)));
            place = onward ? run.to() : run.from();
        }
        return RunGraph.route(pieces);
    }

    /**
     * Distance of a spot from the first place of a run, mm; NaN when it does not lie on the run. A spot that is nowhere takes
     * the first place or the last.
     */
    private double position(Spot spot, int run, boolean first) {
        Plan.Run of = runs.get(run);
        if (!spot.known()) {
            return first ? 0 : of.lengthMm();
        }
        if (spot.run() >= 0) {
            return spot.run() == run ? spot.atMm() : Double.NaN;
        }
        return spot.place() == of.from() ? 0 : spot.place() == of.to() ? of.lengthMm() : Double.NaN;
    }
}
