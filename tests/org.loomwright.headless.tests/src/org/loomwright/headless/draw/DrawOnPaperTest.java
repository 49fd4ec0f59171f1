// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;

/** The command {@code loomwright draw} on paper: sizes, scales, title block, several sheets, lost straps. */
class DrawOnPaperTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Path OTTER = FLEET.resolve("otter.vehicle");

    @TempDir
    Path temp;

    private List<Path> drawn(String file, Object... more) {
        Object[] args = Stream.concat(Stream.of("draw", OTTER, "--out", temp.resolve(file), "--date", "2026-05-04"),
                Stream.of(more)).toArray();
        CommandRun run = CommandRun.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out().lines().map(Path::of).toList();
    }

    private String svg(Object... more) throws IOException {
        List<Path> files = drawn("one.svg", more);
        assertEquals(1, files.size(), files.toString());
        return Files.readString(files.get(0));
    }

    @Test
    void thePlanOnPaperTellsItsScaleDateAndFile() throws IOException, NoSuchAlgorithmException {
        String svg = svg("--paper", "A3", "--drawn-by", "R. Example");
        String sum = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(OTTER)));
        for (String text : new String[] {"width=\"420mm\" height=\"297mm\"", ">1:20<", ">2026-05-04<", ">as-found, adopted<",
            ">otter.vehicle, SHA-256 " + sum.substring(0, 12) + "<", ">1 / 1<", ">R. Example<", ">Plan, seen from above<"}) {
            assertTrue(svg.contains(text), text);
        }
        assertTrue(svg.contains("fire"), "the caution");
    }

    @Test
    void aPdfIsTheSameEveryTimeAndAnotherDateGivesAnother() throws IOException {
        byte[] first = Files.readAllBytes(drawn("first.pdf", "--paper", "a3").get(0));
        assertEquals("%PDF-", new String(first, 0, 5, StandardCharsets.US_ASCII));
        assertArrayEquals(first, Files.readAllBytes(drawn("second.pdf", "--paper", "a3").get(0)));
        Path third = temp.resolve("third.pdf");
        assertEquals(0, CommandRun.of("draw", OTTER, "--out", third, "--paper", "a3", "--date", "2026-05-05").code());
        assertFalse(java.util.Arrays.equals(first, Files.readAllBytes(third)));
    }

    @Test
    void withoutADateItIsToday() throws IOException {
        LocalDate before = LocalDate.now();
        Path target = temp.resolve("today.svg");
        assertEquals(0, CommandRun.of("draw", OTTER, "-d", "earth", "--out", target, "--paper", "a2").code());
        String svg = Files.readString(target);
        assertTrue(svg.contains(">" + before + "<") || svg.contains(">" + LocalDate.now() + "<"));
    }

    @Test
    void severalSheetsAreNumberedFiles() throws IOException {
        List<Path> files = drawn("big.svg", "--paper", "a4", "--landscape", "--plot", "1:10");
        assertTrue(files.size() > 1, files.toString());
        for (int i = 0; i < files.size(); i++) {
            assertEquals("big-" + (i + 1) + ".svg", files.get(i).getFileName().toString());
            assertTrue(Files.readString(files.get(i)).contains(">" + (i + 1) + " / " + files.size() + "<"));
        }
        assertFalse(Files.exists(temp.resolve("big.svg")));
    }

    @Test
    void aLostStrapIsToldInTheDrawingAndInTheTitleBlock() throws IOException {
        String svg = svg("-d", "earth", "-c", "full-board", "--lost", "-WE2", "--paper", "a2");
        assertTrue(svg.contains(">Earth return, -WE2 lost<"));
        assertTrue(svg.contains(">With -WE2 lost<"));
        assertTrue(svg.contains(">lost<"));
        CommandRun none = CommandRun.of("draw", OTTER, "-d", "earth", "-c", "full-board", "--lost", "WE99", "--out",
                temp.resolve("no.svg"));
        assertEquals(2, none.code());
        assertTrue(none.err().contains("has no strap WE99; it has WE1, "), none.err());
    }

    @Test
    void whatCannotBeIsRefusedInWordsAndNothingIsWritten() {
        Object[][] wrong = {{"expected a4, a3, a2, a1 or a0", "--paper", "letter"}, {"expected 1:n", "--plot", "20"},
            {"expected 1:n", "--plot", "1:2000"}, {"year-month-day", "--date", "4.5.2026"},
            {"exclude each other", "--landscape", "--portrait"}, {"--plot is for the plan", "-d", "line", "--plot", "1:20"},
            {"add --diagram earth and --case", "--lost", "WE1"}, {"larger scale", "--plot", "1:500"},
            {"smaller scale", "--paper", "a4", "--plot", "1:1"}};
        for (Object[] each : wrong) {
            Object[] args = Stream.concat(Stream.of("draw", OTTER, "--out", temp.resolve("no.pdf")),
                    Stream.of(each).skip(1)).toArray();
            CommandRun run = CommandRun.of(args);
            assertEquals(2, run.code(), each[0] + " " + run.err());
            assertTrue(run.err().contains(each[0].toString()), each[0] + " expected in " + run.err());
            assertFalse(Files.exists(temp.resolve("no.pdf")));
        }
    }
}
