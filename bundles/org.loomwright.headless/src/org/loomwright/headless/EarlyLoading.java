// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import org.loomwright.model.vehicle.VehiclePackage;

/**
 * Sets up the metamodel beside the reading of the arguments: it takes a tenth of the time of a short command, and nothing else
 * keeps a second processor busy then. Nobody may use the metamodel before {@link #await()}: its packages need each other, and two
 * threads that set up one each would wait for each other for ever.
 */
final class EarlyLoading {
    private final Thread thread = new Thread(EarlyLoading::load, "early loading");

    private EarlyLoading() {
        thread.setDaemon(true);
    }

    /** Begins. */
    static EarlyLoading begin() {
        EarlyLoading early = new EarlyLoading();
        early.thread.start();
        return early;
    }

    /** Waits for the end; an interrupt is kept for whoever looks next. */
    void await() {
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException kept) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void load() {
        try {
            VehiclePackage.eINSTANCE.getName();
        } catch (LinkageError | RuntimeException reportedByItsUser) {
            // the same comes up where the class is used, with a message
        }
    }
}
