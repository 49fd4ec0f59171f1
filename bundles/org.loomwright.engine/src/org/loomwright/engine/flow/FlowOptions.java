// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * How an operating point is sought. The figures are numerical means, not limits of practice: within wide ranges they do not
 * change an operating point.
 *
 * @param temperatureFeedback whether conductors warm by their own current; when not, all conductors are at 20 degrees Celsius
 * @param loadScale           common factor on all loads, 0 or above: on watts, on amperes, on the conductance of resistive loads;
 *                            the standby of converters is not scaled
 * @param floorV              voltage below which constant power and constant current are continued as a resistance, above 0 V;
 *                            no 12 V or 24 V equipment works there, so a load resting below it has no operating point
 * @param smallestOhm         resistances below this are raised to it, above 0 ohm
 * @param highestC            conductor temperatures are cut here, degrees Celsius; a wire found at it has run away
 * @param relativeTolerance   a solution is accepted when the currents of all laws agree within this share of the largest current
 * @param newtonSteps         most Newton steps for one set of states
 * @param stateChanges        most changes of the set of states before the network counts as cycling
 * @param scaleTolerance      the largest load scale is found within this, relative to its upper end
 */
public record FlowOptions(boolean temperatureFeedback, double loadScale, double floorV, double smallestOhm, double highestC,
        double relativeTolerance, int newtonSteps, int stateChanges, double scaleTolerance) {

    /** Copper melts at 1084.62 degrees Celsius, a fixed point of the International Temperature Scale of 1990. */
    public static final double COPPER_MELTS_C = 1084.62;

    public FlowOptions {
        require(loadScale >= 0 && loadScale < Double.POSITIVE_INFINITY, "loadScale", loadScale, "0 or above");
        require(floorV > 0 && floorV < Double.POSITIVE_INFINITY, "floorV", floorV, "above 0 V");
        require(smallestOhm > 0 && smallestOhm < Double.POSITIVE_INFINITY, "smallestOhm", smallestOhm, "above 0 ohm");
        require(highestC > 20, "highestC", highestC, "above 20 degrees Celsius");
        require(relativeTolerance > 0, "relativeTolerance", relativeTolerance, "above 0");
        require(newtonSteps > 0, "newtonSteps", newtonSteps, "1 or more");
        require(stateChanges > 0, "stateChanges", stateChanges, "1 or more");
        require(scaleTolerance > 0, "scaleTolerance", scaleTolerance, "above 0");
    }

    /** Temperature feedback on, loads as they are, floor 0.5 V, 1 microohm, melting copper, 1e-12, 500, 1000, 1e-6. */
    public static FlowOptions standard() {
        return new FlowOptions(true, 1, 0.5, 1e-6, COPPER_MELTS_C, 1e-12, 500, 1000, 1e-6);
    }

    /** The same with temperature feedback on or off. */
    public FlowOptions withTemperatureFeedback(boolean feedback) {
        return new FlowOptions(feedback, loadScale, floorV, smallestOhm, highestC, relativeTolerance, newtonSteps, stateChanges,
                scaleTolerance);
    }

    /** The same with another common factor on all loads. */
    public FlowOptions withLoadScale(double scale) {
        return new FlowOptions(temperatureFeedback, scale, floorV, smallestOhm, highestC, relativeTolerance, newtonSteps,
                stateChanges, scaleTolerance);
    }

    private static void require(boolean met, String name, double value, String expected) {
        if (!met) {
            throw new IllegalArgumentException("flow option " + name + " is " + value + ", expected " + expected);
        }
    }
}
