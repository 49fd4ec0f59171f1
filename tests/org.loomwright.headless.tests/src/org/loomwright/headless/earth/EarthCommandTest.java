// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Schemas;
import org.loomwright.headless.Yard;

/** The command {@code loomwright earth}: exit codes, text, JSON, explanations, output files. */
class EarthCommandTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Path OTTER = FLEET.resolve("otter.vehicle");

    @TempDir
    Path temp;

    private static List<String> texts(JsonNode array, String field) {
        return StreamSupport.stream(array.spliterator(), false).map(node -> node.get(field).asText()).toList();
    }

    @Test
    void vehicleWithoutStructureReturnIsClean() {
        CommandRun run = CommandRun.of("earth", new Yard(temp).vehicle());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Nothing found at or above severity warning."), run.out());
        assertTrue(run.out().contains("-E1 (Work light)"), run.out());
        assertTrue(run.out().contains("own only"), run.out());
    }

    @Test
    void onlyStrapOfTheEngineIsRankedFirstWithWhatAPersonNotices() {
        CommandRun run = CommandRun.of("earth", "-a", "as-found", OTTER);
        assertEquals(1, run.code(), run.err());
        assertTrue(run.out().contains("  warning   -WE1  bond-loss"), run.out());
        String flat = run.out().replaceAll("\\s+", " ");
        assertTrue(flat.contains("1 -WE1 leaves the current no way"), flat);
        assertTrue(flat.contains("While cranking, the starter -M1 (Starter) does not turn"), flat);
        assertTrue(flat.contains("Fit a second strap of 50 mm2 between engine and frame"), flat);
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 150), run.out());
    }

    @Test
    void thresholdDecidesWhatIsReportedAndTheExitCode() {
        assertEquals(0, CommandRun.of("earth", "-s", "error", "-a", "as-found", OTTER).code());
        String notes = CommandRun.of("earth", "-s", "note", "-a", "as-found", OTTER).out();
        assertTrue(notes.contains("  note      -WE4  bond-loss"), notes);
    }

    @Test
    void jsonOfTheFleetKeepsToTheSchema() {
        for (String vehicle : List.of("heron", "otter", "beaver")) {
            CommandRun run = CommandRun.of("earth", "-f", "json", "-a", "all", "-s", "note", "-e", "WE1",
                    FLEET.resolve(vehicle + ".vehicle"));
            JsonNode document = Schemas.valid("earth", run.out());
            for (JsonNode arrangement : document.get("vehicles")) {
                assertEquals("WE1", arrangement.get("losses").get(0).get("straps").get(0).asText());
                assertTrue(arrangement.get("explained").size() > 1);
            }
        }
    }

    @Test
    void schemaRefusesWhatItDoesNotDescribe() {
        ObjectNode document = (ObjectNode) Schemas.parsed(CommandRun.of("earth", "-f", "json", OTTER).out());
        assertEquals(List.of(), Schemas.errors("earth", document.toString()));
        assertFalse(Schemas.errors("earth", document.deepCopy().put("more", 1).toString()).isEmpty());
        assertFalse(Schemas.errors("earth", document.deepCopy().without("caution").toString()).isEmpty());
        ObjectNode strap = document.deepCopy();
        ((ObjectNode) strap.get("vehicles").get(0).get("straps").get(0)).put("verdict", "fine");
        assertFalse(Schemas.errors("earth", strap.toString()).isEmpty());
    }

    @Test
    void jsonTellsTheSameFiguresAsTheBodyTable() {
        JsonNode vehicle = Schemas.parsed(CommandRun.of("earth", "-f", "json", "-c", "start", OTTER).out()).get("vehicles").get(0);
        assertEquals(List.of("start"), texts(vehicle.get("cases"), "case"));
        JsonNode bodies = vehicle.get("cases").get(0).get("bodies");
        assertEquals("engine", bodies.get(1).get("body").asText());
        double engineV = bodies.get(1).get("potentialV").asDouble();
        assertTrue(engineV > 0.1 && engineV < 0.4, "engine at " + engineV + " V");
        String shown = String.format(java.util.Locale.ROOT, "%.3f", engineV);
        assertTrue(CommandRun.of("earth", "-c", "start", OTTER).out().contains(shown));
    }

    @Test
    void everyKindOfFigureIsExplained() {
        for (String[] each : new String[][] {{"engine", "potential of engine against the battery's minus"},
            {"WE1", "heat of the strap"}, {"WE1", "strap that would do"}, {"WE1", "after the loss"}, {"XE1", "heat in the contact"},
            {"M2", "resistance shared with"}, {"M2", "more copper with the other return"}}) {
            CommandRun run = CommandRun.of("earth", "-e", each[0], OTTER);
            assertTrue(run.out().contains(each[1]), each[0] + ": " + run.out());
        }
    }

    @Test
    void unknownElementAndUnknownCaseAreToldInWords() {
        CommandRun element = CommandRun.of("earth", "-e", "WE99", OTTER);
        assertEquals(2, element.code());
        assertEquals(List.of("loomwright: no element WE99 in otter"), element.messages());
        CommandRun state = CommandRun.of("earth", "-c", "dancing", OTTER);
        assertEquals(2, state.code());
        assertTrue(state.err().startsWith("loomwright: vehicle otter has no case dancing; it has night, "), state.err());
    }

    @Test
    void faultsOfTheFileEndWithCodeTwo() {
        Yard yard = new Yard(temp);
        String at = yard.edit(yard.vehicle(), "xMm=\"500\"", "xMm=\"" + Yard.MARK + "NaN\"");
        CommandRun run = CommandRun.of("earth", yard.vehicle());
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith(at.substring(0, at.indexOf(':', at.indexOf(".vehicle")))), run.err());
    }

    @Test
    void outputGoesIntoAFileWholeOrNotAtAll() throws Exception {
        Path file = temp.resolve("earth.json");
        CommandRun run = CommandRun.of("earth", "-f", "json", "-o", file, OTTER);
        assertEquals("", run.out());
        assertEquals(CommandRun.of("earth", "-f", "json", OTTER).out(), Files.readString(file));
        assertEquals(2, CommandRun.of("earth", "-o", temp.resolve("none").resolve("x.txt"), OTTER).code());
    }

    @Test
    void twoRunsAreEqual() {
        assertEquals(CommandRun.of("earth", "-a", "all", "-f", "json", OTTER),
                CommandRun.of("earth", "-a", "all", "-f", "json", OTTER));
    }

    @Test
    void interruptEndsTheWork() {
        Interrupt interrupt = new Interrupt();
        interrupt.raise();
        CommandRun run = CommandRun.with(interrupt, "earth", OTTER);
        assertEquals(Interrupt.EXIT_CODE, run.code());
        assertEquals("", run.out());
    }
}
