// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

/**
 * How one conductor warms and cools, after one equation for steady load, duty, overload and short circuit:
 * {@code C' dT/dt = I^2 R'(T) - (T - Ta) Iz^2 R'(Tmax) / (Tmax - Tref)}, with {@code C' = 3.45 S + 1.9 A} in J/(K m), S and A
 * in mm2, and {@code R'(T) = R20 (1 + alpha (T - 20))}. The loss of heat is the one that the published rating implies: at Iz
 * in the reference ambient the conductor is at Tmax. The equation is linear in T, so every solution here is closed.
 *
 * @param r20OhmPerM    resistance at 20 degrees Celsius, ohm/m, above 0
 * @param sectionMm2    section of the metal, mm2
 * @param insulationMm2 section of the insulation, mm2, 0 when not known (the conductor then warms faster)
 * @param ratedA        rating Iz at the reference ambient, grouping included, A, above 0
 * @param referenceC    ambient of the rating, degrees Celsius
 * @param maxC          conductor temperature of the rating, degrees Celsius, above referenceC
 * @param ambientC      ambient, degrees Celsius
 */
public record ConductorTemperature(double r20OhmPerM, double sectionMm2, double insulationMm2, double ratedA,
        double referenceC, double maxC, double ambientC) {

    /** Heat capacity of insulation, J/(K m) for each mm2 (plastics near those of IEC 60949). */
    private static final double INSULATION_J_PER_K_M_MM2 = 1.9;

    public ConductorTemperature {
        if (!(r20OhmPerM > 0) || !(sectionMm2 > 0) || !(insulationMm2 >= 0) || !(ratedA > 0) || !(maxC > referenceC)
                || Double.isNaN(ambientC)) {
            throw new IllegalArgumentException("a conductor needs resistance, section and rating above 0 and a highest "
                    + "temperature above the reference ambient; got " + r20OhmPerM + " ohm/m, " + sectionMm2 + " mm2, "
                    + insulationMm2 + " mm2 insulation, " + ratedA + " A, " + referenceC + " to " + maxC + " degC, ambient "
                    + ambientC);
        }
    }

    /** Heat capacity, J/(K m). */
    public double capacityJPerKM() {
        return Copper.CAPACITY_J_PER_K_M_MM2 * sectionMm2 + INSULATION_J_PER_K_M_MM2 * insulationMm2;
    }

    /** Heat lost for each kelvin above ambient, W/(K m). */
    public double lossWPerKM() {
        return ratedA * ratedA * r20OhmPerM * Copper.factor(maxC) / (maxC - referenceC);
    }

    /**
     * Temperature after a long time at a current, degrees Celsius; infinite when the rise of resistance outruns the loss of
     * heat.
     */
    public double steadyC(double currentA) {
        double slope = slope(currentA);
        return slope < 0 ? -heat(currentA) / slope : Double.POSITIVE_INFINITY;
    }

    /** Current that holds a temperature in steady state, A; 0 at or below ambient. */
    public double currentA(double temperatureC) {
        double rise = temperatureC - ambientC;
        return rise <= 0 ? 0 : StrictMath.sqrt(rise * lossWPerKM() / (r20OhmPerM * Copper.factor(temperatureC)));
    }

    /** Temperature after so many seconds at a current, from a start temperature, degrees Celsius. */
    public double afterC(double startC, double currentA, double seconds) {
        Phase phase = phase(currentA, seconds);
        return phase.keep() * startC + phase.add();
    }

    /** Seconds at a current until a temperature above the start is reached; infinite when it never is. */
    public double secondsTo(double startC, double targetC, double currentA) {
        if (targetC <= startC) {
            return 0;
        }
        double rate = (heat(currentA) + slope(currentA) * startC) / capacityJPerKM();
        if (rate <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double x = slope(currentA) / capacityJPerKM();
        double reach = x * (targetC - startC) / rate;
        if (reach <= -1) {
            return Double.POSITIVE_INFINITY;
        }
        return x == 0 ? (targetC - startC) / rate : StrictMath.log1p(reach) / x;
    }

    /** One stretch of constant current: T becomes keep T + add. */
    Phase phase(double currentA, double seconds) {
        double x = slope(currentA) * seconds / capacityJPerKM();
        double grown = x == 0 ? 1 : StrictMath.expm1(x) / x;
        return new Phase(x, StrictMath.exp(x), heat(currentA) * seconds / capacityJPerKM() * grown);
    }

    /** Exponent, its exponential and the constant of a stretch. */
    record Phase(double exponent, double keep, double add) {
    }

    /** W/m at 0 degrees Celsius. */
    private double heat(double currentA) {
        return currentA * currentA * r20OhmPerM * Copper.factor(0) + lossWPerKM() * ambientC;
    }

    /** Change of net heat for each kelvin, W/(K m). */
    private double slope(double currentA) {
        return currentA * currentA * r20OhmPerM * Copper.ALPHA_PER_K - lossWPerKM();
    }
}
