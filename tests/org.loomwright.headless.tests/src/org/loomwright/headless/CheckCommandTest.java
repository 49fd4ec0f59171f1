// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code loomwright check}: exit codes, threshold, choice of arrangement, case and practice. */
class CheckCommandTest {
    @TempDir
    Path temp;
    private Yard yard;

    @BeforeEach
    void copyYard() {
        yard = new Yard(temp);
    }

    /** An error: the main fuse is 1.5 m from the battery. */
    private void farFuse() {
        yard.edit(yard.vehicle(), "sectionMm2=\"16\" lengthMm=\"150\"", "sectionMm2=\"16\" lengthMm=\"1500\"");
    }

    /** A warning: a single core below 1 mm2. */
    private void thinCore() {
        yard.edit(yard.parts(), "    <rows sectionMm2=\"1.5\"",
                "    <rows sectionMm2=\"0.75\" r20MaxMilliohmPerM=\"24.7\" outerDiameterMm=\"1.9\"/>\n"
                        + "    <rows sectionMm2=\"1.5\"");
        yard.edit(yard.vehicle(), "<cables name=\"W12\" part=\"single\" sectionMm2=\"1.5\"",
                "<cables name=\"W12\" part=\"single\" sectionMm2=\"0.75\"");
    }

    private CommandRun check(Object... options) {
        Object[] args = new Object[options.length + 2];
        args[0] = "check";
        System.arraycopy(options, 0, args, 1, options.length);
        args[args.length - 1] = yard.vehicle();
        return CommandRun.of(args);
    }

