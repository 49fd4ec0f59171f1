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
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
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
