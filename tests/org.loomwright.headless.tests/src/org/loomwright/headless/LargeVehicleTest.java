// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Vehicles far larger than any real one are analysed as well, only slower. */
class LargeVehicleTest {
    private static final long MB = 1_000_000;
    @TempDir
    Path temp;

    @Test
    void twoThousandLoadsAreSolved() {
        LargeVehicle large = new LargeVehicle(2000, 0);
        CommandRun run = CommandRun.of("check", "-f", "json", large.write(temp));
        assertEquals("", run.err());
        assertEquals(0, run.code());
        JsonNode vehicle = Schemas.parsed(run.out()).get("vehicles").get(0);
        assertEquals(0, vehicle.get("findings").size());
        Set<String> names = new HashSet<>();
        double amps = 0;
        for (JsonNode load : vehicle.get("loads")) {
            names.add(load.get("load").asText());
            amps += load.get("currentA").asDouble();
            assertTrue(load.get("voltageV").asDouble() > 11 && load.get("voltageV").asDouble() < 13, load.toString());
            assertTrue(load.get("dropV").asDouble() > 0, load.toString());
        }
        assertEquals(2000, names.size());
        // 18 A are divided equally among all loads
        assertEquals(18, amps, 1e-6);
    }

    @Test
    void aFileOfFiftyMegabytesIsAnalysed() throws IOException {
        LargeVehicle large = new LargeVehicle(1000, 17_200);
        Path file = large.write(temp);
        assertTrue(Files.size(file) > 50 * MB, Files.size(file) + " bytes");
        CommandRun run = CommandRun.of("check", file);
        assertEquals("", run.err());
        assertEquals(0, run.code());
        List<String> lines = run.out().lines().toList();
        assertEquals("  no arrangement, practice common, 12 V, 1000 loads, " + large.cables() + " cables, 6 cases", lines.get(1));
        assertEquals("  0 errors, 0 warnings", lines.get(2));
        assertEquals(1000, lines.stream().filter(line -> line.startsWith("    -B")).count());
    }

    @Test
    void everyLoadOfALargeVehicleIsListed() {
        LargeVehicle large = new LargeVehicle(2000, 0);
        Path file = large.write(temp);
        List<String> lines = CommandRun.of("cables", "-f", "csv", file).out().lines().toList();
        assertEquals(1 + large.cables(), lines.size());
        assertEquals(0, CommandRun.of("bom", file).code());
    }

    @Test
    void interruptFromAnotherThreadEndsLongWorkSoon() throws Exception {
        Path file = new LargeVehicle(2000, 0).write(temp);
        Path target = Files.writeString(temp.resolve("report.txt"), "old");
        CountDownLatch working = new CountDownLatch(20);
        Interrupt interrupt = new Interrupt(() -> {
            working.countDown();
            return false;
        });
        Thread person = new Thread(() -> {
            try {
                assertTrue(working.await(2, TimeUnit.MINUTES));
                interrupt.raise();
            } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
            }
        });
        person.start();
        CommandRun run = CommandRun.with(interrupt, "check", "-o", target, file);
        person.join();
        assertEquals(130, run.code());
        assertEquals(List.of("loomwright: interrupted; nothing was written"), run.messages());
        assertEquals("old", Files.readString(target));
        assertFalse(run.err().contains("\tat "));
    }
}