    @Test
    void soundVehicleIsClean() {
        CommandRun run = check();
        assertEquals(0, run.code());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("wren  Wren, yard trailer  " + yard.vehicle() + System.lineSeparator()), run.out());
        assertTrue(run.out().contains("  0 errors, 0 warnings"), run.out());
        assertTrue(run.out().contains("Nothing found at or above severity warning."), run.out());
        assertTrue(run.out().contains("Isolate the batteries"), run.out());
    }

    @Test
    void errorsAreFindings() {
        farFuse();
        CommandRun run = check();
        assertEquals(1, run.code());
        assertTrue(run.out().contains("  error     -W1  first-device-distance"), run.out());
        assertTrue(run.out().contains("  1 error, 0 warnings"), run.out());
        assertFalse(run.out().contains("Nothing found"), run.out());
    }

    @Test
    void thresholdDecidesWhatIsReportedAndCounts() {
        thinCore();
        CommandRun run = check();
        assertEquals(1, run.code());
        assertTrue(run.out().contains("  warning   -W12  section-min"), run.out());
        run = check("-s", "error");
        assertEquals(0, run.code());
        assertFalse(run.out().contains("section-min"), run.out());
        assertTrue(run.out().contains("  0 errors, 1 warning"), run.out());
        assertTrue(run.out().contains("Nothing found at or above severity error."), run.out());
        assertEquals(1, check("--severity", "NOTE").code());
    }

    @Test
    void findingsComeBySeverity() {
        thinCore();
        farFuse();
        String out = check().out();
        assertTrue(out.indexOf("  error     -W1 ") > 0 && out.indexOf("  error     -W1 ") < out.indexOf("  warning   -W12 "),
                out);
    }

    @Test
    void badInputWinsOverFindings() {
        farFuse();
        yard.write("broken.vehicle", "");
        CommandRun run = CommandRun.of("check", yard.folder());
        assertEquals(2, run.code());
        assertTrue(run.out().contains("first-device-distance"), run.out());
    }

    @Test
    void adoptedArrangementIsLookedAtUnlessOthersAreNamed() {
        assertTrue(check().out().contains("arrangement near (adopted)"));
        CommandRun far = check("-a", "far");
        assertEquals(0, far.code());
        assertTrue(far.out().contains("  arrangement far, "), far.out());
        assertFalse(far.out().contains("near"), far.out());
        CommandRun all = check("-a", "all");
        assertTrue(all.out().contains("arrangement near (adopted)") && all.out().contains("arrangement far, "), all.out());
        CommandRun both = check("-a", "far", "-a", "near");
        assertTrue(both.out().indexOf("arrangement far") < both.out().indexOf("arrangement near"), both.out());
    }

    @Test
    void allArrangementsAreLookedAtWhereNoneIsAdopted() {
        yard.edit(yard.vehicle(), " adopted=\"near\"", "");
        String out = check().out();
        assertTrue(out.contains("arrangement near, ") && out.contains("arrangement far, "), out);
    }

    @Test
    void vehicleWithoutArrangementsIsChecked() {
        String text = Yard.text(yard.vehicle()).replace(" adopted=\"near\"", "");
        int first = text.indexOf("  <arrangements ");
        yard.write("wren.vehicle", text.substring(0, first) + "</vehicle:Vehicle>\n");
        CommandRun run = check();
        assertTrue(run.out().contains("  no arrangement, practice yard"), run.out());
        assertEquals(1, run.code(), "loads without supply");
        assertTrue(run.out().contains("no-supply"), run.out());
    }

    @Test
    void unknownArrangementNamesTheOnesThereAre() {
        CommandRun run = check("-a", "midway");
        assertEquals(2, run.code());
        assertEquals(List.of("loomwright: vehicle wren has no arrangement midway; it has near, far"), run.messages());
        assertEquals("", run.out());
    }

    @Test
    void oneCaseCanBeLookedAt() {
        CommandRun run = check("-c", "evening");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("evening"), run.out());
        assertFalse(run.out().contains("engine:"), run.out());
        CommandRun two = check("-c", "evening", "--case", "engine:all-on");
        assertEquals(0, two.code());
    }

    @Test
    void unknownCaseNamesTheOnesThereAre() {
        CommandRun run = check("-c", "morning");
        assertEquals(2, run.code());
        assertEquals(1, run.messages().size());
        assertTrue(run.err().startsWith("loomwright: vehicle wren has no case morning; it has evening, engine:all-on, "),
                run.err());
    }

    @Test
    void anotherPracticeCanBeFollowed() {
        thinCore();
        Path lenient = yard.write("lenient.practice", Yard.text(yard.practice()).replace("name=\"yard\"", "name=\"lenient\"")
                .replace("</practice:P", "  <ruleSettings rule=\"section-min\" enabled=\"false\"/>\n</practice:P"));
        CommandRun run = check("-p", lenient);
        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().contains(", practice lenient, "), run.out());
    }

    @Test
    void missingPracticeIsBadInput() {
        CommandRun run = check("-p", yard.folder().resolve("none.practice"));
        assertEquals(2, run.code());
        assertEquals(List.of(yard.folder().resolve("none.practice") + ":1:1: the file does not exist; expected an existing file",
                "loomwright: 1 fault in the files; nothing was analysed"), run.messages());
    }

    @Test
    void acceptedFindingsAreShownWithTheirReasonAndDoNotCount() {
        farFuse();
        yard.edit(yard.vehicle(), "</vehicle:Vehicle>", "  <waivers rule=\"first-device-distance\" element=\"near/W1\""
                + " reason=\"inside the battery box\" who=\"owner\" when=\"2026-05-02\"/>\n</vehicle:Vehicle>");
        CommandRun run = check();
        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().contains("  0 errors, 0 warnings, 1 accepted"), run.out());
        assertTrue(run.out().contains("  accepted  -W1  first-device-distance"), run.out());
        assertTrue(run.out().contains("reason   inside the battery box (owner, 2026-05-02)"), run.out());
    }

    @Test
    void aFileNamedTwiceIsCheckedOnce() {
        CommandRun run = CommandRun.of("check", yard.vehicle(), yard.folder(), yard.folder().resolve("parts/../wren.vehicle"));
        assertEquals(0, run.code());
        assertEquals(1, run.out().lines().filter(line -> line.startsWith("wren ")).count(), run.out());
    }

    @Test
    void linesFitThePage() {
        farFuse();
        thinCore();
        assertTrue(check("-a", "all").out().lines().filter(line -> !line.startsWith("wren"))
                .allMatch(line -> line.length() <= 140));
    }

    @Test
    void noColoursOutsideATerminal() {
        farFuse();
        assertFalse(check().out().contains("\u001b"));
    }
}
