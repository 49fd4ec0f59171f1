// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.Extreme;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.ProtectionTable;

/**
 * The loop from the sources to a load and back with the least resistance.
 *
 * @param openV voltage before the load is on, V
 * @param ohm   resistance of the loop, ohm
 */
record LoopAtLoad(double openV, double ohm) {

    /** The loop at the plus terminal of a load; null when no conductor brings it its current. */
    static LoopAtLoad of(ProtectionTable table, int terminal) {
        for (ConductorProtection row : table.conductors()) {
            for (Feed feed : row.feeds()) {
                Fault fault = feed.fault(Extreme.LARGEST, Fault.End.FAR, Fault.Target.RETURN);
                if (feed.farTerminal() == terminal && fault != null && fault.wayBack()) {
                    return new LoopAtLoad(fault.openV(), fault.loopOhm());
                }
            }
        }
        return null;
    }
}
