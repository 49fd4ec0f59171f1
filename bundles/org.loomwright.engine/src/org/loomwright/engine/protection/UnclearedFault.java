// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;

/**
 * A fault that the device on its way does not clear within the practice's time, with what makes its loop resistance too high; or
 * one to the own return that no current can flow to.
 *
 * @param fault     the fault, smallest current, far end
 * @param protector device that should clear it; -1 when there is none before a return without a way back
 * @param neededA   current at which that device clears in time, A; NaN without one or without its curve
 * @param limitS    time permitted, s
 * @param shares    what the loop consists of, most heat first
 * @param culprit   strap, earth point, seam or case that takes most; if without it alone the current would be enough, or if it
 *                  takes more than any conductor; else the conductor or contact that takes most; null where no current flows
 */
public record UnclearedFault(Fault fault, int protector, double neededA, double limitS, List<LoopShare> shares,
        LoopShare culprit) {
    public UnclearedFault {
        shares = List.copyOf(shares);
    }

    static UnclearedFault of(Fault fault, int protector, double neededA, double limitS, FaultFlow flow) {
        List<LoopShare> shares = flow.shares();
        LoopShare structure = null;
        for (LoopShare share : shares) {
            if (structure == null && share.branch().kind().structure()) {
                structure = share;
            }
        }
        LoopShare culprit = shares.isEmpty() ? null : shares.get(0);
        if (structure != null && structure != culprit) {
            double without = fault.openV() / (fault.loopOhm() * (1 - structure.share()));
            culprit = without >= neededA ? structure : culprit;
        }
        return new UnclearedFault(fault, protector, neededA, limitS, shares, culprit);
    }
}
