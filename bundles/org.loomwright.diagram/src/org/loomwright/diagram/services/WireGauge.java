// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

/**
 * American wire gauge of a section. ASTM B258 makes the diameter of gauge n 0.005 in x 92^((36 - n) / 39), with n = 0, -1, -2
 * and -3 for 1/0 to 4/0.
 */
public final class WireGauge {
    private static final double MM_PER_INCH = 25.4;
    private static final int LARGEST = -3;
    private static final int SMALLEST = 40;

    private WireGauge() {
    }

    /** Section of a gauge, mm2; 0 to -3 stand for 1/0 to 4/0. */
    public static double sectionMm2(int gauge) {
        double diameterMm = 0.005 * MM_PER_INCH * StrictMath.pow(92, (36 - gauge) / 39.0);
        return StrictMath.PI / 4 * diameterMm * diameterMm;
    }

    /**
     * The gauge whose section is nearest by ratio, for example {@code AWG 10} or {@code AWG 2/0}; with a sign that it is about
     * that, where the section differs by more than rounding.
     *
     * @param sectionMm2 above 0
     */
    public static String of(double sectionMm2) {
        int nearest = LARGEST;
        double least = Double.POSITIVE_INFINITY;
        for (int gauge = LARGEST; gauge <= SMALLEST; gauge++) {
            double ratio = StrictMath.abs(StrictMath.log(sectionMm2 / sectionMm2(gauge)));
            if (ratio < least) {
                least = ratio;
                nearest = gauge;
            }
        }
        String about = least > 0.005 ? "\u2248 AWG " : "AWG ";
        return about + (nearest > 0 ? String.valueOf(nearest) : 1 - nearest + "/0");
    }
}
