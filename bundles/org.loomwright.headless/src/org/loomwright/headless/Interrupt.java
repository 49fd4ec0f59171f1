// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Monitor;

/** What a person's interrupt (Ctrl-C) does: studies are cancelled, and the process ends once they have let go. */
public final class Interrupt {
    /** Exit code after an interrupt, 128 + SIGINT as shells have it. */
    public static final int EXIT_CODE = 130;
    private static final long PATIENCE_SECONDS = 5;
    private final BooleanSupplier alsoRaised;
    private final AtomicBoolean raised = new AtomicBoolean();
    private final CountDownLatch over = new CountDownLatch(1);

    /** An interrupt that nobody raises but the caller. */
    public Interrupt() {
        this(() -> false);
    }

    /** An interrupt that is raised by the caller, or by another part of the program once it answers true. */
    public Interrupt(BooleanSupplier alsoRaised) {
        this.alsoRaised = alsoRaised;
    }

    /** The interrupt of this process. */
    public static Interrupt ofProcess() {
        Interrupt interrupt = new Interrupt();
        Runtime.getRuntime().addShutdownHook(new Thread(interrupt::raiseAndWait, "interrupt"));
        return interrupt;
    }

    /** Raises the interrupt and waits a little for the work to let go: only whole files are written, and left-overs removed. */
    void raiseAndWait() {
        raise();
        try {
            over.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    /** Tells that the work is done and the process may end at once. */
    public void workDone() {
        over.countDown();
    }

    /** Asks everything under way to stop. */
    public void raise() {
        raised.set(true);
    }

    /** A monitor that is cancelled by this interrupt. */
    public Monitor monitor() {
        return new BasicMonitor() {
            @Override
            public boolean isCanceled() {
                return raised.get() || alsoRaised.getAsBoolean() || super.isCanceled();
            }
        };
    }
}
