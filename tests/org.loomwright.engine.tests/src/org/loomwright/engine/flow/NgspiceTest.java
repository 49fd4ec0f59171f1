// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Operating points against ngspice, a general-purpose circuit simulator, on the netlists that the engine writes. */
class NgspiceTest {
    private static final int NETWORKS = 320;
    private static final int PER_DECK = 10;
    private static final double WITHIN = 1e-6;
    private static final FlowOptions OPTIONS = FlowOptions.standard();

    @Test
    void randomNetworksAgreeInEveryPotential() {
        List<OperatingPoint> points = new ArrayList<>();
        for (long seed = 1000; points.size() < NETWORKS; seed++) {
            OperatingPoint point = FlowSolver.solve(RandomNetworks.of(seed).network(), OPTIONS, new BasicMonitor());
            if (point.status() == Status.SOLVED) {
                points.add(point);
            }
        }
        Census census = new Census();
        for (int from = 0; from < points.size(); from += PER_DECK) {
            List<OperatingPoint> batch = points.subList(from, Math.min(points.size(), from + PER_DECK));
            Map<String, Double> simulated = Ngspice.potentials(batch, OPTIONS);
            for (int k = 0; k < batch.size(); k++) {
                compare(batch.get(k), Ngspice.prefix(k), simulated);
                census.count(batch.get(k));
            }
        }
        census.checkThatEverythingOccurred();
    }

    @Test
    void wholeDeckIsReadAsItIs() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02).power("E1", "b", "0", 100)
                .converter("T1", "b", "0", "p", "m", 24, 0.01, 10, 0.9, 1).resistive("E2", "p", "m", 12).solve();
        String out = Ngspice.run(SpiceNetlist.deck(at.point(), OPTIONS));
        for (String node : List.of("a", "b", "m")) {
            String name = SpiceNetlist.node(at.point(), at.wiring().node(node), "");
            assertEquals(at.volt(node), Ngspice.printed(out, name), 1e-4, out);
        }
    }

    @Test
    void aBatteryStandsThereWithTheResistanceOfItsDirection() {
        var taking = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).regulator("G2", "a", "0", 14.4, 0.002, 150).solve();
        String text = SpiceNetlist.circuit(taking.point(), OPTIONS, "");
        assertTrue(text.contains("R0 n1 i0 0.04\n"), text);
        var giving = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).resistive("E1", "a", "0", 1).solve();
        text = SpiceNetlist.circuit(giving.point(), OPTIONS, "");
        assertTrue(text.contains("R0 n1 i0 0.005\n"), text);
    }

    private static void compare(OperatingPoint point, String prefix, Map<String, Double> simulated) {
        for (int node = 0; node < point.network().nodes(); node++) {
            double volt = point.potentialV()[node];
            if (node == point.network().reference() || Double.isNaN(volt)) {
                continue;
            }
            String name = SpiceNetlist.node(point, node, prefix);
            Double there = simulated.get(name);
            assertTrue(there != null, () -> "ngspice gave no potential for " + name);
            // relative to the potential, but to no less than a volt
            assertEquals(there, volt, WITHIN * Math.max(1, Math.abs(volt)),
                    () -> name + " of a network with " + point.network().items().size() + " items");
        }
    }

    /** What the networks compared contained, so that the comparison cannot become empty by and by. */
    private static final class Census {
        private int nodes;
        private int power;
        private int converters;
        private int limitedConverters;
        private int regulators;
        private int limitedRegulators;
        private int remote;
        private int rectifiers;
        private int warm;
        private int charged;

        void count(OperatingPoint point) {
            Network network = point.network();
            nodes += network.nodes();
            for (int item = 0; item < network.items().size(); item++) {
                Network.Item it = network.items().get(item);
                boolean on = point.on()[item];
                power += on && it instanceof Network.Load l && l.law() == Network.LoadLaw.POWER ? 1 : 0;
                converters += on && it instanceof Network.ConverterItem ? 1 : 0;
                limitedConverters += on && it instanceof Network.ConverterItem && point.limiting()[item] ? 1 : 0;
                regulators += on && it instanceof Network.Regulator && !point.limiting()[item] ? 1 : 0;
                limitedRegulators += on && it instanceof Network.Regulator && point.limiting()[item] ? 1 : 0;
                remote += on && it instanceof Network.Regulator r && r.senseA() != r.a() ? 1 : 0;
                rectifiers += on && it instanceof Network.Rectifier ? 1 : 0;
                charged += it instanceof Network.Emf e && e.chargeOhm() > e.ohm() && point.currentA()[item] > 1 ? 1 : 0;
                warm += it instanceof Network.Wire && point.temperatureC()[item] > 60 ? 1 : 0;
            }
        }

        void checkThatEverythingOccurred() {
            String found = nodes + " nodes, " + power + " power loads, " + converters + " converters (" + limitedConverters
                    + " limited), " + regulators + " regulators holding, " + limitedRegulators + " limited, " + remote
                    + " sensing elsewhere, " + rectifiers + " rectifiers, " + warm + " warm conductors, " + charged
                    + " cells charged through a resistance of their own";
            assertTrue(nodes > 5000 && power > 1000 && converters > 100 && limitedConverters > 20 && regulators > 20
                    && limitedRegulators > 20 && remote > 10 && rectifiers > 30 && warm > 100
                    && charged > 30, found);
        }
    }
}
