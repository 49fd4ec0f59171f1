// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

/**
 * Conductors of one section and one duty; a cable with two cores has twice its length.
 *
 * @param sectionMm2 section, mm2
 * @param duty       what they are there for
 * @param conductorM length of all of them together, m
 */
public record CopperRow(double sectionMm2, CopperDuty duty, double conductorM) {
    /** Density of annealed copper at 20 degrees Celsius, kg/dm3 (IEC 60028). */
    public static final double DENSITY_KG_PER_DM3 = 8.89;

    /** Volume of the copper, dm3. */
    public double copperDm3() {
        return sectionMm2 * conductorM * 1e-3;
    }

    /** Mass of the copper, kg. */
    public double copperKg() {
        return copperDm3() * DENSITY_KG_PER_DM3;
    }
}
