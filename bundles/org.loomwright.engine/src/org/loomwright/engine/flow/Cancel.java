// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.Monitor;

/** Asks a monitor whether to go on. */
record Cancel(Monitor monitor) {

    /** Throws {@link CancellationException} once the monitor is cancelled. */
    void poll() {
        if (monitor.isCanceled()) {
            throw new CancellationException("operating point cancelled");
        }
    }
}
