// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

/** Limits of clearing. */
final class FaultClearing {
    static final String TIME = "fault-clears.time";

    private FaultClearing() {
    }
}
