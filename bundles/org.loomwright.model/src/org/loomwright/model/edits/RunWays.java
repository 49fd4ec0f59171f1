// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/** Shortest ways over the runs of a vehicle (Dijkstra); of equally short ways the one with fewer runs. */
final class RunWays {
    /** Lengths closer than this count as equal, mm. */
    private static final double EQUAL_MM = 1e-6;
    private final Vehicle vehicle;

    RunWays(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** A way so far. */
    private record Way(double lengthMm, List<Run> runs) {
        boolean before(Way other) {
            return other == null || lengthMm < other.lengthMm - EQUAL_MM
                    || lengthMm < other.lengthMm + EQUAL_MM && runs.size() < other.runs.size();
        }

        Way and(Run run, double mm) {
            List<Run> more = new ArrayList<>(runs);
            if (more.isEmpty() || more.get(more.size() - 1) != run) {
                more.add(run);
            }
            return new Way(lengthMm + mm, more);
        }
    }

    /** The runs between two spots in order; empty when they are one spot, null when no runs lead from one to the other. */
    List<Run> shortest(Spot a, Spot b) {
        if (a.run() != null && a.run() == b.run()) {
            return List.of(a.run());
        }
        Map<Place, Way> reached = from(a);
        Way best = null;
        for (Map.Entry<Place, Way> end : from(b, false).entrySet()) {
            Way to = reached.get(end.getKey());
            if (to != null) {
                Way whole = to;
                for (Run run : end.getValue().runs()) {
                    whole = whole.and(run, end.getValue().lengthMm());
                }
                best = whole.before(best) ? whole : best;
            }
        }
        return best == null ? null : Collections.unmodifiableList(best.runs());
    }

    private Map<Place, Way> from(Spot spot) {
        return from(spot, true);
    }

    /** Ways to the places next to a spot, or on to all places. */
    private Map<Place, Way> from(Spot spot, boolean on) {
        Map<Place, Way> open = new LinkedHashMap<>();
        if (spot.place() != null) {
            open.put(spot.place(), new Way(0, List.of()));
        } else if (spot.run() != null && spot.run().getFrom() != null && spot.run().getTo() != null) {
            double at = spot.atMm() == null ? 0 : spot.atMm().doubleValue();
            open.put(spot.run().getFrom(), new Way(at, List.of(spot.run())));
            open.put(spot.run().getTo(), new Way(StrictMath.max(0, RunLengths.mm(spot.run()) - at), List.of(spot.run())));
        }
        if (!on) {
            return open;
        }
        Map<Place, Way> reached = new LinkedHashMap<>(open);
        Set<Place> done = new LinkedHashSet<>();
        while (done.size() < reached.size()) {
            Place next = null;
            for (Map.Entry<Place, Way> each : reached.entrySet()) {
                if (!done.contains(each.getKey()) && (next == null || each.getValue().before(reached.get(next)))) {
                    next = each.getKey();
                }
            }
            done.add(next);
            for (Run run : vehicle.getRuns()) {
                Place other = run.getFrom() == next ? run.getTo() : run.getTo() == next ? run.getFrom() : null;
                double mm = RunLengths.mm(run);
                if (other != null && !Double.isNaN(mm)) {
                    Way way = reached.get(next).and(run, mm);
                    if (way.before(reached.get(other))) {
                        reached.put(other, way);
                    }
                }
            }
        }
        return reached;
    }
}
