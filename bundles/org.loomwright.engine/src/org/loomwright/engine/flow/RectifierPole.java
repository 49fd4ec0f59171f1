// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** Conducts from a to b once the voltage exceeds the forward voltage, with a straight slope. */
final class RectifierPole extends Pole {
    static final int BLOCKING = 0;
    static final int CONDUCTING = 1;

    private final double forwardV;
    private final double ohm;

    RectifierPole(int a, int b, double forwardV, double ohm) {
        super(a, b);
        this.forwardV = forwardV;
        this.ohm = ohm;
    }

    @Override
    int segmentAt(double volt) {
        return volt > forwardV ? CONDUCTING : BLOCKING;
    }

    @Override
    double current(int onSegment, double volt, double leakS) {
        return (volt - forwardV) * slope(onSegment, leakS);
    }

    @Override
    double slope(int onSegment, double leakS) {
        return onSegment == CONDUCTING ? 1 / ohm : leakS;
    }

    @Override
    double reach(double[] x, double[] step) {
        double from = voltage(x) - forwardV;
        double to = from + voltage(step);
        if (segment == CONDUCTING) {
            return to < -SLACK_V ? share(from, to, 0) : 1;
        }
        return to > SLACK_V ? share(from, to, 0) : 1;
    }

    /** By how much its voltage is below the point at which it begins to conduct, V. */
    double belowForwardV(double[] x) {
        return forwardV - voltage(x);
    }

    @Override
    boolean ties() {
        return segment == CONDUCTING;
    }
}
