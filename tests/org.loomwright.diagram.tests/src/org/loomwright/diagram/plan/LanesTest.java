// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.scene.Point;

class LanesTest {
    private static final List<PlanContent.Run> RUNS = List.of(new PlanContent.Run("R1", 0, 1), new PlanContent.Run("R2", 2, 1));
    private static final List<List<Point>> LINES = List.of(List.of(new Point(0, 0), new Point(100, 0)),
            List.of(new Point(100, 80), new Point(100, 0)));

    private static PlanContent.Cable cable(String id, int start, Integer... path) {
        return new PlanContent.Cable(id, id, List.of(path), List.of(), start, 10, 2.5, false, false, true);
    }

    private static Lanes lanes(PlanContent.Cable... cables) {
        return new Lanes(new PlanContent(Outline.rectangle(0, 0, 1, 1), true, List.of(), List.of(), List.of(), RUNS, List.of(),
                List.of(cables)), LINES, 19);
    }

    @Test
    void aSingleCableLiesInTheMiddleAndTurnsAtThePlace() {
        PlanContent.Cable w1 = cable("W1", 0, 0, 1);
        assertEquals(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 80)), lanes(w1).line(0, w1));
    }

    @Test
    void cablesOfOneRunLieApartAndKeepTheirDistanceBackwards() {
        PlanContent.Cable w1 = cable("W1", 0, 0, 1);
        PlanContent.Cable w2 = cable("W2", 2, 1, 0);
        Lanes lanes = lanes(w1, w2);
        List<Point> first = lanes.line(0, w1);
        List<Point> second = lanes.line(1, w2);
        assertEquals(lanes.spacingPx(0), StrictMath.abs(first.get(0).y() - second.get(second.size() - 1).y()), 1e-9);
        assertEquals(lanes.spacingPx(1), StrictMath.abs(first.get(first.size() - 1).x() - second.get(0).x()), 1e-9);
        for (List<Point> line : List.of(first, second)) {
            for (int i = 1; i < line.size(); i++) {
                assertTrue(line.get(i).x() == line.get(i - 1).x() || line.get(i).y() == line.get(i - 1).y());
            }
        }
    }

    @Test
    void manyCablesStayWithinTheDuct() {
        PlanContent.Cable[] many = new PlanContent.Cable[40];
        for (int i = 0; i < many.length; i++) {
            many[i] = cable("W" + i, 0, 0);
        }
        Lanes lanes = lanes(many);
        for (int i = 0; i < many.length; i++) {
            assertTrue(StrictMath.abs(lanes.line(i, many[i]).get(0).y()) <= 9.5);
        }
    }
}
