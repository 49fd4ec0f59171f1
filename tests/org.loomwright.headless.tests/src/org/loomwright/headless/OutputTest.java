// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Output files are written whole or not at all. */
class OutputTest {
    @TempDir
    Path temp;
    private Yard yard;
    private Path folder;

    @BeforeEach
    void copyYard() throws IOException {
        yard = new Yard(temp);
        folder = Files.createDirectories(temp.resolve("results"));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private void assertRefused(String message, Object... args) {
        CommandRun run = CommandRun.of(args);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(List.of("loomwright: " + message), run.messages());
    }

    @Test
    void fileHoldsWhatWouldBePrinted() throws IOException {
        for (String form : List.of("text", "json")) {
            Path file = folder.resolve("report." + form);
            CommandRun run = CommandRun.of("check", "-f", form, "-o", file, yard.vehicle());
            assertEquals(0, run.code());
            assertEquals("", run.out() + run.err());
            assertEquals(CommandRun.of("check", "-f", form, yard.vehicle()).out(), Files.readString(file));
        }
        for (String command : List.of("bom", "cables")) {
            for (String form : List.of("text", "csv", "json")) {
                Path file = folder.resolve(command + "." + form);
                assertEquals(new CommandRun(0, "", ""), CommandRun.of(command, "-f", form, "-o", file, yard.vehicle()));
                assertEquals(CommandRun.of(command, "-f", form, yard.vehicle()).out(), Files.readString(file));
            }
        }
        assertEquals(8, files().size(), files().toString());
    }

    @Test
    void existingFileIsReplaced() throws IOException {
        Path file = Files.writeString(folder.resolve("report.txt"), "old and much longer\n".repeat(10_000));
        CommandRun.of("check", "-o", file, yard.vehicle());
        assertEquals(CommandRun.of("check", yard.vehicle()).out(), Files.readString(file));
        assertEquals(List.of("report.txt"), files());
    }

    @Test
    void resultIsReadableAsOtherNewFilesAre() throws IOException {
        Path plain = Files.writeString(folder.resolve("plain"), "");
        Path file = folder.resolve("report.txt");
        CommandRun.of("check", "-o", file, yard.vehicle());
        assertEquals(PosixFilePermissions.toString(Files.getPosixFilePermissions(plain)),
                PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void findingsAreWrittenToo() throws IOException {
        yard.edit(yard.vehicle(), "sectionMm2=\"16\" lengthMm=\"150\"", "sectionMm2=\"16\" lengthMm=\"1500\"");
        Path file = folder.resolve("report.txt");
        assertEquals(new CommandRun(1, "", ""), CommandRun.of("check", "-o", file, yard.vehicle()));
        assertTrue(Files.readString(file).contains("first-device-distance"));
    }

    @Test
    void badInputLeavesAnOldFileAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("report.txt"), "old");
        yard.write("wren.vehicle", "");
        assertEquals(2, CommandRun.of("check", "-o", file, yard.vehicle()).code());
        assertEquals(2, CommandRun.of("bom", "-o", file, yard.vehicle()).code());
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("report.txt"), files());
    }

    @Test
    void folderThatIsNotThere() {
        Path file = folder.resolve("none").resolve("report.txt");
        for (String command : List.of("check", "bom", "cables")) {
            assertRefused("cannot write " + file + ": there is no folder " + file.getParent(), command, "-o", file,
                    yard.vehicle());
        }
    }

    @Test
    void folderInPlaceOfTheFile() throws IOException {
        assertRefused("cannot write " + folder + ": it is a folder", "check", "-o", folder, yard.vehicle());
        assertEquals(List.of(), files());
    }

    @Test
    void fileInPlaceOfTheFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("plain"), "").resolve("report.txt");
        assertRefused("cannot write " + file + ": there is no folder " + file.getParent(), "check", "-o", file, yard.vehicle());
    }

    /** Root may write everywhere; then a folder of the system that takes no files stands in for one without permission. */
    @Test
    void folderWithoutPermission() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-x------")));
        Path file = (Files.isWritable(closed) ? Path.of("/proc") : closed).resolve("loomwright-report.txt");
        CommandRun run = CommandRun.of("check", "-o", file, yard.vehicle());
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(1, run.messages().size(), run.err());
        assertTrue(run.err().startsWith("loomwright: cannot write " + file + ": "), run.err());
    }

    @Test
    void nothingIsLeftOfAWriteThatFails() throws IOException {
        Path file = Files.writeString(folder.resolve("report.txt"), "old");
        OutputFile output = new OutputFile(file);
        BadInputException refused = assertThrows(BadInputException.class, () -> output.write(out -> {
            out.write("half".getBytes(StandardCharsets.UTF_8));
            throw new IOException("No space left on device");
        }));
        assertEquals("cannot write " + file + ": No space left on device", refused.getMessage());
        assertThrows(IllegalStateException.class, () -> output.write(out -> {
            out.write("half".getBytes(StandardCharsets.UTF_8));
            throw new IllegalStateException("broken");
        }));
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("report.txt"), files());
    }

    @Test
    void workbookNeedsAFile() {
        assertRefused("a workbook cannot go to standard output; name a file with --output", "bom", "-f", "xlsx", yard.vehicle());
    }
}
