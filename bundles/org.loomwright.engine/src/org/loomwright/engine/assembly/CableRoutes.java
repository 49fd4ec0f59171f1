// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.RunGraph.Query;
import org.loomwright.engine.assembly.RunGraph.Route;
import org.loomwright.engine.assembly.RunGraph.Spot;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Run;

/**
 * Finds the way of each cable: the path that somebody fixed, else the shortest. A cable whose cores end in several spots is as
 * long as the longest of its cores needs. All cables are looked for together.
 */
final class CableRoutes {
    private final StructureAssembler structure;
    private final Problems problems;
    private final RunGraph graph;
    private final FixedPath fixed;
    private final List<Query> queries = new ArrayList<>();
    private List<Route> answers = List.of();

    CableRoutes(StructureAssembler structure, Problems problems) {
        this.structure = structure;
        this.problems = problems;
        graph = new RunGraph(structure.places().size(), structure.runs());
        fixed = new FixedPath(structure.runs());
    }

    /**
     * A route wanted.
     *
     * @param known   route along a fixed path, or null
     * @param queries indexes of the queries whose longest answer counts
     * @param why     why there is none, when that is known already
     */
    record Wanted(String cable, Route known, List<Integer> queries, String why) {
    }

    /**
     * Asks for the route of a cable.
     *
     * @param ends spots between which its cores lead
     * @param here one of its cores stays in one place
     */
    Wanted wanted(Cable cable, String id, Set<Query> ends, boolean here) {
        if (!cable.getPath().isEmpty()) {
            return along(cable, id, ends);
        }
        List<Integer> asked = new ArrayList<>();
        for (Query ab : ends) {
            if (!ab.a().known() || !ab.b().known()) {
                return new Wanted(id, null, List.of(), "one end of the cable has no place");
            }
            asked.add(queries.size());
            queries.add(ab);
        }
        return new Wanted(id, here ? Route.HERE : null, asked, null);
    }

    /** Looks for all that was asked. */
    void answer() {
        answers = graph.shortest(queries);
    }

    /** The route, or null when there is none. */
    Route of(Wanted wanted) {
        Route longest = wanted.known();
        for (int query : wanted.queries()) {
            Route route = answers.get(query);
            if (route == null) {
                return null;
            }
            longest = longest == null || route.lengthMm() > longest.lengthMm() ? route : longest;
        }
        return longest;
    }

    /** Tells why a cable has no length. */
    void tellWhy(Wanted wanted) {
        String why = wanted.why() != null ? wanted.why() : "no runs lead from one end of the cable to the other";
        problems.add(wanted.cable(), why + "; it is left out for want of a length");
    }

    private Wanted along(Cable cable, String id, Set<Query> ends) {
        List<Integer> path = new ArrayList<>();
        for (Run run : cable.getPath()) {
            int at = structure.indexOf(run);
            if (at < 0) {
                return new Wanted(id, null, List.of(), "its path holds a run without length or of another vehicle");
            }
            path.add(at);
        }
        Set<Query> joined = ends.isEmpty() ? Set.of(new Query(Spot.NOWHERE, Spot.NOWHERE)) : ends;
        for (Query ab : joined) {
            Route route = fixed.route(graph.settled(ab.a()), graph.settled(ab.b()), path);
            if (route != null) {
                return new Wanted(id, route, List.of(), null);
            }
        }
        String names = String.join(" ", path.stream().map(run -> structure.runs().get(run).id()).toList());
        return new Wanted(id, null, List.of(), "its path " + names + " does not lead from one end to the other; expected"
                + " runs that join and that start and end where the cable does");
    }
}
