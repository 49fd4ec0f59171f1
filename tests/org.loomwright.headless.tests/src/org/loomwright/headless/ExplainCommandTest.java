// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code loomwright check --explain}: how the figures of one element came about. */
class ExplainCommandTest {
    @TempDir
    Path temp;
    private Yard yard;

    @BeforeEach
    void copyYard() {
        yard = new Yard(temp);
    }

    private CommandRun explain(String element, Object... options) {
        Object[] args = new Object[options.length + 4];
        args[0] = "check";
        args[1] = yard.vehicle();
        args[2] = "--explain";
        args[3] = element;
        System.arraycopy(options, 0, args, 4, options.length);
        return CommandRun.of(args);
    }

    @Test
    void lengthAndResistanceOfACableAreDerived() {
        CommandRun run = explain("W4");
        assertEquals(0, run.code());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("wren near"), run.out());
        // path 1050 + 1200 mm, two tails of 100 mm (practice), slack 5 % of the path (common practice)
        assertTrue(run.out().contains("length = 2563 mm"), run.out());
        assertTrue(run.out().contains("= path + tail a + tail b + slack"), run.out());
        assertTrue(run.out().matches("(?s).*path +2250 mm.*tail a +100 mm.*tail b +100 mm.*slack +113 mm.*"), run.out());
        // 7.60 mohm/m over 2.563 m
        assertTrue(run.out().contains("resistance at 20 degC = 19.5 mohm"), run.out());
        assertFalse(run.out().contains("Isolate"), "an explanation is no report");
    }

    @Test
    void elementCanBeWrittenInEveryWayItIsShown() {
        String plain = explain("W4").out();
        assertEquals(plain, explain("-W4").out());
        assertEquals(plain, explain("near/W4").out());
        String way = explain("X1/1").out();
        assertTrue(way.contains("-X1:1"), way);
        assertEquals(way, explain("-X1:1").out());
        assertEquals(way, explain("X1:1").out());
        assertEquals(way, explain("near/X1/1").out());
    }

    @Test
    void oneTellingCaseIsShownAndTheOthersAreNamed() {
        String out = explain("W4").out();
        assertEquals(1, out.lines().filter(line -> line.startsWith("  -W4  case ")).count(), out);
        assertTrue(out.contains("--case NAME shows another of "), out);
        String evening = explain("W4", "--case", "evening").out();
        assertTrue(evening.contains("  -W4  case evening"), evening);
        assertFalse(evening.contains("--case NAME"), evening);
    }

    @Test
    void eachArrangementHasItsOwnFigures() {
        String out = explain("W4", "-a", "all").out();
        assertTrue(out.contains("wren near") && out.contains("wren far"), out);
        assertTrue(out.contains("length = 2563 mm"), out);
        // 1200 mm, two tails of 100 mm, 5 %
        assertTrue(out.contains("length = 1460 mm"), out);
    }

    @Test
    void unknownElementNamesNearOnes() {
        CommandRun run = explain("W44");
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(List.of("loomwright: no element W44 in wren near; similar: -W4, -W1, -W2, -W3, -W5"), run.messages());
        assertEquals(List.of("loomwright: no element frme in wren near; similar: frame"), explain("frme").messages());
        assertEquals(List.of("loomwright: no element windscreen in wren near, wren far"),
                explain("windscreen", "-a", "all").messages());
    }

    @Test
    void elementWithoutFiguresSaysSo() {
        CommandRun run = explain("frame");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("No figures come with frame."), run.out());
    }

    @Test
    void jsonCarriesTheDerivationsOfAllCases() {
        JsonNode document = Schemas.valid("check", explain("-W4", "-f", "json").out());
        JsonNode explained = document.get("vehicles").get(0).get("explained");
        assertTrue(explained.size() > 6, explained.toString());
        assertEquals("near/W4", explained.get(0).get("element").asText().replaceFirst("#.*", ""));
        JsonNode length = explained.get(0).get("derivations").get(0);
        assertEquals("length", length.get("figure").asText());
        assertEquals(2562.5, length.get("value").get("value").asDouble(), 1e-9);
        assertEquals("mm", length.get("value").get("unit").asText());
    }
}
