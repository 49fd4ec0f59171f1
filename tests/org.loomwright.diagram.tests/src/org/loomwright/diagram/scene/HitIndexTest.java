// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.symbol.Badge;

class HitIndexTest {
    private static final Type TYPE = Type.load();
    private static final Stroke INK = Stroke.solid(Role.INK, 2);
    private static final Viewport WHOLE = Viewport.of(800, 600);

    private static Scene scene(double x) {
        return new SceneBuilder("t", 800, 600)
                .group(Kind.NODE, "U1", "body").rectangle(Fill.solid(Role.BODY), INK, 100, 100, 300, 200)
                .group(Kind.EDGE, "W1", "a").line(INK, new Point(50, 150), new Point(500, 150))
                .group(Kind.EDGE, "W2", "b").line(INK, new Point(50, 156), new Point(500, 156))
                .group(Kind.NODE, "M1", "motor").rectangle(Fill.solid(Role.PLATE), INK, x, 200, 40, 40)
                .group(Kind.PORT, "XE1", "stud").disc(null, INK, 400, 250, 5)
                .group(Kind.LABEL, "M1", "label").text(x, 262, "Winch motor", 12, false, Mark.Anchor.START, Role.INK)
                .group(Kind.BADGE, "W1", "finding").marks(Badge.ERROR.marks(560, 130)).build();
    }

    private static String at(double x, double y, double tolerance, Viewport viewport) {
        HitIndex.Hit hit = HitIndex.of(scene(200), TYPE).at(new Point(x, y), tolerance, viewport);
        return hit == null ? null : hit.element();
    }

    @Test
    void theNearestEdgeWithinTheToleranceIsFound() {
        assertEquals("W1", at(450, 152, 5, WHOLE));
        assertEquals("W2", at(450, 154.5, 5, WHOLE));
        assertNull(at(450, 165, 5, WHOLE));
    }

    @Test
    void theToleranceIsInPixelsOfTheScreen() {
        assertEquals("W2", at(450, 165, 5, WHOLE.at(0.5)));
        assertNull(at(450, 160, 5, WHOLE.at(4)));
    }

    @Test
    void theTopmostNodeAndWhatLiesOnABodyWin() {
        assertEquals("M1", at(220, 220, 5, WHOLE));
        assertEquals("U1", at(300, 220, 5, WHOLE));
        assertEquals("W1", at(300, 149, 5, WHOLE));
        assertEquals("XE1", at(404, 250, 5, WHOLE));
        assertEquals("M1", at(205, 259, 5, WHOLE));
        assertEquals("W1", at(560, 130, 5, WHOLE));
    }

    @Test
    void aRectangleTakesWhatLiesWhollyInIt() {
        HitIndex index = HitIndex.of(scene(200), TYPE);
        assertEquals(Set.of("M1"), index.inside(new Bounds(190, 190, 260, 260)));
        assertEquals(Set.of("M1", "U1"), index.inside(new Bounds(90, 90, 420, 310)));
        assertTrue(index.touched(new Bounds(90, 140, 120, 152)).containsAll(Set.of("W1", "U1")));
        assertEquals(Set.of(), index.inside(new Bounds(600, 400, 700, 500)));
    }

    @Test
    void everyPointNearAnyEdgeOfALargeSceneIsFoundAsByLookingAtAll() {
        SceneBuilder builder = new SceneBuilder("t", 3000, 3000);
        for (int i = 0; i < 400; i++) {
            double x = 37 * (i % 77) + 20;
            double y = 7 * i + 20;
            builder.group(Kind.EDGE, "W" + i, null).line(INK, new Point(x, y), new Point(x + 130, y), new Point(x + 130, y + 90));
        }
        Scene scene = builder.build();
        HitIndex index = HitIndex.of(scene, TYPE);
        for (int k = 0; k < 500; k++) {
            Point at = new Point((k * 613) % 2990, (k * 379) % 2990);
            double least = Double.POSITIVE_INFINITY;
            for (Group group : scene.groups()) {
                least = StrictMath.min(least, Segments.distance(((Mark.Line) group.marks().get(0)).points(), at) - 1);
            }
            HitIndex.Hit hit = index.at(at, 5, WHOLE);
            assertEquals(least <= 5, hit != null, at + " " + least);
        }
    }

    @Test
    void aSearchFindsDesignationsFirst() {
        assertEquals(List.of("M1"), SceneSearch.find(scene(200), "-m1"));
        assertEquals(List.of("M1"), SceneSearch.find(scene(200), "winch"));
        assertEquals(List.of("W1", "W2"), SceneSearch.find(scene(200), "w").subList(0, 2));
        assertEquals(List.of(), SceneSearch.find(scene(200), " "));
    }

    @Test
    void aDifferenceNamesWhatChangedAndWhere() {
        SceneDiff diff = SceneDiff.between(scene(200), scene(220));
        assertEquals(Set.of("M1"), diff.elements());
        assertTrue(!diff.sheet() && !diff.none());
        assertTrue(diff.damaged(TYPE).holds(new Bounds(200, 200, 260, 240)));
        assertTrue(SceneDiff.between(scene(200), scene(200)).none());
        assertEquals(Set.of(), SceneDiff.between(scene(200), scene(200)).elements());
    }

    @Test
    void theAirBetweenTheLinesOfASymbolBelongsToIt() {
        SceneBuilder builder = new SceneBuilder("t", 600, 400);
        Stroke pen = Stroke.solid(Role.INK, 2);
        builder.group(Kind.NODE, "G1", null).line(pen, new Point(100, 100), new Point(140, 100))
                .line(pen, new Point(100, 130), new Point(140, 130));
        builder.group(Kind.NODE, "U1", null).line(pen, new Point(50, 50), new Point(250, 50))
                .line(pen, new Point(50, 250), new Point(250, 250));
        builder.group(Kind.EDGE, "W1", null).line(pen, new Point(120, 0), new Point(120, 112));
        HitIndex hits = HitIndex.of(builder.build(), TYPE);
        Viewport whole = Viewport.of(600, 400);
        assertEquals("G1", hits.at(new Point(130, 115), 5, whole).element(), "the smaller of two");
        assertEquals("W1", hits.at(new Point(121, 108), 5, whole).element(), "lines come first");
        assertEquals("U1", hits.at(new Point(200, 180), 5, whole).element(), "also far from its lines");
        assertNull(hits.at(new Point(300, 180), 5, whole));
    }
}
