// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.symbol.Badge;

/** The judge itself must see each fault, and must not see one where there is none. */
class SceneCheckTest {
    private static final Type TYPE = Type.load();
    private static final Stroke INK = Stroke.solid(Role.INK, 1.5);

    private static SceneBuilder sheet() {
        return new SceneBuilder("t", 400, 300);
    }

    private static SceneBuilder text(SceneBuilder scene, double x, double y, String text) {
        return scene.text(x, y, text, 12, false, Mark.Anchor.START, Role.INK);
    }

    private static void blames(Scene scene, String... words) {
        List<String> found = SceneCheck.of(scene, TYPE);
        assertEquals(1, found.size(), found.toString());
        for (String word : words) {
            assertTrue(found.get(0).contains(word), found.toString());
        }
    }

    private static SceneBuilder node(SceneBuilder scene, String id, double x, double y) {
        return scene.group(Kind.NODE, id, id).rectangle(Fill.solid(Role.PLATE), INK, x, y, 60, 40);
    }

    @Test
    void aLegibleSceneIsClean() {
        SceneBuilder scene = node(node(sheet(), "X1", 20, 100), "E1", 200, 100);
        text(scene.group(Kind.LABEL, "X1", "X1"), 25, 125, "-X1");
        scene.group(Kind.EDGE, "W1", "W1").line(INK, new Point(80, 120), new Point(200, 120));
        text(scene.group(Kind.LABEL, "W1", "W1"), 110, 112, "-W1");
        scene.group(Kind.BADGE, "W1", null).marks(Badge.ERROR.marks(150, 95));
        assertEquals(List.of(), SceneCheck.of(scene.build(), TYPE));
    }

    @Test
    void textsThatMeetAreNamed() {
        SceneBuilder scene = sheet();
        text(scene.group(Kind.LABEL, "A", null), 50, 50, "alpha");
        text(scene.group(Kind.LABEL, "B", null), 60, 55, "beta");
        blames(scene.build(), "A", "B", "meets");
    }

    @Test
    void textOnALineIsNamedUnlessItHasAPlate() {
        SceneBuilder scene = sheet();
        scene.group(Kind.EDGE, "W1", null).line(INK, new Point(20, 46), new Point(200, 46));
        text(scene.group(Kind.LABEL, "A", null), 50, 50, "alpha");
        blames(scene.build(), "'alpha' of A", "W1");
        SceneBuilder plated = sheet();
        plated.group(Kind.EDGE, "W1", null).line(INK, new Point(20, 46), new Point(200, 46));
        plated.group(Kind.LABEL, "A", null).platedText(50, 50, "alpha", 12, false, Mark.Anchor.START, Role.INK);
        assertEquals(List.of(), SceneCheck.of(plated.build(), TYPE));
    }

    @Test
    void aPlateDoesNotHelpAgainstALineThatIsPaintedLater() {
        SceneBuilder scene = sheet();
        scene.group(Kind.LABEL, "A", null).platedText(50, 50, "alpha", 12, false, Mark.Anchor.START, Role.INK);
        scene.group(Kind.EDGE, "W1", null).line(INK, new Point(20, 46), new Point(200, 46));
        blames(scene.build(), "'alpha' of A", "W1");
    }

    @Test
    void textOnAnOutlineIsNamed() {
        SceneBuilder scene = node(sheet(), "X1", 50, 50);
        text(scene.group(Kind.LABEL, "A", null), 40, 75, "alpha");
        blames(scene.build(), "A", "X1");
        SceneBuilder ring = sheet();
        ring.group(Kind.NODE, "M1", null).disc(null, INK, 100, 100, 20);
        text(ring.group(Kind.LABEL, "A", null), 110, 104, "alpha");
        blames(ring.build(), "A", "M1");
    }

    @Test
    void anEdgeThroughANodeIsNamedOneThatEndsThereIsNot() {
        SceneBuilder scene = node(sheet(), "X1", 100, 100);
        scene.group(Kind.EDGE, "W1", null).line(INK, new Point(20, 120), new Point(300, 120));
        scene.group(Kind.EDGE, "W2", null).line(INK, new Point(20, 110), new Point(100, 110));
        blames(scene.build(), "W1", "through X1");
    }

    @Test
    void whatLeavesTheSheetIsNamed() {
        SceneBuilder scene = sheet();
        text(scene.group(Kind.LABEL, "A", null), 385, 50, "alpha");
        blames(scene.build(), "A", "leaves the sheet");
        SceneBuilder line = sheet();
        line.group(Kind.EDGE, "W1", null).line(INK, new Point(20, 46), new Point(20, 301));
        blames(line.build(), "W1", "leaves the sheet");
    }

    @Test
    void badgesOnEdgesTextsAndBadgesAreNamed() {
        SceneBuilder scene = sheet();
        scene.group(Kind.EDGE, "W1", null).line(INK, new Point(20, 46), new Point(200, 46));
        scene.group(Kind.BADGE, "E1", null).marks(Badge.NOTE.marks(100, 46));
        blames(scene.build(), "E1", "W1");
        SceneBuilder text = sheet();
        text(text.group(Kind.LABEL, "A", null), 50, 50, "alpha");
        text.group(Kind.BADGE, "E1", null).marks(Badge.NOTE.marks(60, 46));
        blames(text.build(), "A", "E1");
        SceneBuilder two = sheet();
        two.group(Kind.BADGE, "E1", null).marks(Badge.NOTE.marks(60, 46));
        two.group(Kind.BADGE, "E2", null).marks(Badge.NOTE.marks(66, 46));
        blames(two.build(), "E1", "E2");
    }

    @Test
    void smallTextIsRefusedBeforeItIsDrawn() {
        org.junit.jupiter.api.Assertions.assertThrows(IllegalArgumentException.class,
                () -> new Mark.Text(new Point(0, 0), "x", 11.9, false, Mark.Anchor.START, Role.INK));
    }
}
