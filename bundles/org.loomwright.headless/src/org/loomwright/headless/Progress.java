// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Monitor;

/** Tells a waiting person on standard error what is under way; silent when nobody watches, and on short work. */
public final class Progress implements AutoCloseable {
    private static final long QUIET_NANOS = 700_000_000L;
    private static final long BETWEEN_NANOS = 100_000_000L;
    private final Console console;
    private final Interrupt interrupt;
    private final int total;
    private final long begun = System.nanoTime();
    private long last;
    private int done;
    private String step = "";
    private int parts;
    private int partsDone;
    private int shown;

    /** Progress over so many steps, which an interrupt stops. */
    public Progress(Console console, Interrupt interrupt, int total) {
        this.console = console;
        this.interrupt = interrupt;
        this.total = total;
    }

    /** Begins a step of unknown length. */
    public void at(String name) {
        done++;
        step = name;
        parts = 0;
        show();
    }

    /** Says what the step does now, and in how many parts; each part is told to the {@link #monitor()}. */
    public void doing(String name, int howManyParts) {
        step = name;
        parts = howManyParts;
        partsDone = 0;
        show();
    }

    /** A monitor for the work: counts its parts, and is cancelled by the interrupt. */
    public Monitor monitor() {
        Monitor cancelled = interrupt.monitor();
        return new BasicMonitor() {
            @Override
            public boolean isCanceled() {
                return cancelled.isCanceled() || super.isCanceled();
            }

            @Override
            public void worked(int work) {
                partsDone += work;
                show();
            }
        };
    }

    private void show() {
        long now = System.nanoTime();
        if (console.showProgress() && now - begun > QUIET_NANOS && (shown == 0 || now - last > BETWEEN_NANOS)) {
            last = now;
            String text = "  " + done + " of " + total + "  " + step
                    + (parts > 0 ? "  " + StrictMath.min(100, 100 * partsDone / parts) + " %" : "");
            console.err().print("\r" + text + " ".repeat(StrictMath.max(0, shown - text.length())));
            console.err().flush();
            shown = text.length();
        }
    }

    /** Clears the line. */
    @Override
    public void close() {
        if (shown > 0) {
            console.err().print("\r" + " ".repeat(shown) + "\r");
            console.err().flush();
        }
    }
}
