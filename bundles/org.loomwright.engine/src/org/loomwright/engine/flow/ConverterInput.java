// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** Input of a converter: takes the power its output gives over the efficiency, and the standby. */
final class ConverterInput extends DemandPole {
    private final RegulatedPole output;
    private final double efficiency;
    private final double standbyW;
    private final int[] slots = {-1, -1, -1, -1};

    ConverterInput(Network.ConverterItem item, RegulatedPole output, double floorV) {
        super(item.inA(), item.inB(), true, floorV);
        this.output = output;
        this.efficiency = item.efficiency();
        this.standbyW = item.standbyW();
    }

    @Override
    void entries(NodalMatrix.Pattern pattern) {
        super.entries(pattern);
        pattern.couple(a, output.a);
        pattern.couple(a, output.b);
        pattern.couple(b, output.a);
        pattern.couple(b, output.b);
    }

    @Override
    void bind(NodalMatrix matrix) {
        super.bind(matrix);
        slots[0] = matrix.slot(a, output.a);
        slots[1] = matrix.slot(a, output.b);
        slots[2] = matrix.slot(b, output.a);
        slots[3] = matrix.slot(b, output.b);
    }

    @Override
    void cold() {
        super.cold();
        setAmount(standbyW);
    }

    private double deliveredA(double[] x) {
        return output.active ? -output.current(output.segment, output.voltage(x), 0) : 0;
    }

    private double powerW(double[] x) {
        return Math.max(0, deliveredA(x) * output.voltage(x)) / efficiency + standbyW;
    }

    /** Change of the input power with the output voltage, W/V. */
    private double powerSlope(double[] x) {
        if (!output.active) {
            return 0;
        }
        return (deliveredA(x) - output.voltage(x) * output.slope(output.segment, 0)) / efficiency;
    }

    /** Change of the current with the power at a voltage, A/W. */
    private double ampsPerWatt(double volt) {
        return atWork(volt) ? 1 / volt : volt / (floorV() * floorV());
    }

    @Override
    void stampTrue(double[] x, double[] leaving, NodalMatrix matrix, double leakS) {
        setAmount(powerW(x));
        super.stampTrue(x, leaving, matrix, leakS);
        double coupling = ampsPerWatt(voltage(x)) * powerSlope(x);
        matrix.add(slots[0], coupling);
        matrix.add(slots[1], -coupling);
        matrix.add(slots[2], -coupling);
        matrix.add(slots[3], coupling);
    }

    @Override
    void advance(double[] x, double[] step, double share) {
        double volt = voltage(x);
        double amps = Math.signum(volt) * (trueSlope(volt) * voltage(step)
                + ampsPerWatt(volt) * powerSlope(x) * output.voltage(step)) * share;
        double before = amount() * Math.abs(ampsPerWatt(volt));
        setAmount(Math.max(0, amount() + share * powerSlope(x) * output.voltage(step)));
        hold(before + amps, volt);
    }

    @Override
    void settle(double[] x) {
        setAmount(powerW(x));
        super.settle(x);
    }

    @Override
    double mismatch(double[] x) {
        double relaxed = current(segment, voltage(x), 0);
        double volt = voltage(x);
        return powerW(x) * ampsPerWatt(volt) - relaxed;
    }
}
