// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;
import org.loomwright.headless.Schemas;

/** The command {@code loomwright import} on a vehicle of the fleet. */
class ImportCommandTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final String HEADS = "Verbraucher;Leistung [W];Strom (A);Ort;Anzahl;x (cm);y (cm);z (cm);Bemerkung\n";
    @TempDir
    Path temp;
    private Path vehicle;

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.walk(FLEET)) {
            for (Path each : files.toList()) {
                Path to = temp.resolve(FLEET.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(each, to);
                }
            }
        }
        vehicle = temp.resolve("otter.vehicle");
    }

    private Path list(String rows) throws IOException {
        return Files.writeString(temp.resolve("list.csv"), HEADS + rows);
    }

    private JsonNode json(Path list, int code, Object... more) {
        CommandRun run = CommandRun.of(Stream.concat(Stream.of("import", vehicle, "--list", list, "--format", "json"),
                Stream.of(more)).toArray());
        assertEquals(code, run.code(), run.err());
        return Schemas.valid("import", run.out());
    }

    private List<String> added(String before) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(vehicle));
        before.lines().forEach(lines::remove);
        return lines.stream().map(String::strip).toList();
    }

    @Test
    void rowsBecomeLoadsWithPowerPlacesAndNotes() throws IOException {
        String before = Files.readString(vehicle);
        Path list = list("Leseleuchte;6,5;;Koje;2;60;-40;150;am Bett\nHeizung;;2,5;Koje;;;;;\n"
                + "Work light, LED, 50 W;;;rack-left;;;;;\n");
        JsonNode result = json(list, 0, "--apply");
        assertEquals(4, result.get("loads").asInt());
        assertTrue(result.get("written").asBoolean());
        assertEquals(List.of("<places name=\"P2\" label=\"Koje\" xMm=\"600\" yMm=\"-400\" zMm=\"1500\"/>",
                "<devices name=\"A1\" label=\"Leseleuchte 1\" note=\"am Bett\" part=\"any-load-12\" place=\"P2\">",
                "<settings element=\"D\" quantity=\"watts\" value=\"6.5\"/>", "</devices>",
                "<devices name=\"A2\" label=\"Leseleuchte 2\" note=\"am Bett\" part=\"any-load-12\" place=\"P2\">",
                "<settings element=\"D\" quantity=\"watts\" value=\"6.5\"/>", "</devices>",
                "<devices name=\"A3\" label=\"Heizung\" part=\"any-load-12\" place=\"P2\">",
                "<settings element=\"D\" quantity=\"watts\" value=\"30\"/>", "</devices>",
                "<devices name=\"E3\" label=\"Work light, LED, 50 W\" part=\"work-light-led-50\" place=\"rack-left\"/>")
                .stream().filter(line -> !"</devices>".equals(line)).toList(),
                added(before).stream().filter(line -> !"</devices>".equals(line)).toList());
    }

    @Test
    void importingTwiceChangesNothingMore() throws IOException {
        Path list = list("Heizung;30;;bed-left;;;;;\nHeizung;30;;dash;;;;;\n");
        json(list, 0, "--apply");
        String once = Files.readString(vehicle);
        JsonNode again = json(list, 1, "--apply");
        assertEquals(0, again.get("loads").asInt());
        assertFalse(again.get("written").asBoolean());
        assertEquals("is in the vehicle already", again.get("rows").get(0).get("told").asText());
        assertEquals(once, Files.readString(vehicle));
    }

    @Test
    void withoutApplyNothingIsWritten() throws IOException {
        String before = Files.readString(vehicle);
        CommandRun run = CommandRun.of("import", vehicle, "--list", list("Heizung;30;;bed-left;;;;;\n"));
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("1 load would be made"), run.out());
        assertEquals(before, Files.readString(vehicle));
    }

    @Test
    void eachRowThatMakesNoLoadSaysWhy() throws IOException {
        Path list = list("Pumpe;12 Ah;;dash;;;;;\nRadio;;;dash;;;;;\n;5;;dash;;;;;\nFan;5;;dash;0;;;;\nLamp;5;;nowhere;;;;;\n");
        JsonNode rows = json(list, 1).get("rows");
        assertEquals("power: \"12 Ah\" has the unit Ah, where W belongs", rows.get(0).get("told").asText());
        assertTrue(rows.get(1).get("told").asText().startsWith("neither a part"), rows.get(1).toString());
        assertEquals("name: is missing", rows.get(2).get("told").asText());
        assertTrue(rows.get(3).get("told").asText().contains("whole number from 1 to 99"), rows.get(3).toString());
        assertEquals(1, rows.get(4).get("count").asInt());
        assertTrue(rows.get(4).get("told").asText().contains("no place nowhere"), rows.get(4).toString());
    }

    @Test
    void aPartThatTakesAnotherPowerIsTold() throws IOException {
        JsonNode row = json(list("Work light, LED, 50 W;60;;dash;;;;;\n"), 1).get("rows").get(0);
        assertEquals("the part takes 50 W, not 60 W as in the list", row.get("told").asText());
        assertEquals("work-light-led-50", row.get("part").asText());
    }

    @Test
    void whatTheVehicleBecomesCanStillBeChecked() throws IOException {
        json(list("Leseleuchte;6;;Koje;2;60;-40;150;\n"), 0, "--apply");
        CommandRun run = CommandRun.of("check", vehicle);
        assertTrue(run.code() < 2, run.err());
        assertTrue(run.out().contains("A1"), "the new load is fed by nothing, which the check has to find");
    }

    @Test
    void columnsCanBeNamedAndWrongNamesAreRefused() throws IOException {
        Path list = Files.writeString(temp.resolve("own.csv"), "what;draws\nlamp;12\n");
        assertEquals(2, CommandRun.of("import", vehicle, "--list", list).code());
        assertEquals(1, json(list, 0, "--column", "name=what", "--column", "power=draws").get("loads").asInt());
        CommandRun wrong = CommandRun.of("import", vehicle, "--list", list, "--column", "name=whta");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("there are what, draws"), wrong.err());
        assertTrue(CommandRun.of("import", vehicle, "--list", list, "--column", "colour=what").err().contains("no column colour"));
    }

    @Test
    void aListThatCannotBeReadIsToldWithItsFile() {
        CommandRun run = CommandRun.of("import", vehicle, "--list", temp.resolve("missing.xlsx"));
        assertEquals(2, run.code());
        assertTrue(run.err().contains("missing.xlsx: the list cannot be read"), run.err());
    }
}
