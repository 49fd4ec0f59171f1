// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * A law between two nodes: the current from a to b as a function of the voltage from a to b.
 *
 * <p>Each law has two forms. The relaxed one never falls with the voltage and is made of straight segments, so that a network of
 * relaxed laws has exactly one solution: what a power load draws, say, is held up to a knee. The true one is the law itself.
 * {@link #settle} and {@link #advance} bring the relaxed form onto the true one at the present voltage.
 *
 * <p>Flat segments are given a leakage, so that no part of a network is without potential while it is sought.
 */
abstract class Pole {
    /** Leakage of flat segments while a solution is sought, S; the accepted solution is without it. */
    static final double LEAK_S = 1e-10;
    /** Voltage by which a law may lie beyond the end of its segment, V: rounding of potentials. */
    static final double SLACK_V = 1e-13;

    final int a;
    final int b;
    /** Takes part in the present state. */
    boolean active = true;
    /** Segment of the relaxed law at the present solution. */
    int segment;

    private int slotAA;
    private int slotAB;
    private int slotBA;
    private int slotBB;

    Pole(int a, int b) {
        this.a = a;
        this.b = b;
    }

    /** Announces the matrix entries needed besides those of the own nodes. */
    void entries(NodalMatrix.Pattern pattern) {
        pattern.couple(a, b);
    }

    /** Looks up the matrix entries. */
    void bind(NodalMatrix matrix) {
        slotAA = matrix.slot(a, a);
        slotAB = matrix.slot(a, b);
        slotBA = matrix.slot(b, a);
        slotBB = matrix.slot(b, b);
    }

    final double voltage(double[] x) {
        return x[a] - x[b];
    }

    /** Segment of the relaxed law at a voltage. */
    abstract int segmentAt(double volt);

    /** Current of the relaxed law on a segment, continued straight, A. */
    abstract double current(int onSegment, double volt, double leakS);

    /** Slope of the relaxed law on a segment, S, never below zero. */
    abstract double slope(int onSegment, double leakS);

    /** Adds the relaxed law to currents leaving the nodes and to the matrix. */
    final void stampRelaxed(double[] x, double[] leaving, NodalMatrix matrix) {
        double amps = current(segment, voltage(x), LEAK_S);
        leaving[a] += amps;
        leaving[b] -= amps;
        stamp(matrix, slope(segment, LEAK_S));
    }

    /** Adds the tangent of the true law on the present segment to currents leaving the nodes and to the matrix. */
    void stampTrue(double[] x, double[] leaving, NodalMatrix matrix, double leakS) {
        double amps = current(segment, voltage(x), leakS);
        leaving[a] += amps;
        leaving[b] -= amps;
        stamp(matrix, slope(segment, LEAK_S));
    }

    /** Adds a conductance between the nodes to the matrix. */
    final void stamp(NodalMatrix matrix, double siemens) {
        matrix.add(slotAA, siemens);
        matrix.add(slotAB, -siemens);
        matrix.add(slotBA, -siemens);
        matrix.add(slotBB, siemens);
    }

    /** Largest share, up to 1, of a step for which the tangent of the true law stays on its segment. */
    double reach(double[] x, double[] step) {
        return 1;
    }

    /** Brings the relaxed law to the true one's tangent after a share of a step that has not been taken yet. */
    void advance(double[] x, double[] step, double share) {
    }

    /** Brings the relaxed law to the true one at the present voltage. */
    void settle(double[] x) {
    }

    /** Notes what {@link #settle} and {@link #advance} change. */
    void remember() {
    }

    /** Goes back to what was noted last. */
    void recall() {
    }

    /** Current by which the true law differs from the relaxed one, A. */
    double mismatch(double[] x) {
        return 0;
    }

    /** Whether it conducts on its segment with a slope, so that it ties potentials together. */
    boolean ties() {
        return true;
    }

    /** Whether it can drive current by itself. */
    boolean drives() {
        return false;
    }

    /** Share of the way from one figure to another, beyond the first by the allowed slack, at which a bound is met. */
    static double share(double from, double to, double bound) {
        double way = to - from;
        return way == 0 ? 1 : Math.min(1, Math.max(0, (bound - from) / way));
    }
}
