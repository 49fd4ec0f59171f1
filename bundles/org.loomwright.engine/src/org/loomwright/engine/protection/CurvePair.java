// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;

/**
 * Fastest and slowest time of a protective device over its current, at one ambient.
 *
 * <ul>
 * <li>Between two gates the time follows a power of the current (a straight line in logarithms; the usual way of drawing
 * time-current curves).
 * <li>Below the first gate of the slowest curve the device may never clear; below the first gate of the fastest curve it
 * never melts.
 * <li>Above the last gate the melting integral I2t is that of the gate: too fast for heat to leave the element.
 * <li>An ambient other than the reference moves both curves along the current by the factor on rated current of the curve's
 * ambient points, on straight lines between them, the nearest point beyond their ends; 1 where none are stated.
 * </ul>
 */
public final class CurvePair {
    private final double ratingA;
    private final Plan.FuseCurve curve;
    private final Gates fastest;
    private final Gates slowest;
    private final double factor;

    private CurvePair(double ratingA, Plan.FuseCurve curve, Gates fastest, Gates slowest, double factor) {
        this.ratingA = ratingA;
        this.curve = curve;
        this.fastest = fastest;
        this.slowest = slowest;
        this.factor = factor;
    }

    /** The curves of a protective device at the reference ambient; empty when it states none, or no rating. */
    public static Optional<CurvePair> of(Plan.Protector protector) {
        return protector.curve() == null || !(protector.ratingA() > 0) ? Optional.empty()
                : of(protector.ratingA(), protector.curve());
    }

    /** The same for a rating and a curve; empty when one of the two curves has no gates. */
    public static Optional<CurvePair> of(double ratingA, Plan.FuseCurve curve) {
        if (curve.fastestTimes().isEmpty() || curve.slowestTimes().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CurvePair(ratingA, curve, Gates.of(curve.fastestTimes(), curve.fastestSeconds()),
                Gates.of(curve.slowestTimes(), curve.slowestSeconds()), 1));
    }

    /** The same device in an ambient, degrees Celsius. */
    public CurvePair at(double ambientC) {
        return new CurvePair(ratingA, curve, fastest, slowest, factorAt(ambientC));
    }

    /** Rated current as stated, A. */
    public double ratingA() {
        return ratingA;
    }

    /** Factor on rated current at this ambient. */
    public double factor() {
        return factor;
    }

    /** Where the curve comes from. */
    public String source() {
        return curve.name() + " (" + curve.source() + ")";
    }

    /** Shortest melting time at a current, s; infinite below the first gate. */
    public double fastestS(double currentA) {
        return fastest.seconds(currentA / (ratingA * factor));
    }

    /** Longest clearing time at a current, s; infinite below the first gate. */
    public double slowestS(double currentA) {
        return slowest.seconds(currentA / (ratingA * factor));
    }

    /** I2t at the shortest melting time, A2s; infinite where it never melts. */
    public double fastestA2s(double currentA) {
        return integral(currentA, fastestS(currentA));
    }

    /** Let-through I2t at the longest clearing time, A2s; infinite where it may never clear. */
    public double slowestA2s(double currentA) {
        return integral(currentA, slowestS(currentA));
    }

    /** Smallest current that clears for certain, A: the conventional operating current I2. */
    public double conventionalA() {
        return slowest.first() * ratingA * factor;
    }

    /** Smallest current at which it can melt at all, A. */
    public double meltingA() {
        return fastest.first() * ratingA * factor;
    }

    /** Currents at the gates of the slowest curve, rising, A. */
    public double[] slowestGatesA() {
        return amps(slowest);
    }

    /** Currents at the gates of the fastest curve, rising, A. */
    public double[] fastestGatesA() {
        return amps(fastest);
    }

    /** Smallest current that the slowest curve clears within a time, A; infinite for a time of 0. */
    public double clearingA(double seconds) {
        return slowest.current(seconds) * ratingA * factor;
    }

    /** Smallest current that the fastest curve melts within a time, A; infinite for a time of 0. */
    public double meltingA(double seconds) {
        return fastest.current(seconds) * ratingA * factor;
    }

    private static double integral(double currentA, double seconds) {
        return Double.isInfinite(seconds) ? seconds : currentA * currentA * seconds;
    }

    private double[] amps(Gates gates) {
        double[] at = gates.times();
        for (int i = 0; i < at.length; i++) {
            at[i] *= ratingA * factor;
        }
        return at;
    }

    private double factorAt(double ambientC) {
        List<Double> at = curve.factorAmbientsC();
        List<Double> factors = curve.factors();
        if (at.isEmpty()) {
            return 1;
        }
        int i = 0;
        while (i < at.size() && at.get(i) < ambientC) {
            i++;
        }
        if (i == 0 || i == at.size()) {
            return factors.get(i == 0 ? 0 : i - 1);
        }
        double share = (ambientC - at.get(i - 1)) / (at.get(i) - at.get(i - 1));
        return factors.get(i - 1) + share * (factors.get(i) - factors.get(i - 1));
    }
}
