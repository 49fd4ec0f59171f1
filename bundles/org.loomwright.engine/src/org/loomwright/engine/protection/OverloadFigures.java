// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/**
 * What the overload conditions (a) and (b) are judged by.
 *
 * @param protector      device with the largest rating next before the conductor; -1 without one
 * @param inA            its rated current, or the conductor's share of it for a return in a mesh, A
 * @param ratio          largest permitted ratio r of rated current to rating
 * @param ratioLimit     name of the practice's limit that gives it
 * @param izA            smallest corrected rating of the conductor, with cores in parallel, A; NaN when not known
 * @param i2A            smallest current that the device clears for certain, coldest ambient, the conductor's share, A; NaN
 *                       without a curve
 * @param steadyBelowC   temperature of the conductor in the hottest ambient after a long time just below I2, degrees Celsius
 * @param overloadFactor largest permitted ratio of I2 to rating
 */
public record OverloadFigures(int protector, double inA, double ratio, String ratioLimit, double izA, double i2A,
        double steadyBelowC, double overloadFactor) {

    /** Condition (a): In up to r Iz. */
    public Verdict ratingVerdict() {
        if (protector < 0) {
            return Verdict.NO_DEVICE;
        }
        return Double.isNaN(izA) || Double.isNaN(inA) ? Verdict.UNKNOWN : Verdict.of(inA <= ratio * izA * (1 + 1e-9));
    }

    /** Condition (b): I2 up to 1.45 Iz, or what the practice says instead. */
    public Verdict overloadVerdict() {
        if (protector < 0) {
            return Verdict.NO_DEVICE;
        }
        return Double.isNaN(izA) || Double.isNaN(i2A) ? Verdict.UNKNOWN : Verdict.of(i2A <= overloadFactor * izA * (1 + 1e-9));
    }
}
