// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

class RunRouterTest {
    private static final Bounds FIELD = new Bounds(0, 0, 1000, 600);

    private static RunRouter router() {
        return new RunRouter(24, FIELD, FIELD);
    }

    private static PlanContent.Run run(int from, int to) {
        return new PlanContent.Run("R" + from + "-" + to, from, to);
    }

    @Test
    void keepsToRightAnglesAndEndsAtThePlaces() {
        Random random = new Random(7);
        List<Point> places = new ArrayList<>();
        List<PlanContent.Run> runs = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            places.add(new Point(50 + 900 * random.nextDouble(), 50 + 500 * random.nextDouble()));
            if (i > 0) {
                runs.add(run(i, random.nextInt(i)));
            }
        }
        List<List<Point>> lines = router().route(places, runs, Map.of());
        for (int r = 0; r < runs.size(); r++) {
            List<Point> line = lines.get(r);
            assertEquals(places.get(runs.get(r).from()), line.get(0));
            assertEquals(places.get(runs.get(r).to()), line.get(line.size() - 1));
            for (int i = 1; i < line.size(); i++) {
                Point a = line.get(i - 1);
                Point b = line.get(i);
                assertTrue(a.x() == b.x() || a.y() == b.y(), runs.get(r).id());
            }
        }
    }

    @Test
    void laysTwoRunsBetweenTheSamePlacesSideBySide() {
        List<Point> places = List.of(new Point(100, 300), new Point(800, 300));
        List<List<Point>> lines = router().route(places, List.of(run(0, 1), run(0, 1)), Map.of());
        assertEquals(2, lines.get(0).size());
        Bounds first = RunRouter.duct(lines.get(0).get(0), lines.get(0).get(1), 24);
        List<Point> second = lines.get(1);
        assertEquals(4, second.size());
        assertFalse(first.meets(RunRouter.duct(second.get(1), second.get(2), 24)));
    }

    @Test
    void keepsBothEndsOfARunThatGoesStraightUp() {
        List<Point> line = router().route(List.of(new Point(100, 100), new Point(100, 100)), List.of(run(0, 1)), Map.of()).get(0);
        assertEquals(2, line.size());
    }
}
