// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.SceneCollisions;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;

class TimeCurrentSceneTest {
    private final Type type = Type.load();

    @Test
    void noTextMeetsAnotherOrLeavesTheSheetEvenWhereFaultCurrentsLieCloseTogether() {
        assertEquals(List.of(), SceneCollisions.of(TimeCurrentScene.of(Charts.crowded(), type), type));
    }

    @Test
    void everyCurveStaysInsideThePlane() {
        Scene scene = TimeCurrentScene.of(Charts.crowded(), type);
        List<Point> points = scene.groups().stream().filter(group -> group.element() != null)
                .flatMap(group -> group.marks().stream()).flatMap(TimeCurrentSceneTest::points).toList();
        assertTrue(points.size() > 20);
        assertTrue(points.stream().allMatch(p -> p.x() >= 108 - 1e-6 && p.x() <= 760 + 1e-6 && p.y() >= 140 - 1e-6
                && p.y() <= 680 + 1e-6), () -> points.toString());
    }

    @Test
    void curvesCarryTheIdOfTheirElement() {
        List<String> elements = TimeCurrentScene.of(Charts.crowded(), type).groups().stream().map(Group::element)
                .filter(element -> element != null).toList();
        assertEquals(List.of("X1/1", "X2/1", "W1"), elements);
    }

    @Test
    void aChartWithoutAnythingToShowIsDrawnEmpty() {
        TimeCurrentChart empty = new TimeCurrentChart("nothing", "", List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of());
        assertEquals(List.of(), SceneCollisions.of(TimeCurrentScene.of(empty, type), type));
    }

    private static Stream<Point> points(Mark mark) {
        return mark instanceof Mark.Line line ? line.points().stream()
                : mark instanceof Mark.Area area ? area.points().stream() : Stream.empty();
    }
}
