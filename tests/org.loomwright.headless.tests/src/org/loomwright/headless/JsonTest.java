// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** JSON output keeps to the schemas that document it, and says the same as the text. */
class JsonTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    @TempDir
    Path temp;
    private Yard yard;

    @BeforeEach
    void copyYard() {
        yard = new Yard(temp);
    }

    @Test
    void schemasRefuseWhatTheyDoNotDescribe() {
        for (String schema : List.of("check", "bom", "cables")) {
            ObjectNode document = (ObjectNode) Schemas.parsed(CommandRun.of(schema, "-f", "json", yard.vehicle()).out());
            assertEquals(List.of(), Schemas.errors(schema, document.toString()));
            assertFalse(Schemas.errors(schema, document.deepCopy().put("more", 1).toString()).isEmpty());
            assertFalse(Schemas.errors(schema, document.deepCopy().put("formatVersion", "2.0").toString()).isEmpty());
            assertFalse(Schemas.errors(schema, document.deepCopy().without("caution").toString()).isEmpty());
        }
    }

    @Test
    void soundVehicle() {
        JsonNode document = Schemas.valid("check", CommandRun.of("check", "-f", "json", "-a", "all", yard.vehicle()).out());
        assertEquals(0, document.get("faults").size());
        assertEquals(2, document.get("vehicles").size());
        JsonNode near = document.get("vehicles").get(0);
        assertEquals("wren", near.get("vehicle").asText());
        assertEquals("near", near.get("arrangement").asText());
        assertTrue(near.get("adopted").asBoolean());
        assertFalse(document.get("vehicles").get(1).get("adopted").asBoolean());
        assertEquals(0, near.get("findings").size());
        assertEquals(List.of("E1", "M1"), near.get("loads").findValuesAsText("load"));
    }

    @Test
    void findingsCarryFiguresCausesMendsAndDerivations() {
        yard.edit(yard.vehicle(), "sectionMm2=\"16\" lengthMm=\"150\"", "sectionMm2=\"16\" lengthMm=\"1500\"");
        CommandRun run = CommandRun.of("check", "-f", "json", yard.vehicle());
        assertEquals(1, run.code());
        JsonNode findings = Schemas.valid("check", run.out()).get("vehicles").get(0).get("findings");
        assertEquals(1, findings.size());
        JsonNode finding = findings.get(0);
        assertEquals("first-device-distance", finding.get("rule").asText());
        assertEquals("error", finding.get("severity").asText());
        assertEquals("near/W1", finding.get("element").asText());
        assertEquals(1500, finding.get("is").get("value").asDouble(), 1e-9);
        // 33 CFR 183.455: 7 inches
        assertEquals(178, finding.get("limit").get("value").asDouble(), 1e-9);
        assertEquals("G1", finding.get("causes").get(0).get("element").asText());
        assertTrue(finding.get("mends").size() > 0);
    }

    @Test
    void thresholdHoldsForJsonToo() {
        yard.edit(yard.vehicle(), "sectionMm2=\"16\" lengthMm=\"150\"", "sectionMm2=\"16\" lengthMm=\"1500\"");
        Path mild = yard.write("mild.practice", Yard.text(yard.practice()).replace("</practice:P",
                "  <ruleSettings rule=\"first-device-distance\" severity=\"warning\"/>\n</practice:P"));
        CommandRun run = CommandRun.of("check", "-f", "json", "-s", "error", "-p", mild, yard.vehicle());
        assertEquals(0, run.code());
        assertEquals(0, Schemas.valid("check", run.out()).get("vehicles").get(0).get("findings").size());
    }

    @Test
    void faultsAreInTheDocumentAndOnStandardError() {
        yard.edit(yard.vehicle(), "xMm=\"500\"", "xMm=\"NaN\"");
        CommandRun run = CommandRun.of("check", "-f", "json", yard.vehicle());
        assertEquals(2, run.code());
        JsonNode document = Schemas.valid("check", run.out());
        assertEquals(0, document.get("vehicles").size());
        assertEquals(1, document.get("faults").size());
        JsonNode fault = document.get("faults").get(0);
        assertEquals(run.messages().get(0), fault.get("file").asText() + ":" + fault.get("line") + ":" + fault.get("column")
                + ": "
                + fault.get("element").asText() + ": " + fault.get("message").asText());
    }

    @Test
    void demoFleetKeepsToTheSchema() {
        CommandRun run = CommandRun.of("check", "-f", "json", "-a", "all", "-s", "note", FLEET);
        JsonNode document = Schemas.valid("check", run.out());
        assertEquals(0, document.get("faults").size(), run.err());
        assertTrue(document.get("vehicles").size() >= 6);
        for (String vehicle : List.of("heron", "otter", "beaver")) {
            Schemas.valid("bom", CommandRun.of("bom", "-f", "json", FLEET.resolve(vehicle + ".vehicle")).out());
            Schemas.valid("cables", CommandRun.of("cables", "--existing", "-f", "json", FLEET.resolve(vehicle + ".vehicle"))
                    .out());
        }
    }

    @Test
    void bomSumsUp() {
        JsonNode document = Schemas.valid("bom", CommandRun.of("bom", "-f", "json", yard.vehicle()).out());
        double price = 0;
        for (JsonNode line : document.get("lines")) {
            price += line.path("price").asDouble();
            assertEquals(line.get("needed").asDouble(), line.get("fromStock").asDouble() + line.get("toBuy").asDouble(), 1e-9);
        }
        assertEquals(price, document.get("linesTotals").get("price").asDouble(), 0.005 * document.get("lines").size());
    }

    @Test
    void cableScheduleListsEveryConductor() {
        JsonNode lines = Schemas.valid("cables", CommandRun.of("cables", "-f", "json", yard.vehicle()).out()).get("lines");
        assertEquals(12, lines.size());
        JsonNode w4 = lines.get(3);
        assertEquals("-W4", w4.get("cable").asText());
        assertEquals("-X1:1", w4.get("from").asText());
        assertEquals("-S1:1", w4.get("to").asText());
        assertEquals("R1 R2", w4.get("path").asText());
        assertEquals(2.57, w4.get("lengthM").asDouble(), 1e-9);
    }
}
