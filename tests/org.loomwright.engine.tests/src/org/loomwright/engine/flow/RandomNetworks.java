// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Random;

/**
 * Random networks, the same for the same seed: one to three domains joined by converters, each with a tree of cables, loops and
 * parallel cables, several sources, loads of all laws with own or structure return, rectifiers, relays and comparators.
 */
final class RandomNetworks {
    private final Random random;
    private final Wiring wiring = new Wiring();
    private int count;

    private RandomNetworks(long seed) {
        random = new Random(seed);
    }

    static Wiring of(long seed) {
        return new RandomNetworks(seed).build();
    }

    private Wiring build() {
        int domains = 1 + random.nextInt(3);
        String[][] buses = new String[domains][];
        double[] volt = new double[domains];
        for (int d = 0; d < domains; d++) {
            volt[d] = random.nextInt(3) == 0 ? 24 : 12;
            String minus = d > 0 && random.nextInt(3) == 0 ? id("m") : "0";
            buses[d] = domain(d, volt[d], minus, d == 0 || random.nextInt(3) > 0);
            if (d > 0) {
                int from = random.nextInt(d);
                double limit = 5 + random.nextInt(30);
                boolean cutsOut = random.nextInt(3) == 0;
                wiring.converter(id("T"), any(buses[from]), buses[from][0], any(buses[d]), minus, volt[d] * (0.98 + 0.2
                        * random.nextDouble()), 0.002 + 0.02 * random.nextDouble(), limit, 0.8 + 0.18 * random.nextDouble(),
                        random.nextDouble() * 3, cutsOut ? 0.85 * volt[from] : Double.NaN, cutsOut ? volt[from] : Double.NaN);
            }
        }
        return wiring;
    }

    /** Plus nodes of a domain; the first entry is its minus. */
    private String[] domain(int d, double volt, String minus, boolean sources) {
        int size = 3 + random.nextInt(25);
        String[] nodes = new String[size + 1];
        nodes[0] = minus;
        for (int k = 1; k <= size; k++) {
            nodes[k] = id("n" + d + "_");
            if (k > 1) {
                cable(nodes[1 + random.nextInt(k - 1)], nodes[k]);
            }
        }
        for (int k = random.nextInt(5); k > 0; k--) {
            cable(any(nodes), any(nodes));
        }
        if (sources) {
            for (int k = 1 + random.nextInt(3); k > 0; k--) {
                String at = any(nodes);
                double emf = volt * (1 + 0.1 * random.nextDouble());
                double ohm = 0.003 + 0.03 * random.nextDouble();
                String battery = id("G");
                wiring.cell(battery, at, minus, emf, ohm, ohm * (1 + 3 * (count % 3)));
            }
            if (random.nextBoolean()) {
                regulator(nodes, volt, minus);
            }
            if (random.nextInt(3) == 0) {
                String from = id("c");
                wiring.emf(id("G"), from, minus, volt * (1 + 0.15 * random.nextDouble()), 0.01)
                        .rectifier(id("R"), from, any(nodes), 0.3 + 0.5 * random.nextDouble(), 0.005);
            }
        }
        for (int k = 1 + random.nextInt(size); k > 0; k--) {
            load(any(nodes), volt, minus);
        }
        if (random.nextInt(3) == 0) {
            relay(nodes, volt, minus);
        }
        return nodes;
    }

    private void regulator(String[] nodes, double volt, String minus) {
        String at = any(nodes);
        boolean remote = random.nextInt(3) == 0;
        wiring.sensing(id("G"), at, minus, volt * (1.1 + 0.1 * random.nextDouble()), 0.001 + 0.02 * random.nextDouble(),
                10 + random.nextInt(100), remote ? any(nodes) : at, minus);
    }

    private void cable(String a, String b) {
        if (a.equals(b)) {
            return;
        }
        double ohm = 0.001 * StrictMath.pow(40, random.nextDouble());
        Network.WireHeat heat = random.nextInt(4) == 0 ? null
                : new Network.WireHeat(20 + random.nextInt(50), 10 + 0.5 / ohm, 30, 105, 0.00393);
        wiring.wire(id("W"), a, b, ohm, 0.0005 * random.nextDouble(), heat);
        if (random.nextInt(6) == 0) {
            wiring.wire(id("W"), a, b, ohm * (1 + random.nextDouble()), 0, heat);
        }
    }

    private void load(String at, double volt, String minus) {
        String back = minus;
        if (random.nextBoolean()) {
            back = id("b");
            cable(back, minus);
        }
        double watt = 1 + 60 * random.nextDouble() * random.nextDouble();
        boolean cutsOut = random.nextInt(6) == 0;
        double offV = cutsOut ? volt * (0.8 + 0.15 * random.nextDouble()) : Double.NaN;
        double restartV = cutsOut ? offV + 0.05 * volt : Double.NaN;
        switch (random.nextInt(3)) {
            case 0 -> wiring.load(id("E"), at, back, Network.LoadLaw.POWER, watt, offV, restartV);
            case 1 -> wiring.load(id("E"), at, back, Network.LoadLaw.CURRENT, watt / volt, offV, restartV);
            default -> wiring.load(id("E"), at, back, Network.LoadLaw.RESISTANCE, volt * volt / watt, offV, restartV);
        }
    }

    private void relay(String[] nodes, double volt, String minus) {
        String coil = id("K");
        wiring.resistor(coil, any(nodes), minus, 80 * volt / 12);
        String fed = id("n");
        wiring.contact(id("Q"), any(nodes), fed, 0.001, new Network.ByCoil(wiring.item(coil), 0.6 * volt, 0.25 * volt, false));
        wiring.resistive(id("E"), fed, minus, volt * volt / 30);
        String sense = id("B");
        wiring.comparator(sense, any(nodes), minus, volt * 0.9, volt * 0.7);
        String lamp = id("n");
        wiring.contact(id("Q"), any(nodes), lamp, 0.001, new Network.ByComparator(wiring.item(sense), random.nextBoolean()));
        wiring.power(id("E"), lamp, minus, 2);
    }

    private String any(String[] nodes) {
        return nodes[1 + random.nextInt(nodes.length - 1)];
    }

    private String id(String kind) {
        return kind + count++;
    }
}
