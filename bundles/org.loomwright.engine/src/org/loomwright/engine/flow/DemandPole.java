// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * Something that takes constant power or constant current, the same whichever way round it is connected. Below a floor voltage
 * it is a resistance that meets the law at the floor. The relaxed law takes at most the current held, which is that of the
 * true law at the voltage found last: from the unloaded network downwards the current held grows and the voltages fall towards
 * the solution with the highest voltages.
 */
class DemandPole extends Pole {
    /** Conductance of the meter that tells a supply from a leakage, S. */
    private static final double METER_S = 1e-6;

    private final boolean power;
    private final double floorV;
    private double amount;
    private double heldA;
    private double probeS;
    private double notedA;
    private double notedAmount;
    private double unloadedV;

    /**
     * @param power  constant power, else constant current
     * @param floorV floor voltage, above 0 V
     */
    DemandPole(int a, int b, boolean power, double floorV) {
        super(a, b);
        this.power = power;
        this.floorV = floorV;
    }

    /** Sets watts or amperes, 0 or above. */
    final void setAmount(double newAmount) {
        amount = newAmount;
    }

    final double amount() {
        return amount;
    }

    /** Draws nothing yet but what a meter would. */
    void cold() {
        heldA = 0;
        probeS = METER_S;
    }

    /** Notes the voltage found while nothing is drawn. */
    final void noteUnloaded(double[] x) {
        unloadedV = voltage(x);
        probeS = 0;
    }

    /** Voltage while nothing is drawn, V. */
    final double unloadedV() {
        return unloadedV;
    }

    final double floorV() {
        return floorV;
    }

    /** There is a voltage without load, but not enough with it. */
    final boolean resting(double[] x) {
        return active && amount > 0 && Math.abs(unloadedV) > floorV && Math.abs(voltage(x)) < floorV;
    }

    /** The true law holds at this voltage, not its continuation. */
    final boolean atWork(double volt) {
        return Math.abs(volt) >= floorV;
    }

    private double floorS() {
        return power ? amount / (floorV * floorV) : amount / floorV;
    }

    private double trueA(double magnitude) {
        return magnitude < floorV ? floorS() * magnitude : power ? amount / magnitude : amount;
    }

    @Override
    final int segmentAt(double volt) {
        if (heldA > 0 && floorS() * Math.abs(volt) <= heldA) {
            return 0;
        }
        return volt < 0 ? -1 : 1;
    }

    @Override
    final double current(int onSegment, double volt, double leakS) {
        return (onSegment == 0 ? floorS() * volt : onSegment * heldA) + (leakS + probeS) * volt;
    }

    @Override
    final double slope(int onSegment, double leakS) {
        return leakS + probeS + (onSegment == 0 ? floorS() : 0);
    }

    @Override
    void stampTrue(double[] x, double[] leaving, NodalMatrix matrix, double leakS) {
        double volt = voltage(x);
        double amps = Math.copySign(trueA(Math.abs(volt)), volt) + leakS * volt;
        leaving[a] += amps;
        leaving[b] -= amps;
        stamp(matrix, trueSlope(volt) + LEAK_S);
    }

    /** Slope of the true law, S: below zero for constant power. */
    final double trueSlope(double volt) {
        return !atWork(volt) ? floorS() : power ? -amount / (volt * volt) : 0;
    }

    @Override
    double reach(double[] x, double[] step) {
        double from = voltage(x);
        double to = from + voltage(step);
        if (amount == 0) {
            return 1;
        }
        if (from < 0) {
            from = -from;
            to = -to;
        }
        if (from >= floorV) {
            return to < floorV ? share(from, to, floorV) : 1;
        }
        return to > floorV ? share(from, to, floorV) : to < -floorV ? share(from, to, -floorV) : 1;
    }

    @Override
    void advance(double[] x, double[] step, double share) {
        double volt = voltage(x);
        hold(trueA(Math.abs(volt)) + share * trueSlope(volt) * voltage(step) * Math.signum(volt), volt);
    }

    /** As {@link #settle}, but goes a multiple of the way. */
    final void plunge(double[] x, double multiple) {
        double before = heldA;
        settle(x);
        hold(before + multiple * (heldA - before), voltage(x));
    }

    @Override
    final void remember() {
        notedA = heldA;
        notedAmount = amount;
    }

    @Override
    final void recall() {
        heldA = notedA;
        amount = notedAmount;
    }

    /** Holds a current, within what the law can take. */
    final void hold(double amps, double volt) {
        double most = floorS() * floorV;
        heldA = atWork(volt) ? Math.min(most, Math.max(0, amps)) : most;
    }

    /**
     * As {@link #settle}, but holds at least what the tangent foretells after a share of a step: both stay below the current of
     * the solution sought, so the larger is nearer.
     */
    final void raise(double[] x, double[] step, double share) {
        if (!active) {
            return;
        }
        double foretold = 0;
        if (share > 0) {
            advance(x, step, share);
            foretold = heldA;
        }
        settle(x);
        hold(Math.max(heldA, foretold), voltage(x));
    }

    @Override
    void settle(double[] x) {
        double volt = voltage(x);
        hold(trueA(Math.abs(volt)), volt);
    }

    @Override
    double mismatch(double[] x) {
        double volt = voltage(x);
        return Math.copySign(trueA(Math.abs(volt)), volt) - current(segment, volt, 0);
    }
}
