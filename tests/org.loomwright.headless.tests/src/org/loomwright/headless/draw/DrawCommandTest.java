// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;

/** The command {@code loomwright draw}: forms, views, overlays, what cannot be drawn. */
class DrawCommandTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Path OTTER = FLEET.resolve("otter.vehicle");

    @TempDir
    Path temp;

    private Path drawn(String file, Object... more) {
        Path target = temp.resolve(file);
        Object[] args = Stream.concat(Stream.of("draw", OTTER, "--out", target), Stream.of(more)).toArray();
        CommandRun run = CommandRun.of(args);
        assertEquals(0, run.code(), run.err());
        assertEquals(target.toString(), run.out().strip());
        return target;
    }

    @Test
    void thePlanShowsDevicesCablesRunsAndFindings() throws IOException {
        String svg = Files.readString(drawn("plan.svg"));
        for (String text : new String[] {"data-element=\"G1\"", "data-element=\"as-found/W132\"", "data-element=\"R12\"",
            ">FRONT<", ">4080<", "ambient-class"}) {
            assertTrue(svg.contains(text), text);
        }
    }

    @Test
    void theSideShowsTheHeightInsteadOfTheWidth() throws IOException {
        assertTrue(Files.readString(drawn("above.svg", "--view", "above")).contains(">1720<"));
        assertFalse(Files.readString(drawn("side.svg", "--view", "side")).contains(">1720<"));
    }

    @Test
    void overlaysCarryTheirLegendWithUnits() throws IOException {
        String[][] overlays = {{"voltage-drop", "voltage drop of the conductor", " mV"}, {"temperature",
            "temperature of the conductor", " \u00B0C"}, {"fuse-load", "load of the fuse", " %"}, {"fill", "duct filled", " %"},
            {"potential", "potential of the structure", " mV"}};
        for (String[] each : overlays) {
            String svg = Files.readString(drawn(each[0] + ".svg", "--overlay", each[0]));
            assertTrue(svg.contains(each[1]), each[0]);
            assertTrue(svg.contains(each[2] + "<"), each[0]);
        }
    }

    @Test
    void aCaseLeavesOutTheFindingsOfOthers() throws IOException {
        String all = Files.readString(drawn("all.svg"));
        String one = Files.readString(drawn("one.svg", "--case", "night"));
        assertTrue(one.contains("case night"));
        assertNotEquals(all, one);
    }

    @Test
    void theEarthReturnIsDrawnToo() throws IOException {
        String svg = Files.readString(drawn("earth.svg", "--diagram", "earth", "--case", "night"));
        assertTrue(svg.contains("data-element=\"WE1\""), svg);
    }

    @Test
    void aPngHasThePixelsOfItsScaleAndTheGroundOfItsTheme() throws IOException {
        BufferedImage light = ImageIO.read(drawn("light.png").toFile());
        BufferedImage dark = ImageIO.read(drawn("dark.png", "--theme", "dark", "--scale", "0.5").toFile());
        assertEquals(light.getWidth(), 2 * dark.getWidth());
        assertEquals(0xFDFCFA, light.getRGB(5, 5) & 0xFFFFFF);
        assertEquals(0x14181D, dark.getRGB(5, 5) & 0xFFFFFF);
    }

    @Test
    void theSameDrawingComesOutEveryTime() throws IOException {
        byte[] first = Files.readAllBytes(drawn("first.svg", "--overlay", "temperature"));
        assertArrayEquals(first, Files.readAllBytes(drawn("second.svg", "--overlay", "temperature")));
    }

    @Test
    void whatCannotBeDrawnIsRefusedInWordsAndNothingIsWritten() throws IOException {
        Object[][] wrong = {{"--case", "nowhere", "has no case nowhere; it has "},
            {"--arrangement", "none", "has no arrangement none; it has "}, {"--overlay", "noise", "expected one of voltage-drop"},
            {"--diagram", "pie", "'pie' is none"}, {"--view", "below", "expected above or side"},
            {"--scale", "0", "--scale must be above 0"}};
        for (Object[] each : wrong) {
            CommandRun run = CommandRun.of("draw", OTTER, "--out", temp.resolve("no.svg"), each[0], each[1]);
            assertEquals(2, run.code(), each[0] + " " + run.err());
            assertTrue(run.err().contains(each[2].toString()), run.err());
        }
        assertEquals(2, CommandRun.of("draw", OTTER, "--out", temp.resolve("no.gif")).code());
        assertEquals(2, CommandRun.of("draw", temp.resolve("absent.vehicle"), "--out", temp.resolve("no.svg")).code());
        Path broken = Files.writeString(temp.resolve("broken.vehicle"), "<vehicle");
        assertEquals(2, CommandRun.of("draw", broken, "--out", temp.resolve("no.svg")).code());
        assertFalse(Files.exists(temp.resolve("no.svg")));
        assertFalse(Files.exists(temp.resolve("no.gif")));
    }
}
