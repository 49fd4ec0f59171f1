// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** The test's own thread as the owner of models, without a display: actions wait until the test takes them. */
public final class QueueThread implements OwnerThread {
    private final BlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();
    private final List<Runnable> delayed = new ArrayList<>();

    @Override
    public void later(int delayMs, Runnable action) {
        delayed.add(action);
    }

    @Override
    public void post(Runnable action) {
        posted.add(action);
    }

    /** Runs what was to be run after a while. */
    public void elapse() {
        List<Runnable> due = List.copyOf(delayed);
        delayed.clear();
        due.forEach(Runnable::run);
    }

    /** Runs what others post until something is so; false after a minute. */
    public boolean until(BooleanSupplier reached) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(1);
        while (!reached.getAsBoolean()) {
            if (System.nanoTime() > end) {
                return false;
            }
            Runnable next = posted.poll(20, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
        }
        return true;
    }

    /** Runs what is posted within some milliseconds. */
    public void settle(int ms) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(ms);
        until(() -> System.nanoTime() > end);
    }
}
