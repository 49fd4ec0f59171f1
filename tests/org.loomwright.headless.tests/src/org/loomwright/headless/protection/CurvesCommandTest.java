// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;

/** The command {@code loomwright curves}: forms, themes, what cannot be drawn. */
class CurvesCommandTest {
    private static final Path HERON = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet", "heron.vehicle");

    @TempDir
    Path temp;

    private Path drawn(String file, Object... more) {
        Path target = temp.resolve(file);
        Object[] args = new Object[more.length + 6];
        System.arraycopy(new Object[] {"curves", "-a", "spread", "-o", target, HERON}, 0, args, 0, 6);
        System.arraycopy(more, 0, args, 6, more.length);
        CommandRun run = CommandRun.of(args);
        assertEquals(0, run.code(), run.err());
        assertEquals(target.toString(), run.out().strip());
        return target;
    }

    @Test
    void aWayIsDrawnWithItsConductorTheDeviceUpstreamAndVerdicts() throws IOException {
        String svg = Files.readString(drawn("way.svg", "X30:1"));
        assertTrue(svg.startsWith("<?xml") || svg.startsWith("<svg"), svg.substring(0, 60));
        for (String text : new String[] {"-X30:1 (60\u00A0A fuse)", "-F10:1 (200\u00A0A fuse)", "-W205", "fault currents",
            "Short circuit", "Selectivity"}) {
            assertTrue(svg.contains(text), text);
        }
    }

    @Test
    void aLoadIsDrawnWithItsInrush() throws IOException {
        String svg = Files.readString(drawn("load.svg", "M20"));
        assertTrue(svg.contains("inrush of -M20 (Air compressor), 120\u00A0A"), svg);
    }

    @Test
    void aPngHasThePixelsOfItsScale() throws IOException {
        assertEquals(1123, ImageIO.read(drawn("one.png", "W205", "--scale", "1").toFile()).getWidth());
        assertEquals(2246, ImageIO.read(drawn("two.png", "W205").toFile()).getWidth());
    }

    @Test
    void themesDifferAndEachIsTheSameEveryTime() throws IOException {
        byte[] light = Files.readAllBytes(drawn("light.svg", "X30:1"));
        assertArrayEquals(light, Files.readAllBytes(drawn("again.svg", "X30:1", "--theme", "light")));
        assertNotEquals(new String(light), Files.readString(drawn("dark.svg", "X30:1", "--theme", "dark")));
    }

    @Test
    void whatCannotBeDrawnIsRefusedInWordsAndNothingIsWritten() {
        Path target = temp.resolve("none.svg");
        String[][] wrong = {{"X30", "holds several devices; choose one of -X30:1"}, {"W999", "no element W999"},
            {"XE1", "has no protective device"}};
        for (String[] each : wrong) {
            CommandRun run = CommandRun.of("curves", "-a", "spread", "-o", target, HERON, each[0]);
            assertEquals(2, run.code(), each[0]);
            assertTrue(run.err().contains(each[1]), run.err());
        }
        CommandRun form = CommandRun.of("curves", "-o", temp.resolve("x.pdf"), HERON, "F10");
        assertEquals(2, form.code());
        assertTrue(form.err().contains("must end with .svg or .png"), form.err());
        assertEquals(2, CommandRun.of("curves", "-o", temp.resolve("x.png"), "--scale", "0", HERON, "F10").code());
        assertFalse(Files.exists(target));
    }
}
