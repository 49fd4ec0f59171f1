// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/**
 * Parts of a network that for the moment hang on flat segments alone: behind a blocked rectifier, say. Their leakage would drown
 * in the rounding of the conductances within them, so one node of each is held and moved on its own, by what flows into the
 * part over its leakage.
 */
final class FloatingParts {
    /** Slopes above this tie potentials together, S. */
    private static final double TIE_S = 1e-7;

    private final Circuit circuit;
    private final double[] slope;
    /** Nodes whose step is given: those of the circuit, and one of each floating part. */
    final boolean[] held;
    /** The steps given, V. */
    final double[] step;

    FloatingParts(Circuit circuit) {
        this.circuit = circuit;
        slope = new double[circuit.poles.size()];
        held = new boolean[circuit.held.length];
        step = new double[circuit.held.length];
    }

    /** Finds the parts for the segments of the relaxed laws, and how far each moves. */
    void relaxed(double[] x) {
        for (int k = 0; k < slope.length; k++) {
            Pole pole = circuit.poles.get(k);
            slope[k] = pole.active ? pole.slope(pole.segment, 0) : 0;
        }
        Islands tied = find();
        if (tied == null) {
            return;
        }
        double[] into = new double[held.length];
        double[] leak = new double[held.length];
        for (int k = 0; k < slope.length; k++) {
            Pole pole = circuit.poles.get(k);
            int first = tied.first(pole.a);
            int second = tied.first(pole.b);
            if (pole.active && first != second) {
                double amps = pole.current(pole.segment, pole.voltage(x), Pole.LEAK_S);
                double siemens = pole.slope(pole.segment, Pole.LEAK_S);
                into[first] -= amps;
                into[second] += amps;
                leak[first] += siemens;
                leak[second] += siemens;
            }
        }
        for (int node = 0; node < held.length; node++) {
            if (held[node] && !circuit.held[node]) {
                int first = tied.first(node);
                step[node] = leak[first] > 0 ? into[first] / leak[first] : 0;
            }
        }
    }

    /** Finds the parts for the tangents of the true laws; they do not move. */
    void tangent(double[] x) {
        for (int k = 0; k < slope.length; k++) {
            Pole pole = circuit.poles.get(k);
            slope[k] = !pole.active ? 0 : pole instanceof DemandPole demand ? Math.abs(demand.trueSlope(demand.voltage(x)))
                    : pole.slope(pole.segment, 0);
        }
        find();
    }

    private Islands find() {
        System.arraycopy(circuit.held, 0, held, 0, held.length);
        Arrays.fill(step, 0);
        boolean flat = false;
        for (int k = 0; k < slope.length && !flat; k++) {
            flat = circuit.poles.get(k).active && slope[k] <= TIE_S;
        }
        if (!flat) {
            return null;
        }
        Islands tied = Islands.empty(held.length);
        for (int k = 0; k < slope.length; k++) {
            if (slope[k] > TIE_S) {
                tied.join(circuit.poles.get(k).a, circuit.poles.get(k).b);
            }
        }
        boolean[] anchored = new boolean[held.length];
        for (int node = 0; node < held.length; node++) {
            anchored[tied.first(node)] |= held[node];
        }
        for (int node = 0; node < held.length; node++) {
            held[node] |= tied.first(node) == node && !anchored[node];
        }
        return tied;
    }
}
