// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.List;

/**
 * What the check says of one load, also when nothing is wrong.
 *
 * @param load      id of the load's device, with the demand's name where the device has several
 * @param caseName  case with the largest drop
 * @param voltageV  voltage at its terminals in that case, everything included, V
 * @param currentA  current in that case, A
 * @param dropV     drop after the definition of the design: both conductors, protectors and joints, V
 * @param dropShare drop over nominal voltage, 0 to 1
 * @param limit     permitted share, 0 to 1
 * @param shares    what the drop consists of, largest first; share in percent of the drop
 * @param sentence  the verdict in one sentence
 */
public record LoadVerdict(String load, String caseName, double voltageV, double currentA, double dropV,
        double dropShare, double limit, List<Cause> shares, String sentence) {
    public LoadVerdict {
        shares = List.copyOf(shares);
    }
}
