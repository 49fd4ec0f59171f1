// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;

/** Which faults to the structure are no longer cleared without some bonds. */
@FunctionalInterface
interface ClearingLosses {

    /** The faults that were cleared in time with the bonds and are not without them, in the plan's order of conductors. */
    List<LossRow.Uncleared> without(List<Integer> bonds);

    /** Says nothing of faults. */
    static ClearingLosses none() {
        return bonds -> List.of();
    }
}
