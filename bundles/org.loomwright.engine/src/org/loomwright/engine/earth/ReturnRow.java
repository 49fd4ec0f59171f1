// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;

/**
 * How one load returns, in the case in which it draws most, and what the other way would give.
 *
 * @param demand    load, element of the plan
 * @param way       how it returns
 * @param caseName  the case
 * @param currentA  its current, A
 * @param returnV   voltage between its minus and the battery's minus, V
 * @param ownV      of that, what its own current causes, V
 * @param othersV   and what the currents of others cause in what it shares with them, V
 * @param selfOhm   resistance of its way back with the parallel ways, ohm
 * @param sharedOhm resistance that it has in common with the load that moves its minus most, ohm; 0 for none
 * @param sharedWith that load, element of the plan; -1 for none
 * @param sharedV   voltage by which that one moves its minus, V
 * @param path      what it returns through, ids of elements in the direction of the current
 * @param other     the other way; null when it cannot be told
 * @param asked     the practice asks for an own return and it has none
 * @param permitted the structure may take its return
 */
public record ReturnRow(int demand, Way way, String caseName, double currentA, double returnV, double ownV, double othersV,
        double selfOhm, double sharedOhm, int sharedWith, double sharedV, List<String> path, OtherWay other, boolean asked,
        boolean permitted) {
    public ReturnRow {
        path = List.copyOf(path);
    }

    /** How a load returns. */
    public enum Way {
        /** By conductors all the way to a battery. */
        OWN,
        /** Through an earth point into the structure. */
        STRUCTURE,
        /** Through its case into the body it is bolted to. */
        CASE
    }

    /**
     * The same load with the other kind of return.
     *
     * @param way         the other kind
     * @param lengthMm    length of the return conductor then, mm
     * @param sectionMm2  its section, that of the supply, mm2
     * @param copperKg    copper of the return conductor then, kg
     * @param copperNowKg copper of the conductors that carry its return alone now, kg
     * @param returnV     voltage its own current loses in the return then, V
     * @param at          earth point it would take, id; null for a return by conductor
     */
    public record OtherWay(Way way, double lengthMm, double sectionMm2, double copperKg, double copperNowKg, double returnV,
            String at) {

        /** Copper that the other way costs more, kg; negative when it saves. */
        public double moreCopperKg() {
            return copperKg - copperNowKg;
        }
    }
}
