// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;

/**
 * What a protective device has to break and how it stands to its neighbours.
 *
 * @param protector       element of the plan
 * @param loadTerminal    terminal behind which the largest fault lies; -1 when no source reaches the device
 * @param target          what that fault goes to; null without one
 * @param partner         terminal of the return, or body; -1 without one
 * @param breakingA       largest fault current through the device, at its own load terminal, A
 * @param highestV        highest voltage it has to break, V
 * @param breakingVerdict breaking capacity not below the current, rated voltage not below the voltage
 * @param conductorsBelow conductors for which it is the next device
 * @param selectivity     towards each device next upstream
 */
public record DeviceProtection(int protector, int loadTerminal, Fault.Target target, int partner, double breakingA,
        double highestV, Verdict breakingVerdict, List<Integer> conductorsBelow, List<Selectivity> selectivity) {
    public DeviceProtection {
        conductorsBelow = List.copyOf(conductorsBelow);
        selectivity = List.copyOf(selectivity);
    }
}
