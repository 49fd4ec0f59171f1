// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * A conductor that warms. With x = (Tmax - Tref) (I / Iz)^2 / (1 + alpha (Tmax - 20)) the steady temperature of
 * {@link Network.WireHeat} has the closed form T = (Ta + x (1 - 20 alpha)) / (1 - alpha x), hence
 * R = R20 (1 + alpha (Ta - 20)) / (1 - alpha x). From alpha x = 1 on there is no steady temperature: thermal runaway.
 * Temperatures are cut at a stated highest one.
 */
final class WirePole extends OhmicPole {
    /** Moves of the working point after which it may jump beyond the current of the highest temperature. */
    private static final int CAREFUL_MOVES = 12;
    /** Largest slope assumed of a conductor's resistance against itself by way of its current. */
    private static final double STEEPEST = 0.9;

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
    private int moves;
    private double lastOhm;
    private double lastCalledOhm;

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
        moves = 0;
        workingA = 0;
        temperatureC = celsius(0);
        resistanceOhm = ohm(temperatureC);
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
     * there (Newton's method in the current). Fast, but at a current far too large the tangent is so steep that loads behind
     * the conductor may seem to have no solution.
     *
     * @return relative change of the resistance
     */
    double relinearise(double amps) {
        double before = resistanceOhm;
        double magnitude = Math.abs(amps);
        // the tangent overshoots to the right of a convex law; halving the way to its end keeps it from going round in circles
        boolean overshoot = moves > 0 && moves < CAREFUL_MOVES && Math.abs(workingA) < highestA && magnitude >= highestA;
        double at = overshoot ? (Math.abs(workingA) + highestA) / 2 : magnitude;
        moves++;
        workingA = Math.copySign(at, amps);
        temperatureC = celsius(at);
        resistanceOhm = ohm(temperatureC);
        double differential = Math.max(smallestOhm, resistanceOhm * steepness(at) + jointsOhm);
        siemens = 1 / differential;
        emfV = workingA * (Math.max(smallestOhm, resistanceOhm + jointsOhm) - differential);
        return overshoot ? 1 : Math.abs(resistanceOhm - before) / Math.max(smallestOhm, before);
    }

    /**
     * Moves the resistance towards the one that the present current calls for, by secants that reckon with no more than a stiff
     * source alone would bring about. Slow, but from the cold side it does not overshoot by much.
     *
     * @return relative difference of both resistances before
     */
    double approach(double amps) {
        double called = ohm(celsius(Math.abs(amps)));
        double least = 1 - steepness(Math.abs(amps));
        double slope = least;
        if (moves > 0 && resistanceOhm != lastOhm) {
            slope = Math.min(STEEPEST, Math.max(least, (called - lastCalledOhm) / (resistanceOhm - lastOhm)));
        }
        double difference = called - resistanceOhm;
        moves++;
        lastOhm = resistanceOhm;
        lastCalledOhm = called;
        resistanceOhm += difference / (1 - slope);
        double hottest = ohm(highestC);
        resistanceOhm = Math.min(hottest, Math.max(ohm(heat.ambientC()), resistanceOhm));
        temperatureC = resistanceOhm == hottest || heat.alphaPerK() == 0 || r20Ohm == 0 ? celsius(Math.abs(amps))
                : 20 + (resistanceOhm / r20Ohm - 1) / heat.alphaPerK();
        plain();
        return Math.abs(difference) / Math.max(smallestOhm, resistanceOhm);
    }

    /** A plain resistance at the temperature of the working point. */
    void plain() {
        siemens = 1 / Math.max(smallestOhm, resistanceOhm + jointsOhm);
        emfV = 0;
    }

    private double ohm(double celsius) {
        return r20Ohm * (heat == null ? 1 : 1 + heat.alphaPerK() * (celsius - 20));
    }

    private double celsius(double magnitude) {
        if (heat == null) {
            return 20;
        }
        if (magnitude >= highestA) {
            return highestC;
        }
        double x = perSquareAmpK * magnitude * magnitude;
        return Math.min(highestC, (heat.ambientC() + x * (1 - 20 * heat.alphaPerK())) / (1 - heat.alphaPerK() * x));
    }

    /** Differential over plain resistance of the conductor itself. */
    private double steepness(double magnitude) {
        double alphaX = heat.alphaPerK() * perSquareAmpK * magnitude * magnitude;
        return magnitude < highestA ? 1 + 2 * alphaX / (1 - alphaX) : 1;
    }
}
