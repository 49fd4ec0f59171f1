// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.loomwright.engine.flow.Network;

/**
 * The network of a made-up vehicle: battery and alternator, a trunk with boxes of ten fused ways, loads of all laws, half of them
 * returning by the structure. The same for the same number of loads.
 */
final class SyntheticVehicle {
    private static final Network.WireHeat HEAT = new Network.WireHeat(40, 25, 30, 105, 0.00393);

    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final List<Network.Item> items = new ArrayList<>();

    private SyntheticVehicle() {
    }

    static Network of(int loads) {
        SyntheticVehicle vehicle = new SyntheticVehicle();
        vehicle.build(loads, new Random(loads));
        return new Network(List.copyOf(vehicle.nodes.keySet()), 0, vehicle.items);
    }

    private void build(int loads, Random random) {
        int structure = node("structure");
        int battery = node("battery");
        int minus = node("minus");
        int alternator = node("alternator");
        items.add(new Network.Emf("G1", battery, minus, 12.6, 0.004));
        items.add(new Network.Regulator("G2", alternator, structure, 14.3, 0.002, 120, alternator, structure));
        wire("W-alternator", alternator, battery, 0.001, null);
        wire("W-minus", minus, structure, 0.0005, null);
        int from = battery;
        for (int k = 0; k < loads; k++) {
            if (k % 10 == 0) {
                int box = node("box" + k);
                wire("W-box" + k, k % 100 == 0 ? battery : from, box, 0.0005 + 0.001 * random.nextDouble(), null);
                from = box;
            }
            int way = node("way" + k);
            int plus = node("plus" + k);
            items.add(new Network.Resistor("F" + k, from, way, 0.004));
            wire("W" + k, way, plus, 0.01 + 0.03 * random.nextDouble(), HEAT);
            int back = structure;
            if (k % 2 == 1) {
                back = node("back" + k);
                wire("R" + k, back, minus, 0.01 + 0.03 * random.nextDouble(), HEAT);
            }
            Network.LoadLaw law = Network.LoadLaw.values()[k % 3];
            double watt = (0.5 + random.nextDouble()) * 2000 / loads;
            double value = law == Network.LoadLaw.POWER ? watt : law == Network.LoadLaw.CURRENT ? watt / 12 : 144 / watt;
            items.add(new Network.Load("E" + k, plus, back, law, value, Double.NaN, Double.NaN));
        }
    }

    private int node(String name) {
        return nodes.computeIfAbsent(name, n -> nodes.size());
    }

    private void wire(String id, int a, int b, double ohm, Network.WireHeat heat) {
        items.add(new Network.Wire(id, a, b, ohm, 0.0005, heat));
    }
}
