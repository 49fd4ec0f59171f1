// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

/** Copper as a conductor. */
public final class Copper {
    /** Temperature coefficient of resistance at 20 degrees Celsius, 1/K (IEC 60028). */
    public static final double ALPHA_PER_K = 0.00393;

    /** Density at 20 degrees Celsius, kg/dm3, which is 1e-6 kg/mm3 (IEC 60028, recalled). */
    public static final double DENSITY_KG_PER_DM3 = 8.89;

    /** Heat capacity of copper, J/(K m) for each mm2 of section (volumetric heat capacity of IEC 60949). */
    public static final double CAPACITY_J_PER_K_M_MM2 = 3.45;

    private Copper() {
    }

    /**
     * Resistance at a temperature over resistance at 20 degrees Celsius: 1 + alpha (T - 20), with the coefficient of IEC 60028.
     *
     * @param temperatureC conductor temperature, degrees Celsius
     */
    public static double factor(double temperatureC) {
        return factor(ALPHA_PER_K, temperatureC);
    }

    /** The same with another coefficient at 20 degrees Celsius, 1/K. */
    public static double factor(double alphaPerK, double temperatureC) {
        return 1 + alphaPerK * (temperatureC - 20);
    }
}
