// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** How voltages at the loads fall as a common factor on all loads grows. */
final class LoadSensitivity {
    private LoadSensitivity() {
    }

    /** For each item that takes current, the relative fall of its voltage per unit of the factor; 0 for others. */
    static double[] relativeFall(Solution at) {
        Circuit circuit = at.circuit();
        double[] x = at.potentialV().clone();
        boolean[] held = circuit.held.clone();
        for (int node = 0; node < x.length; node++) {
            if (Double.isNaN(x[node])) {
                x[node] = 0;
                held[node] = true;
            }
        }
        double[] unused = new double[x.length];
        double[] leaving = new double[x.length];
        circuit.matrix.clear();
        for (int item = 0; item < circuit.poleOf.length; item++) {
            if (circuit.network.items().get(item) instanceof Network.Load && circuit.poleOf[item].active) {
                Pole pole = circuit.poleOf[item];
                double perUnit = circuit.loadScale() == 0 ? 0 : at.amps(item) / circuit.loadScale();
                leaving[pole.a] += perUnit;
                leaving[pole.b] -= perUnit;
            }
        }
        for (Pole pole : circuit.poles) {
            if (pole.active) {
                pole.stampTrue(x, unused, circuit.matrix, 0);
            }
        }
        circuit.matrix.factor(held);
        double[] change = circuit.matrix.step(leaving, held, new double[x.length]);
        double[] fall = new double[circuit.poleOf.length];
        for (int item = 0; item < fall.length; item++) {
            Pole pole = circuit.poleOf[item];
            boolean takes = circuit.network.items().get(item) instanceof Network.Load || pole instanceof DemandPole;
            if (takes && pole.active && pole.voltage(x) != 0) {
                fall[item] = -pole.voltage(change) / pole.voltage(x);
            }
        }
        return fall;
    }
}
