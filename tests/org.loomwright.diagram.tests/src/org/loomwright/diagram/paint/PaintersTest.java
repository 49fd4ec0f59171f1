// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.MapTone;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Veil;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PaintersTest {
    private final Type type = Type.load();

    private static Scene scene() {
        return new SceneBuilder("A & B <\"C\">", 100, 60).group("X1/1", "way & more")
                .rectangle(Fill.solid(Role.ERROR), null, 10, 10, 20, 20)
                .rectangle(Fill.hatched(Role.INK), Stroke.dashed(Role.INK, 1, 2.0, 2.0), 40, 10, 20, 20)
                .disc(Fill.solid(Role.OK), null, 80, 20, 8)
                .text(10, 50, "1 < 2 & 3", 12, true, Mark.Anchor.START, Role.INK).build();
    }

    @Test
    void svgIsWellFormedAndKeepsIdsAndTexts() throws Exception {
        String svg = SvgPainter.paint(scene(), Theme.light(), type);
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertEquals("A & B <\"C\">", document.getElementsByTagName("title").item(0).getTextContent());
        assertEquals("1 < 2 & 3", document.getElementsByTagName("text").item(0).getTextContent());
        Element group = (Element) document.getElementsByTagName("g").item(0);
        assertEquals("X1/1", group.getAttribute("data-element"));
    }

    @Test
    void theSameSceneGivesTheSameBytes() {
        assertEquals(SvgPainter.paint(scene(), Theme.light(), type), SvgPainter.paint(scene(), Theme.light(), Type.load()));
    }

    @Test
    void pixelsHaveTheColourOfTheirRoleInBothThemes() {
        for (Theme theme : new Theme[] {Theme.light(), Theme.dark()}) {
            BufferedImage image = PngPainter.image(scene(), theme, type, 1);
            assertEquals(theme.colour(Role.PAPER), image.getRGB(2, 2) & 0xFFFFFF);
            assertEquals(theme.colour(Role.ERROR), image.getRGB(20, 20) & 0xFFFFFF);
            assertEquals(theme.colour(Role.OK), image.getRGB(80, 20) & 0xFFFFFF);
        }
        assertNotEquals(Theme.light().colour(Role.PAPER), Theme.dark().colour(Role.PAPER));
    }

    @Test
    void theOverlayMapRunsBetweenItsStopsAndHalosLetShowWhatLiesBelow() {
        Theme theme = Theme.light();
        assertEquals(0xF3DF6B, theme.colour(new MapTone(0)));
        assertEquals(0x7D7C78, theme.colour(new MapTone(0.5)));
        assertEquals(0x00224E, theme.colour(new MapTone(7)));
        assertThrows(IllegalArgumentException.class, () -> new MapTone(Double.NaN));
        Scene scene = new SceneBuilder("t", 60, 20).rectangle(Fill.solid(Role.INK), null, 0, 0, 30, 20)
                .rectangle(Fill.solid(new Veil(Role.SELECT, 0.5)), null, 0, 0, 60, 20).build();
        BufferedImage image = PngPainter.image(scene, theme, type, 1);
        assertNotEquals(image.getRGB(10, 10), image.getRGB(50, 10));
        assertTrue(SvgPainter.paint(scene, theme, type).contains("fill-opacity=\"0.5\""));
    }

    @Test
    void patternsLeaveGapsAndPlatesHideLines() {
        Scene scene = new SceneBuilder("t", 100, 60).rectangle(Fill.dotted(Role.INK), null, 0, 0, 45, 60)
                .line(Stroke.solid(Role.ERROR, 3), new Point(50, 26), new Point(100, 26))
                .platedText(60, 30, "alpha", 12, false, Mark.Anchor.START, Role.INK).build();
        BufferedImage image = PngPainter.image(scene, Theme.light(), type, 1);
        int dotted = 0;
        int red = 0;
        for (int x = 0; x < 45; x++) {
            for (int y = 0; y < 60; y++) {
                dotted += (image.getRGB(x, y) & 0xFFFFFF) != Theme.light().colour(Role.PAPER) ? 1 : 0;
            }
        }
        for (int x = 60; x < 80; x++) {
            red += (image.getRGB(x, 26) & 0xFFFFFF) == Theme.light().colour(Role.ERROR) ? 1 : 0;
        }
        assertTrue(dotted > 30 && dotted < 45 * 60 / 3, "dotted: " + dotted);
        assertEquals(0, red);
        String svg = SvgPainter.paint(scene, Theme.light(), type);
        assertTrue(svg.contains("url(#dotted-1)") && svg.contains("<pattern id=\"dotted-1\""));
    }

    @Test
    void twiceTheScaleGivesTwiceThePixels() {
        BufferedImage image = PngPainter.image(scene(), Theme.light(), type, 2);
        assertEquals(200, image.getWidth());
        assertEquals(120, image.getHeight());
    }

    @Test
    void boldTextIsWiderAndAnEmptyOneHasNoWidth() {
        assertTrue(type.widthPx("Water pump", 12, true) > type.widthPx("Water pump", 12, false));
        assertEquals(0, type.widthPx("", 12, false), 1e-9);
    }

    @Test
    void textTooSmallToReadIsRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> new SceneBuilder("t", 10, 10).text(0, 0, "x", 11, false, Mark.Anchor.START, Role.INK));
    }
}
