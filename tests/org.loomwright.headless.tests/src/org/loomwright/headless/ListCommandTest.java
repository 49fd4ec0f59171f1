// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code loomwright bom} and {@code loomwright cables}. */
class ListCommandTest {
    @TempDir
    Path temp;
    private Yard yard;

    @BeforeEach
    void copyYard() {
        yard = new Yard(temp);
    }

    @Test
    void textIsATableWithCautions() {
        CommandRun run = CommandRun.of("bom", yard.vehicle());
        assertEquals(0, run.code());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("Bill of materials  wren, arrangement near"), run.out());
        assertTrue(run.out().matches("(?s).*fuse or breaker +blade-10 +2 +pcs .*"), run.out());
        assertTrue(run.out().contains("Isolate the batteries"), run.out());
        assertTrue(CommandRun.of("cables", yard.vehicle()).out().startsWith("Cable schedule  wren, arrangement near"));
    }

    @Test
    void csvHasOneHeadingAndOneLineARow() {
        List<String> lines = CommandRun.of("cables", "-f", "csv", yard.vehicle()).out().lines().toList();
        assertEquals(13, lines.size());
        assertEquals("cable,from,to,part,sectionMm2,colour,lengthM,path,label,existing,open", lines.get(0));
        assertTrue(lines.get(4).contains(",single,2.5,RD,2.57,R1 R2,"), lines.get(4));
    }

    @Test
    void workbookIsAnArchiveWithOneSheet() throws IOException {
        for (String command : List.of("bom", "cables")) {
            Path file = temp.resolve(command + ".xlsx");
            assertEquals(new CommandRun(0, "", ""), CommandRun.of(command, "-f", "xlsx", "-o", file, yard.vehicle()));
            try (ZipFile book = new ZipFile(file.toFile())) {
                String sheet = new String(book.getInputStream(book.getEntry("xl/worksheets/sheet1.xml")).readAllBytes(),
                        StandardCharsets.UTF_8);
                assertTrue(sheet.contains("<row r=\"12\""), command);
                assertEquals(null, book.getEntry("xl/worksheets/sheet2.xml"));
            }
            assertEquals('P', Files.readAllBytes(file)[0]);
        }
    }

    @Test
    void existingWiringIsLeftOutUnlessAskedFor() {
        yard.edit(yard.vehicle(), "<cables name=\"W4\" part=\"single\"", "<cables name=\"W4\" part=\"single\" existing=\"true\"");
        assertFalse(CommandRun.of("cables", yard.vehicle()).out().contains("-W4 "));
        assertTrue(CommandRun.of("cables", "--existing", yard.vehicle()).out().matches("(?s).*-W4  .*existing.*"));
    }

    @Test
    void arrangementCanBeChosen() {
        assertTrue(CommandRun.of("bom", "-a", "far", yard.vehicle()).out()
                .startsWith("Bill of materials  wren, arrangement far"));
        CommandRun run = CommandRun.of("bom", "-a", "midway", yard.vehicle());
        assertEquals(2, run.code());
        assertEquals(List.of("loomwright: vehicle wren has no arrangement midway; it has near, far"), run.messages());
    }

    @Test
    void severalArrangementsAndNoneAdoptedAsksForOne() {
        yard.edit(yard.vehicle(), " adopted=\"near\"", "");
        CommandRun run = CommandRun.of("cables", yard.vehicle());
        assertEquals(2, run.code());
        assertEquals(List.of("loomwright: vehicle wren has several arrangements and none is adopted;"
                + " choose one of near, far with --arrangement"), run.messages());
    }

    @Test
    void missingFileAndFolder() {
        assertEquals(List.of(temp.resolve("none.vehicle") + ":1:1: the file does not exist; expected an existing file"),
                CommandRun.of("bom", temp.resolve("none.vehicle")).messages());
        assertEquals(List.of(temp + ":1:1: the file is a folder; expected a file"), CommandRun.of("cables", temp).messages());
        assertEquals(2, CommandRun.of("cables", temp).code());
    }
}
