// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.eclipse.emf.common.util.Monitor;
import org.junit.jupiter.api.Test;

/** Progress goes to standard error of a terminal, on long work only, and leaves a clean line. */
class ProgressTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private Progress progress(boolean watched) {
        return new Progress(new Console(new PrintWriter(out), new PrintWriter(err), false, watched), new Interrupt(), 3);
    }

    @Test
    void shortWorkIsSilent() {
        try (Progress progress = progress(true)) {
            progress.at("a.vehicle");
            progress.doing("a.vehicle", 2);
            progress.monitor().worked(1);
        }
        assertEquals("", err.toString());
    }

    @Test
    void longWorkShowsFileAndShareAndClearsTheLine() throws InterruptedException {
        try (Progress progress = progress(true)) {
            progress.at("a.vehicle");
            progress.doing("a.vehicle", 4);
            Monitor monitor = progress.monitor();
            Thread.sleep(800);
            monitor.worked(3);
        }
        assertEquals("", out.toString());
        assertTrue(err.toString().startsWith("\r  1 of 3  a.vehicle  75 %"), err.toString());
        assertTrue(err.toString().endsWith("\r" + " ".repeat(25) + "\r"), err.toString());
    }

    @Test
    void nobodyWatching() throws InterruptedException {
        try (Progress progress = progress(false)) {
            progress.at("a.vehicle");
            progress.doing("a.vehicle", 4);
            Thread.sleep(800);
            progress.monitor().worked(3);
        }
        assertEquals("", err.toString());
    }
}
