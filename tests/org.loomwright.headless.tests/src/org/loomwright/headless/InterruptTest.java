// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C and faults of the program: a clear message, the right exit code, nothing half-written. */
class InterruptTest {
    @TempDir
    Path temp;
    private Yard yard;
    private Path target;

    @BeforeEach
    void copyYard() throws IOException {
        yard = new Yard(temp);
        target = Files.createDirectories(temp.resolve("results")).resolve("report.txt");
        Files.writeString(target, "old");
    }

    private void assertNothingWritten() throws IOException {
        assertEquals("old", Files.readString(target));
        try (Stream<Path> files = Files.list(target.getParent())) {
            assertEquals(List.of(target), files.toList());
        }
    }

    private static void assertInterrupted(CommandRun run) {
        assertEquals(130, run.code());
        assertEquals("", run.out());
        assertEquals(List.of("loomwright: interrupted; nothing was written"), run.messages());
    }

    @Test
    void interruptBeforeTheWork() throws IOException {
        Interrupt interrupt = new Interrupt();
        interrupt.raise();
        assertInterrupted(CommandRun.with(interrupt, "check", "-o", target, yard.vehicle()));
        assertNothingWritten();
    }

    @Test
    void interruptAtAnyTime() throws IOException {
        AtomicInteger polls = new AtomicInteger();
        Interrupt counting = new Interrupt(() -> polls.incrementAndGet() < 0);
        assertEquals(0, CommandRun.with(counting, "check", "-a", "all", "-o", temp.resolve("count.txt"), yard.vehicle()).code());
        int all = polls.get();
        assertTrue(all > 30, "only asked " + all + " times");
        for (int at = 1; at <= all; at += 1 + all / 23) {
            int last = at;
            AtomicInteger asked = new AtomicInteger();
            Interrupt interrupt = new Interrupt(() -> asked.incrementAndGet() >= last);
            assertInterrupted(CommandRun.with(interrupt, "check", "-a", "all", "-o", target, yard.vehicle()));
            assertInterrupted(CommandRun.with(interrupt, "check", yard.vehicle()));
        }
        assertNothingWritten();
    }

    @Test
    void faultOfTheProgram() throws IOException {
        Interrupt broken = new Interrupt(() -> {
            throw new IllegalStateException("a fault put in by the test");
        });
        CommandRun run = CommandRun.with(broken, "check", "-o", target, yard.vehicle());
        assertEquals(3, run.code());
        assertEquals("", run.out());
        assertTrue(run.messages().get(0).startsWith("loomwright: a fault of the program, not of your files."), run.err());
        assertTrue(run.err().contains("a fault put in by the test"), run.err());
        assertNothingWritten();
    }

    @Test
    void errorsOfTheMachineDoNotEscape() throws IOException {
        Interrupt deep = new Interrupt(() -> {
            throw new StackOverflowError();
        });
        CommandRun run = CommandRun.with(deep, "check", "-o", target, yard.vehicle());
        assertEquals(3, run.code());
        assertTrue(run.messages().get(0).startsWith("loomwright: a fault of the program"), run.err());
        Interrupt full = new Interrupt(() -> {
            throw new OutOfMemoryError();
        });
        run = CommandRun.with(full, "check", "-o", target, yard.vehicle());
        assertEquals(3, run.code());
        assertEquals(1, run.messages().size());
        assertTrue(run.err().startsWith("loomwright: not enough memory for these files"), run.err());
        assertNothingWritten();
    }

    @Test
    void theProcessEndsAsSoonAsTheWorkHasLetGo() throws InterruptedException {
        Interrupt interrupt = new Interrupt();
        Thread ending = new Thread(interrupt::raiseAndWait);
        ending.start();
        while (!interrupt.monitor().isCanceled()) {
            Thread.onSpinWait();
        }
        assertTrue(ending.isAlive());
        interrupt.workDone();
        assertTimeoutPreemptively(Duration.ofSeconds(4), () -> ending.join());
    }
}
