// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

/**
 * Short circuits of copper, no heat lost: {@code S = sqrt(I^2 t) / k} (IEC 60364-5-54), with
 * {@code k = 226 sqrt(ln((234.5 + Tend) / (234.5 + Tstart)))} (IEC 60949); k is 115 from 70 to 160 degrees Celsius.
 */
public final class Adiabatic {
    private Adiabatic() {
    }

    /**
     * Factor k, A s^0.5 / mm2.
     *
     * @param startC conductor temperature before, degrees Celsius
     * @param endC   highest permitted conductor temperature, degrees Celsius; 0 comes back when it is not above the start
     */
    public static double k(double startC, double endC) {
        return endC <= startC ? 0 : 226 * StrictMath.sqrt(StrictMath.log((234.5 + endC) / (234.5 + startC)));
    }

    /** Smallest section that withstands a current for a time, mm2. */
    public static double sectionMm2(double currentA, double seconds, double k) {
        return currentA * StrictMath.sqrt(seconds) / k;
    }

    /** Current squared times time that a section withstands, A2 s. */
    public static double withstandA2s(double sectionMm2, double k) {
        return k * k * sectionMm2 * sectionMm2;
    }
}
