// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A copy of the yard to be spoiled, and what its check then has to say: one line for each fault, exit code 2, no report. */
abstract class SpoiledYard {
    static final String LIBRARIES = "libraries=\"parts/yard.parts#/\"";
    @TempDir
    Path temp;
    Yard yard;
    Path vehicle;

    @BeforeEach
    void copyYard() {
        yard = new Yard(temp);
        vehicle = yard.vehicle();
    }

    /** Checks the vehicle and compares every line of standard error. */
    final void assertFaults(String... lines) {
        CommandRun run = CommandRun.of("check", vehicle);
        List<String> expected = new ArrayList<>(List.of(lines));
        expected.add("loomwright: " + lines.length + (lines.length == 1 ? " fault" : " faults")
                + " in the files; nothing was analysed");
        assertEquals(String.join("\n", expected), String.join("\n", run.messages()));
        assertEquals(2, run.code());
        assertEquals("", run.out());
    }

    /** Spoils the vehicle's text at the mark and expects one fault there. */
    final void assertFault(String old, String marked, String message) {
        assertFaults(yard.edit(vehicle, old, marked) + " " + message);
    }

    final void assertOnlyFaultBegins(String begin) {
        CommandRun run = CommandRun.of("check", vehicle);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(2, run.messages().size(), run.err());
        assertTrue(run.messages().get(0).startsWith(begin), run.err());
        assertEquals("loomwright: 1 fault in the files; nothing was analysed", run.messages().get(1));
    }
}
