// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import org.loomwright.engine.heat.Copper;

/**
 * Conductors of one section and one duty; a cable with two cores has twice its length.
 *
 * @param sectionMm2 section, mm2
 * @param duty       what they are there for
 * @param conductorM length of all of them together, m
 */
public record CopperRow(double sectionMm2, CopperDuty duty, double conductorM) {
    /** Volume of the copper, dm3. */
    public double copperDm3() {
        return sectionMm2 * conductorM * 1e-3;
    }

    /** Mass of the copper, kg. */
    public double copperKg() {
        return copperDm3() * Copper.DENSITY_KG_PER_DM3;
    }
}
