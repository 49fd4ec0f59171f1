// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The ways along which cables can lie. Of equally short ways the one with fewer runs is taken, and of those always the same
 * one, whichever end the search starts from and in whatever order the runs are given.
 */
final class RunGraph {
    private final List<Plan.Run> runs;
    private final ShortestWays search;

    RunGraph(int places, List<Plan.Run> runs) {
        this.runs = runs;
        search = new ShortestWays(places, runs);
    }

    /** Where something is: at a place, or on a run so many mm from its first place, or nobody says. */
    record Spot(int place, int run, double atMm) {
        static final Spot NOWHERE = new Spot(-1, -1, 0);

        static Spot at(int place) {
            return new Spot(place, -1, 0);
        }

        static Spot on(int run, double atMm) {
            return new Spot(-1, run, atMm);
        }

        boolean known() {
            return place >= 0 || run >= 0;
        }
    }

    /** A way wanted between two known spots. */
    record Query(Spot a, Spot b) {
    }

    /** A way from a to b: runs in order and its length along them, mm. */
    record Route(List<Integer> runs, double lengthMm) {
        static final Route HERE = new Route(List.of(), 0);

        Route {
            runs = List.copyOf(runs);
        }
    }

    /** A part of one run, mm. */
    record Piece(int run, double lengthMm) {
    }

    /** The route over pieces in order. */
    static Route route(List<Piece> pieces) {
        double lengthMm = 0;
        List<Integer> along = new ArrayList<>();
        for (Piece piece : pieces) {
            lengthMm += piece.lengthMm();
            along.add(piece.run());
        }
        return new Route(along, lengthMm);
    }

    /** A spot at the end of a run is that end's place. */
    Spot settled(Spot spot) {
        if (spot.run() < 0) {
            return spot;
        }
        Plan.Run run = runs.get(spot.run());
        return spot.atMm() <= 0 ? Spot.at(run.from()) : spot.atMm() >= run.lengthMm() ? Spot.at(run.to()) : spot;
    }

    /**
     * The shortest ways; null where no run leads from one to the other. Queries are answered together, one search for all
     * that share
     * an end.
     */
    List<Route> shortest(List<Query> queries) {
        Map<Spot, Integer> uses = new LinkedHashMap<>();
        List<Query> settled = new ArrayList<>();
        for (Query query : queries) {
            Query q = new Query(settled(query.a()), settled(query.b()));
            settled.add(q);
            uses.merge(q.a(), 1, Integer::sum);
            uses.merge(q.b(), 1, Integer::sum);
        }
        Map<Spot, List<Integer>> byRoot = new LinkedHashMap<>();
        for (int i = 0; i < settled.size(); i++) {
            Query q = settled.get(i);
            Spot root = uses.get(q.a()) >= uses.get(q.b()) ? q.a() : q.b();
            byRoot.computeIfAbsent(root, spot -> new ArrayList<>()).add(i);
        }
        List<Route> routes = new ArrayList<>(Collections.nCopies(queries.size(), null));
        byRoot.forEach((root, members) -> answer(root, members, settled, routes));
        return routes;
    }

    private void answer(Spot root, List<Integer> members, List<Query> queries, List<Route> routes) {
        search.from(root);
        for (int i : members) {
            Query q = queries.get(i);
            boolean forward = root.equals(q.a());
            Spot target = forward ? q.b() : q.a();
            if (root.equals(target)) {
                routes.set(i, Route.HERE);
                continue;
            }
            List<Piece> pieces = search.to(target);
            if (pieces != null) {
                if (!forward) {
                    Collections.reverse(pieces);
                }
                routes.set(i, route(pieces));
            }
        }
    }
}
