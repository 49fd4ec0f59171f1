// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * An EMF that takes current through a larger resistance than it gives it: two straight segments that meet at no current. The
 * current never falls with the voltage, so the law has one solution, like that of a rectifier.
 */
final class EmfPole extends Pole {
    static final int GIVING = 0;
    static final int TAKING = 1;

    private final double emfV;
    private final double giveS;
    private final double takeS;

    EmfPole(int a, int b, double emfV, double ohm, double chargeOhm) {
        super(a, b);
        this.emfV = emfV;
        giveS = 1 / ohm;
        takeS = 1 / chargeOhm;
    }

    @Override
    int segmentAt(double volt) {
        return volt > emfV ? TAKING : GIVING;
    }

    @Override
    double current(int onSegment, double volt, double leakS) {
        return slope(onSegment, leakS) * (volt - emfV);
    }

    @Override
    double slope(int onSegment, double leakS) {
        return onSegment == TAKING ? takeS : giveS;
    }

    @Override
    double reach(double[] x, double[] step) {
        double from = voltage(x) - emfV;
        double to = from + voltage(step);
        if (segment == TAKING) {
            return to < -SLACK_V ? share(from, to, 0) : 1;
        }
        return to > SLACK_V ? share(from, to, 0) : 1;
    }

    @Override
    boolean drives() {
        return true;
    }
}
