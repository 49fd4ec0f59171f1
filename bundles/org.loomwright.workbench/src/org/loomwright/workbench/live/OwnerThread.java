// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

/** The one thread that owns a model; in the workbench that of the display. */
public interface OwnerThread {
    /** Runs an action there after some milliseconds; to be called there. */
    void later(int delayMs, Runnable action);

    /** Runs an action there soon; may be called from any thread. Does nothing once the thread is gone. */
    void post(Runnable action);
}
