// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * A regulated output by complementarity: constant voltage less droop, or constant current, or off. With the drive
 * u = (set - sensed voltage) / droop it delivers u between 0 and its limit. Where it senses other nodes than its own, the
 * relaxed law holds the voltage at its own terminals and adds the drop to the sense nodes found last.
 */
final class RegulatedPole extends Pole {
    static final int OFF = 0;
    static final int VOLTAGE = 1;
    static final int LIMIT = 2;

    private final double setV;
    private final double droopOhm;
    private final double limitA;
    private final int senseA;
    private final int senseB;
    /** The sense nodes are others than its own, and belong to one live part of the network in the present state. */
    private boolean remote;
    private double dropV;
    private double notedV;
    private final int[] senseSlots = {-1, -1, -1, -1};

    RegulatedPole(int a, int b, double setV, double droopOhm, double limitA, int senseA, int senseB) {
        super(a, b);
        this.setV = setV;
        this.droopOhm = droopOhm;
        this.limitA = limitA;
        this.senseA = senseA;
        this.senseB = senseB;
    }

    int senseA() {
        return senseA;
    }

    int senseB() {
        return senseB;
    }

    double limitA() {
        return limitA;
    }

    /** Says whether the sense nodes can be relied on; else it holds the voltage at its own terminals. */
    void sense(boolean reliable) {
        remote = reliable && (senseA != a || senseB != b);
    }

    void cold() {
        dropV = 0;
    }

    @Override
    void entries(NodalMatrix.Pattern pattern) {
        super.entries(pattern);
        pattern.couple(a, senseA);
        pattern.couple(a, senseB);
        pattern.couple(b, senseA);
        pattern.couple(b, senseB);
    }

    @Override
    void bind(NodalMatrix matrix) {
        super.bind(matrix);
        senseSlots[0] = matrix.slot(a, senseA);
        senseSlots[1] = matrix.slot(a, senseB);
        senseSlots[2] = matrix.slot(b, senseA);
        senseSlots[3] = matrix.slot(b, senseB);
    }

    private double drive(double volt) {
        return (setV + dropV - volt) / droopOhm;
    }

    /** Drive after a share of a step, by the true law. */
    private double trueDrive(double[] x, double[] step) {
        if (!remote) {
            return (setV - voltage(x) - voltage(step)) / droopOhm;
        }
        return (setV - (x[senseA] - x[senseB]) - (step[senseA] - step[senseB])) / droopOhm;
    }

    @Override
    int segmentAt(double volt) {
        double drive = drive(volt);
        return drive <= 0 ? OFF : drive < limitA ? VOLTAGE : LIMIT;
    }

    @Override
    double current(int onSegment, double volt, double leakS) {
        double drive = drive(volt);
        return switch (onSegment) {
            case OFF -> -leakS * droopOhm * drive;
            case VOLTAGE -> -drive;
            default -> -limitA - leakS * droopOhm * (drive - limitA);
        };
    }

    @Override
    double slope(int onSegment, double leakS) {
        return onSegment == VOLTAGE ? 1 / droopOhm : leakS;
    }

    @Override
    void stampTrue(double[] x, double[] leaving, NodalMatrix matrix, double leakS) {
        if (!remote || segment != VOLTAGE) {
            super.stampTrue(x, leaving, matrix, leakS);
            return;
        }
        double delivered = (setV - (x[senseA] - x[senseB])) / droopOhm;
        leaving[a] -= delivered;
        leaving[b] += delivered;
        double siemens = 1 / droopOhm;
        matrix.add(senseSlots[0], siemens);
        matrix.add(senseSlots[1], -siemens);
        matrix.add(senseSlots[2], -siemens);
        matrix.add(senseSlots[3], siemens);
    }

    @Override
    double reach(double[] x, double[] step) {
        double from = drive(voltage(x));
        double to = trueDrive(x, step);
        double slack = SLACK_V / droopOhm;
        return switch (segment) {
            case OFF -> to > slack ? share(from, to, 0) : 1;
            case VOLTAGE -> to < -slack ? share(from, to, 0) : to > limitA + slack ? share(from, to, limitA) : 1;
            default -> to < limitA - slack ? share(from, to, limitA) : 1;
        };
    }

    @Override
    void advance(double[] x, double[] step, double share) {
        if (remote) {
            double drive = (1 - share) * drive(voltage(x)) + share * trueDrive(x, step);
            dropV = drive * droopOhm - setV + voltage(x) + share * voltage(step);
        }
    }

    @Override
    void settle(double[] x) {
        if (remote) {
            dropV = voltage(x) - (x[senseA] - x[senseB]);
        }
    }

    @Override
    void remember() {
        notedV = dropV;
    }

    @Override
    void recall() {
        dropV = notedV;
    }

    @Override
    double mismatch(double[] x) {
        return remote && segment == VOLTAGE ? (voltage(x) - (x[senseA] - x[senseB]) - dropV) / droopOhm : 0;
    }

    /** By how much its voltage is above the point at which it begins to deliver, V. */
    double aboveSetV(double[] x) {
        return -drive(voltage(x)) * droopOhm;
    }

    @Override
    boolean ties() {
        return segment != OFF;
    }

    @Override
    boolean drives() {
        return segment != OFF;
    }
}
