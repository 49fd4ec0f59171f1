// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * A conductor that warms. With x = (Tmax - Tref) (I / Iz)^2 / (1 + alpha (Tmax - 20)) the steady temperature of
 * {@link Network.WireHeat} has the closed form T = (Ta + x (1 - 20 alpha)) / (1 - alpha x), hence
 * R = R20 (1 + alpha (Ta - 20)) / (1 - alpha x). From alpha x = 1 on there is no steady temperature: thermal runaway.
 * Temperatures are cut at a stated highest one.
 */
final class WirePole extends OhmicPole {
    /** Steps after which the working point may jump beyond the current of the highest temperature. */
    private static final int CAREFUL_STEPS = 12;

    private final Network.WireHeat heat;
    private final double r20Ohm;
    private final double jointsOhm;
    private final double smallestOhm;
    private final double highestC;
    private final double perSquareAmpK;
    private final double highestA;
    private double workingA;
    private double temperatureC;
    private double resistanceOhm;
    private int steps;

    WirePole(Network.Wire wire, FlowOptions options) {
        super(wire.a(), wire.b(), Math.max(options.smallestOhm(), wire.r20Ohm() + wire.jointsOhm()));
        heat = options.temperatureFeedback() ? wire.heat() : null;
        r20Ohm = wire.r20Ohm();
        jointsOhm = wire.jointsOhm();
        smallestOhm = options.smallestOhm();
        highestC = options.highestC();
        if (heat == null) {
            perSquareAmpK = 0;
            highestA = Double.POSITIVE_INFINITY;
        } else {
            perSquareAmpK = (heat.maxC() - heat.referenceC()) / (heat.ratedA() * heat.ratedA())
                    / (1 + heat.alphaPerK() * (heat.maxC() - 20));
            // T = highest solved for x: x (1 - 20 alpha + alpha highest) = highest - Ta
            highestA = Math.sqrt(Math.max(0, highestC - heat.ambientC())
                    / (1 + heat.alphaPerK() * (highestC - 20)) / perSquareAmpK);
        }
        cold();
    }

    /** Back to no current. */
    void cold() {
        steps = 0;
        workAt(0);
        plain();
    }

    boolean warms() {
        return heat != null;
    }

    double temperatureC() {
        return temperatureC;
    }

    /**
     * Moves the working point to the present current and lays the tangent of the true law, voltage as a function of current,
     * there (Newton's method in the current).
     *
     * @return relative change of the resistance
     */
    double relinearise(double amps) {
        double before = resistanceOhm;
        double magnitude = Math.abs(amps);
        // the tangent overshoots to the right of a convex law; halving the way to its end keeps it from going round in circles
        boolean overshoot = steps > 0 && steps < CAREFUL_STEPS && Math.abs(workingA) < highestA && magnitude >= highestA;
        double at = overshoot ? (Math.abs(workingA) + highestA) / 2 : magnitude;
        steps++;
        workAt(Math.copySign(at, amps));
        double x = perSquareAmpK * workingA * workingA;
        double differential = resistanceOhm + jointsOhm;
        if (Math.abs(workingA) < highestA) {
            differential += resistanceOhm * 2 * heat.alphaPerK() * x / (1 - heat.alphaPerK() * x);
        }
        differential = Math.max(smallestOhm, differential);
        siemens = 1 / differential;
        emfV = workingA * (Math.max(smallestOhm, resistanceOhm + jointsOhm) - differential);
        return Math.max(Math.abs(resistanceOhm - before), Math.abs(magnitude - at) * resistanceOhm / Math.max(1, at))
                / Math.max(smallestOhm, before);
    }

    /** A plain resistance at the temperature of the working point. */
    void plain() {
        siemens = 1 / Math.max(smallestOhm, resistanceOhm + jointsOhm);
        emfV = 0;
    }

    private void workAt(double amps) {
        workingA = amps;
        if (heat == null) {
            temperatureC = 20;
        } else if (Math.abs(amps) >= highestA) {
            temperatureC = highestC;
        } else {
            double x = perSquareAmpK * amps * amps;
            temperatureC = Math.min(highestC,
                    (heat.ambientC() + x * (1 - 20 * heat.alphaPerK())) / (1 - heat.alphaPerK() * x));
        }
        resistanceOhm = r20Ohm * (heat == null ? 1 : 1 + heat.alphaPerK() * (temperatureC - 20));
    }
}
