// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.Monitor;

/** Turns a cancelled monitor into an exception. */
final class Cancelled {
    private Cancelled() {
    }

    /**
     * Goes on unless the person cancelled.
     *
     * @throws CancellationException when the monitor is cancelled
     */
    static void check(Monitor monitor) {
        if (monitor.isCanceled()) {
            throw new CancellationException("check cancelled");
        }
    }
}
