// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.RunGraph.Route;
import org.loomwright.engine.assembly.RunGraph.Spot;

class FixedPathTest {
    /** 0 -R0- 1 -R1- 2 -R2- 3, and R1 is written from 2 to 1. */
    private final FixedPath path = new FixedPath(List.of(new Plan.Run("R0", 0, 1, 100, -1, -1),
            new Plan.Run("R1", 2, 1, 200, -1, -1), new Plan.Run("R2", 2, 3, 400, -1, -1)));

    @Test
    void addsUpItsRuns() {
        assertEquals(new Route(List.of(0, 1, 2), 700), path.route(Spot.at(0), Spot.at(3), List.of(0, 1, 2)));
        assertEquals(new Route(List.of(1), 200), path.route(Spot.at(1), Spot.at(2), List.of(1)));
    }

    @Test
    void isTurnedRoundWhenGivenFromTheOtherEnd() {
        assertEquals(new Route(List.of(2, 1, 0), 700), path.route(Spot.at(3), Spot.at(0), List.of(0, 1, 2)));
    }

    @Test
    void refusesRunsThatDoNotJoin() {
        assertNull(path.route(Spot.at(0), Spot.at(3), List.of(0, 2)));
    }

    @Test
    void refusesAnotherStartOrEnd() {
        assertNull(path.route(Spot.at(0), Spot.at(3), List.of(0, 1)));
        assertNull(path.route(Spot.at(0), Spot.at(3), List.of(1, 2)));
        assertNull(path.route(Spot.at(0), Spot.at(0), List.of(0)));
    }

    @Test
    void countsOnlyThePartOfARunThatIsUsed() {
        assertEquals(new Route(List.of(0, 1), 230), path.route(Spot.on(0, 70), Spot.at(2), List.of(0, 1)));
        assertEquals(new Route(List.of(0, 1), 80), path.route(Spot.on(0, 70), Spot.on(1, 150), List.of(0, 1)));
        assertEquals(new Route(List.of(0), 70), path.route(Spot.on(0, 70), Spot.at(0), List.of(0)));
        assertEquals(new Route(List.of(0), 20), path.route(Spot.on(0, 70), Spot.on(0, 90), List.of(0)));
    }

    @Test
    void takesItsOwnEndWhereNobodySaysWhereTheCableEnds() {
        assertEquals(new Route(List.of(1, 2), 600), path.route(Spot.NOWHERE, Spot.at(3), List.of(1, 2)));
        assertEquals(new Route(List.of(0), 100), path.route(Spot.NOWHERE, Spot.at(0), List.of(0)));
        assertEquals(new Route(List.of(0, 1), 300), path.route(Spot.NOWHERE, Spot.NOWHERE, List.of(0, 1)));
    }
}
