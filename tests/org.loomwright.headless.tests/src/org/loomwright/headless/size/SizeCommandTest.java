// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.headless.CommandRun;
import org.loomwright.headless.Schemas;
import org.loomwright.headless.Yard;

/** The command {@code loomwright size}: the table, JSON, writing the file, what stays, what it refuses. */
class SizeCommandTest {
    @TempDir
    Path temp;
    private Yard yard;

    @BeforeEach
    void copy() {
        yard = new Yard(temp);
    }

    private JsonNode json(Object... more) {
        CommandRun run = CommandRun.of(Stream.concat(Stream.of("size", "--format", "json", yard.vehicle()), Stream.of(more))
                .toArray());
        assertTrue(run.code() < 2, run.err());
        return Schemas.valid("size", run.out()).get("vehicles").get(0);
    }

    @Test
    void withoutAnythingOpenItSaysSo() {
        CommandRun run = CommandRun.of("size", yard.vehicle());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Nothing is open"), run.out());
    }

    @Test
    void theTableShowsSectionsBeforeAndAfterTotalsAndProof() {
        CommandRun run = CommandRun.of("size", "--all", yard.vehicle());
        assertEquals(0, run.code(), run.err());
        for (String text : new String[] {"arrangement near (adopted)", "each alone", "gap 0 %", "what holds against less", "-W12",
            "at the design's currents", "-X1:3", "saved"}) {
            assertTrue(run.out().contains(text), text + "\n" + run.out());
        }
    }

    @Test
    void theFiguresOfTheJsonHangTogether() {
        JsonNode sized = json("--all");
        assertEquals(0, sized.get("gap").asDouble());
        assertTrue(sized.get("after").get("copperKg").asDouble() <= sized.get("before").get("copperKg").asDouble());
        assertTrue(sized.get("after").get("copperKg").asDouble() <= sized.get("alone").get("copperKg").asDouble() + 1e-9);
        double kg = 0;
        for (JsonNode cable : sized.get("cables")) {
            kg += cable.get("afterMm2").asDouble() * cable.get("lengthMm").asDouble() * 8.89e-6;
        }
        assertEquals(sized.get("after").get("copperKg").asDouble(), kg, 1e-9);
        assertEquals(sized.get("cost").asDouble(), sized.get("after").get("copperKg").asDouble(), 1e-6);
    }

    @Test
    void applyingChangesOnlyTheAttributesOfWhatWasSized() {
        List<String> before = Yard.text(yard.vehicle()).lines().toList();
        CommandRun run = CommandRun.of("size", "--all", "--apply", yard.vehicle());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("elements changed"), run.err());
        List<String> after = Yard.text(yard.vehicle()).lines().toList();
        assertEquals(before.size(), after.size());
        List<Integer> changed = IntStream.range(0, before.size()).filter(i -> !before.get(i).equals(after.get(i))).boxed()
                .toList();
        assertFalse(changed.isEmpty());
        for (int i : changed) {
            assertEquals(bare(before.get(i)), bare(after.get(i)));
            assertTrue(after.get(i).contains("By=\"sizing\""), after.get(i));
        }
        int far = IntStream.range(0, before.size()).filter(i -> before.get(i).contains("<arrangements name=\"far\"")).findFirst()
                .orElseThrow();
        assertTrue(changed.stream().allMatch(i -> i < far), "the other arrangement stays");
    }

    /** A line without what sizing may change. */
    private static String bare(String line) {
        return line.replaceAll(" (sectionMm2|sectionBy|protector|ratingBy)=\"[^\"]*\"", "");
    }

    @Test
    void appliedTwiceTheFileStaysByteForByte() {
        CommandRun.of("size", "--all", "--apply", yard.vehicle());
        String once = Yard.text(yard.vehicle());
        CommandRun again = CommandRun.of("size", "--apply", yard.vehicle());
        assertEquals(0, again.code(), again.err());
        assertTrue(again.err().contains("nothing to change"), again.err());
        assertEquals(once, Yard.text(yard.vehicle()));
        assertEquals(0, CommandRun.of("check", yard.vehicle()).code());
    }

    @Test
    void withoutApplyTheFileStays() {
        String before = Yard.text(yard.vehicle());
        json("--all", "--objective", "price");
        json("--all", "--objective", "sections");
        assertEquals(before, Yard.text(yard.vehicle()));
    }

    @Test
    void figuresOfOneCableAreExplained() {
        CommandRun run = CommandRun.of("size", "--all", "--explain", "W4", yard.vehicle());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("-W4") && run.out().contains(" = "), run.out());
        assertFalse(run.out().contains("-W5"), run.out());
        assertTrue(json("--all", "--explain").get("explained").size() > 10);
    }

    @Test
    void whatCannotBeDoneIsRefusedInWords() {
        CommandRun unknown = CommandRun.of("size", "--all", yard.vehicle(), "nowhere");
        assertEquals(2, unknown.code());
        assertTrue(unknown.err().contains("has no arrangement nowhere; it has near, far"), unknown.err());
        CommandRun cable = CommandRun.of("size", "--all", "--explain", "W99", yard.vehicle());
        assertEquals(2, cable.code());
        assertTrue(cable.err().contains("no cable, fuse or load W99 was sized"), cable.err());
        assertEquals(2, CommandRun.of("size", "--objective", "beauty", yard.vehicle()).code());
        assertEquals(2, CommandRun.of("size", yard.folder().resolve("none.vehicle")).code());
    }

    @Test
    void aPlaceThatCannotBeWrittenIsToldAndNothingIsLost() {
        Path target = temp.resolve("none").resolve("x.json");
        CommandRun run = CommandRun.of("size", "--all", "--apply", "-o", target, yard.vehicle());
        assertEquals(2, run.code());
        assertFalse(Files.exists(target));
        assertEquals(Yard.original("wren.vehicle"), Yard.text(yard.vehicle()));
    }
}
