// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

/** Tells a waiting person on standard error what is under way; silent when nobody watches. */
public final class Progress implements AutoCloseable {
    private static final long QUIET_NANOS = 700_000_000L;
    private final Console console;
    private final int total;
    private final long begun = System.nanoTime();
    private int done;
    private int shown;

    /** Progress over so many steps. */
    public Progress(Console console, int total) {
        this.console = console;
        this.total = total;
    }

    /** Begins a step. */
    public void at(String step) {
        done++;
        if (console.showProgress() && System.nanoTime() - begun > QUIET_NANOS) {
            String text = "  " + done + " of " + total + "  " + step;
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
