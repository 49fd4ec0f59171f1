// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** Steps of the relaxed network downwards from no load, each of which stays above the solution with the highest voltages. */
final class Descent {
    private final Circuit circuit;
    private final RelaxedSolver relaxed;

    Descent(Circuit circuit, Cancel cancel) {
        this.circuit = circuit;
        relaxed = new RelaxedSolver(circuit, cancel);
    }

    /** Solves without load, notes the voltages of all demands, then solves with the currents they would take there. */
    void start(double[] x) {
        for (DemandPole demand : circuit.demands) {
            demand.cold();
        }
        for (RegulatedPole pole : circuit.regulated) {
            pole.cold();
        }
        relaxed.solve(x);
        for (DemandPole demand : circuit.demands) {
            demand.noteUnloaded(x);
        }
        for (Pole pole : circuit.poles) {
            if (pole.active) {
                pole.settle(x);
            }
        }
        relaxed.solve(x);
    }

    /** Sets the demands to the voltages at hand, or to where a share of a Newton step leads if that is further. */
    void down(double[] x, double[] direction, double share) {
        for (DemandPole demand : circuit.demands) {
            if (demand.active) {
                demand.raise(x, direction, share);
            }
        }
        for (RegulatedPole pole : circuit.regulated) {
            if (pole.active && share > 0) {
                pole.advance(x, direction, share);
            } else if (pole.active) {
                pole.settle(x);
            }
        }
        relaxed.solve(x);
    }

    /**
     * Where the matrix shows that the present segments hold no solution, goes a multiple of a step down, as long as no regulator
     * and no rectifier changes its segment: only they could bring a solution back.
     *
     * @return whether the step was taken
     */
    boolean plunge(double[] x, double multiple) {
        double[] notedX = x.clone();
        int[] segments = new int[circuit.poles.size()];
        for (int k = 0; k < segments.length; k++) {
            Pole pole = circuit.poles.get(k);
            segments[k] = pole.segment;
            pole.remember();
            if (pole.active && pole instanceof DemandPole demand) {
                demand.plunge(x, multiple);
            } else if (pole.active) {
                pole.settle(x);
            }
        }
        relaxed.solve(x);
        boolean stays = true;
        for (int k = 0; k < segments.length; k++) {
            Pole pole = circuit.poles.get(k);
            stays &= !pole.active || pole instanceof DemandPole || pole.segment == segments[k];
        }
        if (!stays) {
            System.arraycopy(notedX, 0, x, 0, x.length);
            for (int k = 0; k < segments.length; k++) {
                circuit.poles.get(k).segment = segments[k];
                circuit.poles.get(k).recall();
            }
        }
        return stays;
    }
}
