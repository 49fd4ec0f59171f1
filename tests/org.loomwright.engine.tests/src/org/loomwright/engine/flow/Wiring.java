// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.BasicMonitor;

/** Builds networks for tests; nodes by name, "0" is the reference. */
final class Wiring {
    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final List<Network.Item> items = new ArrayList<>();
    private final Map<String, Integer> index = new LinkedHashMap<>();

    Wiring() {
        node("0");
    }

    int node(String name) {
        return nodes.computeIfAbsent(name, n -> nodes.size());
    }

    /** Index of an item by its id. */
    int item(String id) {
        return index.get(id);
    }

    Wiring add(Network.Item item) {
        index.put(item.id(), items.size());
        items.add(item);
        return this;
    }

    Wiring wire(String id, String a, String b, double ohm) {
        return add(new Network.Wire(id, node(a), node(b), ohm, 0, null));
    }

    Wiring wire(String id, String a, String b, double ohm, double jointsOhm, Network.WireHeat heat) {
        return add(new Network.Wire(id, node(a), node(b), ohm, jointsOhm, heat));
    }

    Wiring resistor(String id, String a, String b, double ohm) {
        return add(new Network.Resistor(id, node(a), node(b), ohm));
    }

    Wiring contact(String id, String a, String b, double ohm, Network.Drive drive) {
        return add(new Network.Switch(id, node(a), node(b), ohm, drive));
    }

    Wiring emf(String id, String a, String b, double volt, double ohm) {
        return add(new Network.Emf(id, node(a), node(b), volt, ohm));
    }

    Wiring cell(String id, String a, String b, double volt, double ohm, double chargeOhm) {
        return add(new Network.Emf(id, node(a), node(b), volt, ohm, chargeOhm));
    }

    Wiring regulator(String id, String a, String b, double setV, double droopOhm, double limitA) {
        return add(new Network.Regulator(id, node(a), node(b), setV, droopOhm, limitA, node(a), node(b)));
    }

    Wiring sensing(String id, String a, String b, double setV, double droopOhm, double limitA, String senseA, String senseB) {
        return add(new Network.Regulator(id, node(a), node(b), setV, droopOhm, limitA, node(senseA), node(senseB)));
    }

    Wiring rectifier(String id, String a, String b, double forwardV, double ohm) {
        return add(new Network.Rectifier(id, node(a), node(b), forwardV, ohm));
    }

    Wiring load(String id, String a, String b, Network.LoadLaw law, double value) {
        return load(id, a, b, law, value, Double.NaN, Double.NaN);
    }

    Wiring load(String id, String a, String b, Network.LoadLaw law, double value, double offV, double restartV) {
        return add(new Network.Load(id, node(a), node(b), law, value, offV, restartV));
    }

    Wiring power(String id, String a, String b, double watt) {
        return load(id, a, b, Network.LoadLaw.POWER, watt);
    }

    Wiring current(String id, String a, String b, double amps) {
        return load(id, a, b, Network.LoadLaw.CURRENT, amps);
    }

    Wiring resistive(String id, String a, String b, double ohm) {
        return load(id, a, b, Network.LoadLaw.RESISTANCE, ohm);
    }

    Wiring converter(String id, String inA, String inB, String outA, String outB, double setV, double droopOhm, double limitA,
            double efficiency, double standbyW) {
        return converter(id, inA, inB, outA, outB, setV, droopOhm, limitA, efficiency, standbyW, Double.NaN, Double.NaN);
    }

    Wiring converter(String id, String inA, String inB, String outA, String outB, double setV, double droopOhm, double limitA,
            double efficiency, double standbyW, double offV, double restartV) {
        return add(new Network.ConverterItem(id, node(inA), node(inB), node(outA), node(outB), setV, droopOhm, limitA, efficiency,
                standbyW, offV, restartV));
    }

    Wiring comparator(String id, String plus, String minus, double onAt, double offAt) {
        return add(new Network.Comparator(id, node(plus), node(minus), -1, onAt, offAt));
    }

    Wiring cutOut(String id, String plus, String minus, double onAt, double offAt) {
        return add(new Network.Comparator(id, node(plus), node(minus), -1, onAt, offAt, true));
    }

    Wiring currentComparator(String id, String sensed, double onAt, double offAt) {
        return add(new Network.Comparator(id, -1, -1, item(sensed), onAt, offAt));
    }

    Network network() {
        return new Network(List.copyOf(nodes.keySet()), 0, items);
    }

    Solved solve() {
        return solve(FlowOptions.standard());
    }

    Solved solve(FlowOptions options) {
        return new Solved(this, FlowAssert.checked(FlowSolver.solve(network(), options, new BasicMonitor()), options));
    }

    /** An operating point with the names of its network. */
    record Solved(Wiring wiring, OperatingPoint point) {
        double volt(String node) {
            return point.potentialV()[wiring.node(node)];
        }

        double volt(String a, String b) {
            return volt(a) - volt(b);
        }

        double amps(String item) {
            return point.currentA()[wiring.item(item)];
        }

        double outputAmps(String item) {
            return point.outputA()[wiring.item(item)];
        }

        boolean on(String item) {
            return point.on()[wiring.item(item)];
        }

        boolean limiting(String item) {
            return point.limiting()[wiring.item(item)];
        }

        double celsius(String item) {
            return point.temperatureC()[wiring.item(item)];
        }

        List<String> trouble() {
            return point.trouble().stream().map(i -> point.network().items().get(i).id()).toList();
        }
    }
}
