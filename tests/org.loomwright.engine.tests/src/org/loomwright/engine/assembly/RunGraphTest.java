// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.engine.assembly.RunGraph.Query;
import org.loomwright.engine.assembly.RunGraph.Route;
import org.loomwright.engine.assembly.RunGraph.Spot;

class RunGraphTest {

    private static Plan.Run run(String id, int from, int to, double lengthMm) {
        return new Plan.Run(id, from, to, lengthMm, -1, -1);
    }

    private static Route way(List<Plan.Run> runs, Spot a, Spot b) {
        return new RunGraph(6, runs).shortest(List.of(new Query(a, b))).get(0);
    }

    @Test
    void ofTwoWaysTheShorterIsTaken() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 500), run("R2", 1, 2, 500), run("R3", 0, 2, 1200));
        assertEquals(new Route(List.of(0, 1), 1000), way(runs, Spot.at(0), Spot.at(2)));
        assertEquals(new Route(List.of(1, 0), 1000), way(runs, Spot.at(2), Spot.at(0)));
    }

    @Test
    void ofEquallyShortWaysTheOneWithFewerRunsIsTaken() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 500), run("R2", 1, 2, 500), run("R3", 0, 2, 1000));
        assertEquals(List.of(2), way(runs, Spot.at(0), Spot.at(2)).runs());
    }

    @Test
    void ofAlikeWaysTheSameIsTakenFromEitherEndAndInAnyOrderOfRuns() {
        List<Plan.Run> runs = new ArrayList<>(List.of(run("R1", 0, 1, 500), run("R2", 1, 3, 500), run("R3", 0, 2, 500),
                run("R4", 2, 3, 500)));
        List<String> there = ids(runs, way(runs, Spot.at(0), Spot.at(3)));
        List<String> back = ids(runs, way(runs, Spot.at(3), Spot.at(0)));
        Collections.reverse(back);
        assertEquals(there, back);
        Collections.reverse(runs);
        assertEquals(there, ids(runs, way(runs, Spot.at(0), Spot.at(3))));
    }

    private static List<String> ids(List<Plan.Run> runs, Route route) {
        return new ArrayList<>(route.runs().stream().map(r -> runs.get(r).id()).toList());
    }

    @Test
    void thereIsNoWayBetweenPartsThatNoRunJoins() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 500), run("R2", 2, 3, 500));
        assertNull(way(runs, Spot.at(0), Spot.at(3)));
        assertNull(way(runs, Spot.on(0, 100), Spot.on(1, 100)));
    }

    @Test
    void whatIsInOnePlaceNeedsNoRun() {
        assertEquals(Route.HERE, way(List.of(), Spot.at(3), Spot.at(3)));
    }

    @Test
    void theEndOfARunIsItsPlace() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 500));
        assertEquals(Route.HERE, way(runs, Spot.on(0, 500), Spot.at(1)));
        assertEquals(Route.HERE, way(runs, Spot.at(0), Spot.on(0, 0)));
    }

    @Test
    void twoSpotsOnOneRunAreJoinedAlongIt() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 500));
        assertEquals(new Route(List.of(0), 300), way(runs, Spot.on(0, 400), Spot.on(0, 100)));
    }

    @Test
    void alongAroundWayIsTakenWhenItIsShorterThanTheRunItself() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 5000), run("R2", 0, 1, 100));
        assertEquals(new Route(List.of(0, 1, 0), 300), way(runs, Spot.on(0, 100), Spot.on(0, 4900)));
    }

    @Test
    void aSpotOnARunIsLeftByItsBetterEnd() {
        List<Plan.Run> runs = List.of(run("R1", 0, 1, 1000), run("R2", 1, 2, 300), run("R3", 0, 2, 900));
        assertEquals(new Route(List.of(0, 1), 700), way(runs, Spot.on(0, 600), Spot.at(2)));
        assertEquals(new Route(List.of(2, 0), 1000), way(runs, Spot.at(2), Spot.on(0, 100)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithTakingEveryDetourInTurn(long seed) {
        // check against the textbook triple loop (Floyd 1962)
        Random random = new Random(seed);
        int places = 12;
        List<Plan.Run> runs = new ArrayList<>();
        double[][] least = new double[places][places];
        for (double[] row : least) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        for (int r = 0; r < 18; r++) {
            int a = random.nextInt(places);
            int b = random.nextInt(places);
            double mm = 1 + random.nextInt(20);
            runs.add(run("R" + r, a, b, mm));
            least[a][b] = least[b][a] = Math.min(least[a][b], mm);
        }
        for (int i = 0; i < places; i++) {
            least[i][i] = 0;
        }
        for (int k = 0; k < places; k++) {
            for (int i = 0; i < places; i++) {
                for (int j = 0; j < places; j++) {
                    least[i][j] = Math.min(least[i][j], least[i][k] + least[k][j]);
                }
            }
        }
        List<Query> all = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            for (int j = 0; j < places; j++) {
                all.add(new Query(Spot.at(i), Spot.at(j)));
            }
        }
        List<Route> routes = new RunGraph(places, runs).shortest(all);
        for (int q = 0; q < all.size(); q++) {
            double mm = least[all.get(q).a().place()][all.get(q).b().place()];
            if (Double.isInfinite(mm)) {
                assertNull(routes.get(q));
            } else {
                assertEquals(mm, routes.get(q).lengthMm());
                assertEquals(mm, routes.get(q).runs().stream().mapToDouble(r -> runs.get(r).lengthMm()).sum());
            }
        }
    }
}
