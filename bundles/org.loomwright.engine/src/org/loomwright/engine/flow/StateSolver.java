// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.function.ToDoubleBiFunction;

/** Solves a circuit for one set of states, conductors at their temperatures, always from the same start. */
final class StateSolver {
    private static final double COLD_TOLERANCE = 1e-4;
    private static final int QUICK_STEPS = 20;
    private static final int CAREFUL_STEPS = 300;
    private static final double THERMAL_TOLERANCE = 1e-11;

    private final Circuit circuit;
    private final NewtonSolver newton;
    private final Finish finish;
    private final double[] start;

    StateSolver(Circuit circuit, Cancel cancel, double[] start) {
        this.circuit = circuit;
        this.newton = new NewtonSolver(circuit, cancel);
        this.finish = new Finish(circuit);
        this.start = start;
    }

    /** The solution for a set of states with the loads at a common scale. */
    Solution solve(States states, double loadScale) {
        circuit.scaleLoads(loadScale);
        circuit.configure(states);
        boolean warms = circuit.wires.stream().anyMatch(WirePole::warms);
        double[] x = new double[start.length];
        boolean found = cold(x, warms ? COLD_TOLERANCE : circuit.options.relativeTolerance());
        if (warms && found && resting(x)) {
            // conductors only resist more when warm: no need to warm what has collapsed cold
            found = newton.solve(x, circuit.options.relativeTolerance());
        } else if (warms && found) {
            found = warm(x, WirePole::relinearise, QUICK_STEPS);
            if (!found || resting(x)) {
                cold(x, COLD_TOLERANCE);
                found = warm(x, WirePole::approach, CAREFUL_STEPS);
            }
        }
        return finish.solution(x, found);
    }

    private boolean cold(double[] x, double tolerance) {
        for (int node = 0; node < x.length; node++) {
            x[node] = circuit.held[node] ? 0 : start[node];
        }
        for (WirePole wire : circuit.wires) {
            wire.cold();
        }
        newton.unloaded(x);
        return newton.solve(x, tolerance);
    }

    /** Brings conductors and currents together; false when they come to no common temperatures. */
    private boolean warm(double[] x, ToDoubleBiFunction<WirePole, Double> move, int steps) {
        boolean found = false;
        double tolerance = 1e-6;
        for (int step = 0; step < steps && !found; step++) {
            double change = 0;
            for (WirePole wire : circuit.wires) {
                if (wire.active && wire.warms()) {
                    change = Math.max(change, move.applyAsDouble(wire, wire.current(0, wire.voltage(x), 0)));
                }
            }
            found = change <= THERMAL_TOLERANCE;
            tolerance = Math.max(circuit.options.relativeTolerance(), Math.min(tolerance, change * change));
            if (!found && (!newton.solve(x, tolerance) || resting(x))) {
                break;
            }
        }
        for (WirePole wire : circuit.wires) {
            wire.plain();
        }
        return newton.solve(x, circuit.options.relativeTolerance()) && found;
    }

    private boolean resting(double[] x) {
        for (DemandPole demand : circuit.demands) {
            if (demand.resting(x)) {
                return true;
            }
        }
        return false;
    }
}
