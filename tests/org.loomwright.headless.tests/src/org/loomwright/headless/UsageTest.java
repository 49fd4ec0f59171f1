// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Help, version, and calls that cannot be meant. */
class UsageTest {

    private static void assertWrong(String message, String tryWhat, Object... args) {
        CommandRun run = CommandRun.of(args);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(List.of("loomwright: " + message, "Try '" + tryWhat + " --help'."), run.messages());
    }

    @Test
    void helpNamesTheCommandsAndExitCodes() {
        CommandRun run = CommandRun.of("--help");
        assertEquals(0, run.code());
        assertEquals("", run.err());
        for (String part : List.of("Usage: loomwright [-hV] COMMAND", "  check ", "  bom ", "  cables ", "Exit codes: 0 ")) {
            assertTrue(run.out().contains(part), run.out());
        }
    }

    @Test
    void everyCommandHasHelp() {
        for (String command : List.of("check", "bom", "cables")) {
            CommandRun run = CommandRun.of(command, "--help");
            assertEquals(0, run.code());
            assertEquals("", run.err());
            assertTrue(run.out().startsWith("Usage: loomwright " + command + " "), run.out());
            assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
        }
    }

    @Test
    void helpOfCheckDescribesEveryOption() {
        String help = CommandRun.of("check", "-h").out();
        for (String option : List.of("--arrangement=NAME", "--case=NAME", "--practice=FILE", "--severity=SEVERITY",
                "--format=FORM",
                "--output=FILE", "--explain=ELEMENT", "--help", "--version", "FILE-or-FOLDER...")) {
            assertTrue(help.contains(option), option);
        }
    }

    @Test
    void versionIsThatOfTheBuild() {
        CommandRun run = CommandRun.of("--version");
        assertEquals(0, run.code());
        assertTrue(run.out().matches("loomwright [0-9]+\\.[0-9]+\\.[0-9]+\\R"), run.out());
    }

    @Test
    void withoutCommandTheHelpIsShown() {
        CommandRun run = CommandRun.of();
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("Usage: loomwright "), run.err());
        assertTrue(run.err().contains("loomwright: no command given"), run.err());
    }

    @Test
    void unknownCommandNamesTheOnesThereAre() {
        CommandRun run = CommandRun.of("frob", "x.vehicle");
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(2, run.messages().size());
        assertTrue(run.messages().get(0).matches("loomwright: there is no command frob; there are check, .*bom, cables.*"),
                run.err());
        assertEquals("Try 'loomwright --help'.", run.messages().get(1));
    }

    @Test
    void unknownOption() {
        assertWrong("unknown option: '--frob'", "loomwright check", "check", "--frob", "x.vehicle");
    }

    @Test
    void missingFileArgument() {
        assertWrong("missing required parameter: 'FILE-or-FOLDER'", "loomwright check", "check");
        assertWrong("missing required parameter: 'FILE'", "loomwright bom", "bom");
    }

    @Test
    void missingValueOfAnOption() {
        assertWrong("missing required parameter for option '--output' (FILE)", "loomwright check", "check", "x.vehicle", "-o");
    }

    @Test
    void oneFileTooMany() {
        assertWrong("'b.vehicle' is one argument too many", "loomwright cables", "cables", "a.vehicle", "b.vehicle");
    }

    @Test
    void unknownWordsNameTheKnownOnes() {
        assertWrong("invalid value for option '--severity': 'bad' is none; expected error, warning or note", "loomwright check",
                "check", "-s", "bad", "x.vehicle");
        assertWrong("invalid value for option '--format': 'yaml' is none; expected text or json", "loomwright check",
                "check", "-f", "yaml", "x.vehicle");
        assertWrong("invalid value for option '--format': 'yaml' is none; expected text, csv, xlsx or json", "loomwright bom",
                "bom", "-f", "yaml", "x.vehicle");
    }
}
