// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;
import org.loomwright.headless.Schemas;

/** The command {@code loomwright protection}: exit codes, text, JSON, explanations, output files. */
class ProtectionCommandTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Path OTTER = FLEET.resolve("otter.vehicle");

    @TempDir
    Path temp;

    @Test
    void mistakesOfProtectionAreFoundAndNothingElseIsTold() {
        CommandRun run = CommandRun.of("protection", "-f", "json", "-a", "as-found", OTTER);
        assertEquals(1, run.code(), run.err());
        Set<String> rules = new TreeSet<>();
        Schemas.valid("protection", run.out()).get("vehicles").get(0).get("findings")
                .forEach(finding -> rules.add(finding.get("rule").asText()));
        assertEquals(Set.of("overload-band", "short-withstand", "fault-clears", "breaking-capacity", "inrush-margin",
                "selectivity", "both-ends", "case-earth"), rules);
    }

    @Test
    void aSoundVehicleHasTablesAndNoFindings() {
        CommandRun run = CommandRun.of("protection", "-a", "spread", FLEET.resolve("heron.vehicle"));
        assertEquals(0, run.code(), run.out());
        for (String title : List.of("Conductors", "Returns", "Devices")) {
            assertTrue(run.out().lines().anyMatch(line -> line.startsWith("  " + title + "  ")), title);
        }
        assertTrue(run.out().contains("Nothing found at or above severity warning."), run.out());
        assertTrue(run.out().contains("up to 435 A of 3170 A"), run.out());
    }

    @Test
    void jsonOfTheFleetKeepsToTheSchema() {
        for (String vehicle : List.of("heron", "otter", "beaver")) {
            JsonNode document = Schemas.valid("protection", CommandRun.of("protection", "-f", "json", "-a", "all", "-s", "note",
                    "-e", "F10", FLEET.resolve(vehicle + ".vehicle")).out());
            assertEquals(2, document.get("vehicles").size());
            for (JsonNode arrangement : document.get("vehicles")) {
                assertTrue(arrangement.get("conductors").size() > 60);
                assertTrue(arrangement.get("explained").size() == 1, arrangement.get("explained").toString());
            }
        }
    }

    @Test
    void schemaRefusesWhatItDoesNotDescribe() {
        ObjectNode document = (ObjectNode) Schemas.parsed(CommandRun.of("protection", "-f", "json", OTTER).out());
        assertEquals(List.of(), Schemas.errors("protection", document.toString()));
        assertFalse(Schemas.errors("protection", document.deepCopy().put("more", 1).toString()).isEmpty());
        ObjectNode device = document.deepCopy();
        ((ObjectNode) device.get("vehicles").get(0).get("devices").get(0)).put("breaking", "perhaps");
        assertFalse(Schemas.errors("protection", device.toString()).isEmpty());
    }

    @Test
    void figuresOfOneConductorAreDerived() {
        CommandRun run = CommandRun.of("protection", "-a", "as-found", "-e", "W120", OTTER);
        assertTrue(run.out().contains("-W120"), run.out());
        assertTrue(run.out().contains("rating Iz") || run.out().contains("Iz"), run.out());
        assertTrue(run.out().lines().anyMatch(line -> line.contains(" = ")), run.out());
        assertFalse(run.out().contains("No figures come with"), run.out());
    }

    @Test
    void anUnknownElementIsBadInput() {
        CommandRun run = CommandRun.of("protection", "-e", "W999", OTTER);
        assertEquals(2, run.code());
        assertTrue(run.err().contains("no element W999 in otter"), run.err());
    }

    @Test
    void theReportGoesToAFile() throws Exception {
        Path file = temp.resolve("protection.json");
        CommandRun run = CommandRun.of("protection", "-f", "json", "-o", file, OTTER);
        assertEquals("", run.out());
        Schemas.valid("protection", Files.readString(file));
        assertEquals(2, CommandRun.of("protection", "-o", temp.resolve("none").resolve("x.json"), OTTER).code());
    }
}
