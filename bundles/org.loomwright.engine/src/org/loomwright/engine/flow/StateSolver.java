// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** Solves a circuit for one set of states, conductors at their temperatures, always from the same start. */
final class StateSolver {
    private static final int THERMAL_STEPS = 60;
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
        double[] x = start.clone();
        for (int node = 0; node < x.length; node++) {
            if (circuit.held[node]) {
                x[node] = 0;
            }
        }
        for (WirePole wire : circuit.wires) {
            wire.cold();
        }
        newton.unloaded(x);
        boolean warms = circuit.options.temperatureFeedback() && circuit.wires.stream().anyMatch(WirePole::warms);
        boolean found = newton.solve(x, warms ? 1e-4 : circuit.options.relativeTolerance());
        if (warms && found && !resting(x)) {
            found = warm(x);
        }
        return finish.solution(x, found);
    }

    private boolean warm(double[] x) {
        boolean found = true;
        double tolerance = 1e-6;
        for (int step = 0; step < THERMAL_STEPS && found; step++) {
            double change = 0;
            for (WirePole wire : circuit.wires) {
                if (wire.active && wire.warms()) {
                    change = Math.max(change, wire.relinearise(wire.current(0, wire.voltage(x), 0)));
                }
            }
            if (change <= THERMAL_TOLERANCE) {
                break;
            }
            tolerance = Math.max(circuit.options.relativeTolerance(), Math.min(tolerance, change * change));
            found = newton.solve(x, tolerance) && !resting(x);
        }
        for (WirePole wire : circuit.wires) {
            wire.plain();
        }
        return newton.solve(x, circuit.options.relativeTolerance()) && found || resting(x);
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
