// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;

/** Circuits of worked examples, solved by the engine; node 0 is the reference. */
final class ExampleCircuit {
    private final List<Network.Item> items = new ArrayList<>();
    private int nodes = 1;

    ExampleCircuit emf(int plus, int minus, double volt, double ohm) {
        return add(new Network.Emf("e" + items.size(), plus, minus, volt, ohm), plus, minus);
    }

    ExampleCircuit resistor(int a, int b, double ohm) {
        return add(new Network.Resistor("r" + items.size(), a, b, ohm), a, b);
    }

    ExampleCircuit wire(int a, int b, double ohm) {
        return add(new Network.Wire("w" + items.size(), a, b, ohm, 0, null), a, b);
    }

    ExampleCircuit load(int a, int b, double amps) {
        return add(new Network.Load("l" + items.size(), a, b, Network.LoadLaw.CURRENT, amps, Double.NaN, Double.NaN), a, b);
    }

    ExampleCircuit copy() {
        ExampleCircuit copy = new ExampleCircuit();
        copy.items.addAll(items);
        copy.nodes = nodes;
        return copy;
    }

    private ExampleCircuit add(Network.Item item, int a, int b) {
        items.add(item);
        nodes = Math.max(nodes, Math.max(a, b) + 1);
        return this;
    }

    OperatingPoint solve() {
        List<String> ids = new ArrayList<>();
        for (int n = 0; n < nodes; n++) {
            ids.add("n" + n);
        }
        OperatingPoint point = FlowSolver.solve(new Network(ids, 0, items), FlowOptions.standard(), new BasicMonitor());
        if (point.status() != OperatingPoint.Status.SOLVED) {
            throw new AssertionError("expected a solution, got " + point.status());
        }
        return point;
    }

    /** Drop over a wire of so many ohm that carries a current, solved behind a source far above the drop, V. */
    static double dropV(double ohm, double amps) {
        return new ExampleCircuit().emf(1, 0, 1000, 1e-6).wire(1, 2, ohm).load(2, 0, amps).solve().voltage(1, 2);
    }

    /** Resistance of a wire as the solver's drop shows it at 1 A, ohm. */
    static double ohm(double rhoOhmMm2PerM, double lengthM, double areaMm2) {
        return dropV(rhoOhmMm2PerM * lengthM / areaMm2, 1);
    }
}
