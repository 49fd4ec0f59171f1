// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;
import org.loomwright.headless.Schemas;
import org.loomwright.headless.Yard;

/** The command {@code loomwright compare}: figures, words, JSON, chart, what it refuses. */
class CompareCommandTest {
    private static final Path HERON = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet", "heron.vehicle");

    @TempDir
    Path temp;

    private static JsonNode json(Object... args) {
        CommandRun run = CommandRun.of(args);
        assertEquals(0, run.code(), run.err());
        return Schemas.valid("compare", run.out());
    }

    private static JsonNode figure(JsonNode compared, String key) {
        for (JsonNode each : compared) {
            if (each.get("key").asText().equals(key)) {
                return each;
            }
        }
        throw new AssertionError("no figure " + key);
    }

    @Test
    void lengthsPerSectionAreThoseOfTheCableSchedule() {
        JsonNode compared = json("compare", "--format", "json", HERON);
        for (int i = 0; i < 2; i++) {
            JsonNode arrangement = compared.get("arrangements").get(i);
            Map<Double, Double> metres = new TreeMap<>();
            arrangement.get("copper").forEach(row -> metres.merge(row.get("sectionMm2").asDouble(),
                    row.get("conductorM").asDouble(), Double::sum));
            Map<Double, Double> listed = new TreeMap<>();
            Map<Double, Integer> lines = new TreeMap<>();
            Schemas.parsed(CommandRun.of("cables", "-a", arrangement.get("arrangement").asText(), "--format", "json", HERON).out())
                    .get("lines").forEach(line -> {
                        if (line.get("existing").asText().isEmpty()) {
                            listed.merge(line.get("sectionMm2").asDouble(), line.get("lengthM").asDouble(), Double::sum);
                            lines.merge(line.get("sectionMm2").asDouble(), 1, Integer::sum);
                        }
                    });
            assertEquals(listed.keySet(), metres.keySet());
            // the schedule has a line for each core, its length cut to full centimetres upwards
            listed.forEach((section, sum) -> assertEquals(sum, metres.get(section), 0.01 * lines.get(section),
                    section + " mm2"));
            double kg = metres.entrySet().stream().mapToDouble(each -> each.getKey() * each.getValue() * 8.89e-3).sum();
            assertEquals(kg, figure(compared.get("figures"), "copperKg").get("values").get(i).asDouble(), 1e-9);
        }
    }

    @Test
    void aCentralBoxHasMoreInBranchesAndLessInFeeders() {
        JsonNode compared = json("compare", "--format", "json", HERON, "central", "spread");
        JsonNode duties = compared.get("copperByDuty");
        for (String branch : new String[] {"copperKg.branch", "copperKg.branch_return"}) {
            JsonNode values = figure(duties, branch).get("values");
            assertTrue(values.get(0).asDouble() > values.get(1).asDouble(), branch);
        }
        JsonNode feeders = figure(duties, "copperKg.feeder").get("values");
        assertTrue(feeders.get(0).asDouble() < feeders.get(1).asDouble());
        double sum = 0;
        for (JsonNode each : duties) {
            sum += each.get("values").get(0).asDouble();
        }
        assertEquals(figure(compared.get("figures"), "copperKg").get("values").get(0).asDouble(), sum, 1e-9);
        assertEquals(1, figure(compared.get("figures"), "conductorM").get("best").asInt());
    }

    @Test
    void theTextSaysWhatDiffersAndWhere() {
        CommandRun run = CommandRun.of("compare", HERON);
        assertEquals(0, run.code(), run.err());
        for (String text : new String[] {"central  One central box at the back", "spread lays", "Of that feeders +",
            "Copper, where it is", "Conductor by section", "Lowest voltage of each load", "sections and ratings as planned"}) {
            assertTrue(run.out().contains(text), text);
        }
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 160));
    }

    @Test
    void everySumTellsHowItCameAbout() {
        CommandRun run = CommandRun.of("compare", "--explain", HERON, "spread");
        assertEquals(0, run.code(), run.err());
        for (String text : new String[] {"density x sum of (section x length)", "IEC 60028", "copper by duty", "price =",
            "conductor ends", "lowest voltage", "hottest conductor"}) {
            assertTrue(run.out().contains(text), text);
        }
        assertTrue(json("compare", "--explain", "--format", "json", HERON, "spread").get("arrangements").get(0)
                .get("explained").get(0).get("derivations").size() > 6);
    }

    @Test
    void arrangementsThatAreAlikeDifferInNothing() {
        Yard yard = new Yard(temp);
        JsonNode compared = json("compare", "--format", "json", yard.vehicle(), "near", "near");
        for (JsonNode each : compared.get("figures")) {
            assertEquals(each.get("values").get(0), each.get("values").get(1), each.get("key").asText());
            assertFalse(each.has("best"), each.get("key").asText());
        }
    }

    @Test
    void theChartIsDrawnAsSvgAndPng() throws IOException {
        Path svg = temp.resolve("c.svg");
        Path png = temp.resolve("c.png");
        assertEquals(0, CommandRun.of("compare", "--chart", svg, HERON).code());
        assertEquals(0, CommandRun.of("compare", "--chart", png, HERON).code());
        String text = Files.readString(svg);
        for (String word : new String[] {"Copper by section", "their returns", "Lowest voltage", "central", "spread"}) {
            assertTrue(text.contains(word), word);
        }
        assertEquals(2246, ImageIO.read(png.toFile()).getWidth());
        CommandRun.of("compare", "--chart", temp.resolve("again.svg"), HERON);
        assertEquals(text, Files.readString(temp.resolve("again.svg")));
    }

    @Test
    void sizedFirstSaysSoAndChangesNoFile() {
        Yard yard = new Yard(temp);
        String before = Yard.text(yard.vehicle());
        JsonNode compared = json("compare", "--size", "--format", "json", yard.vehicle());
        assertEquals("copper", compared.get("sizedFor").asText());
        JsonNode planned = json("compare", "--format", "json", yard.vehicle());
        for (int i = 0; i < 2; i++) {
            assertTrue(figure(compared.get("figures"), "copperKg").get("values").get(i).asDouble()
                    <= figure(planned.get("figures"), "copperKg").get("values").get(i).asDouble());
        }
        assertEquals(before, Yard.text(yard.vehicle()));
    }

    @Test
    void whatCannotBeComparedIsRefusedInWords() {
        CommandRun unknown = CommandRun.of("compare", HERON, "nowhere");
        assertEquals(2, unknown.code());
        assertTrue(unknown.err().contains("has no arrangement nowhere; it has central, spread"), unknown.err());
        CommandRun form = CommandRun.of("compare", "--chart", temp.resolve("c.pdf"), HERON);
        assertEquals(2, form.code());
        assertTrue(form.err().contains("must end with .svg or .png"), form.err());
        CommandRun place = CommandRun.of("compare", "--chart", temp.resolve("none").resolve("c.svg"), HERON);
        assertEquals(2, place.code());
        assertEquals(2, CommandRun.of("compare", "--size=beauty", HERON).code());
        assertEquals(2, CommandRun.of("compare", temp.resolve("none.vehicle")).code());
    }
}
