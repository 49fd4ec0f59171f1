// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

/**
 * A random vehicle, the same for the same seed: bodies with loops of bonds, one or two batteries with a link, charging sources
 * with limits, a diode, boxes in a tree, loads with own or structure return, parallel feeders.
 */
final class RandomVehicle {
    private final Random random;
    private final List<Runnable> steps = new ArrayList<>();
    private final List<String> supplies = new ArrayList<>();
    private final List<String> returns = new ArrayList<>();
    private PlanFixture fixture;

    RandomVehicle(long seed) {
        random = new Random(seed);
        bodies();
        batteries();
        boxes();
    }

    /** The plan, everything in the order in which it was made. */
    Plan plan() {
        return build(steps);
    }

    /** The same vehicle, everything named in another order. */
    Plan shuffled(long order) {
        List<Runnable> other = new ArrayList<>(steps);
        Collections.shuffle(other, new Random(order));
        return build(other);
    }

    /** Pairs of nodes of its networks, any two. */
    List<int[]> pairs(Plan plan, int count) {
        Random any = new Random(7);
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        List<int[]> pairs = new ArrayList<>();
        while (pairs.size() < count) {
            int a = network.node(any.nextInt(plan.terminals().size()));
            int b = any.nextBoolean() ? network.node(any.nextInt(plan.terminals().size()))
                    : network.bodyNode(any.nextInt(plan.bodies().size()));
            if (a != b) {
                pairs.add(new int[] {a, b});
            }
        }
        return pairs;
    }

    /** Pairs of a supply terminal and a return. */
    List<int[]> supplyToReturn(Plan plan) {
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        List<int[]> pairs = new ArrayList<>();
        for (String supply : supplies) {
            for (String back : returns) {
                pairs.add(new int[] {network.node(PlanIndex.terminal(plan, supply)),
                    network.node(PlanIndex.terminal(plan, back))});
            }
        }
        return pairs;
    }

    private Plan build(List<Runnable> order) {
        fixture = new PlanFixture().zone("bay", -20, 60).place("p", 0, 0, 0, "bay");
        order.forEach(Runnable::run);
        return fixture.build();
    }

    private void bodies() {
        int count = 3 + random.nextInt(3);
        for (int k = 0; k < count; k++) {
            String body = "U" + k;
            step(() -> fixture.body(body));
        }
        int bonds = count + random.nextInt(4);
        for (int k = 0; k < bonds; k++) {
            int to = k < count - 1 ? k + 1 : random.nextInt(count);
            int from = k < count - 1 ? random.nextInt(k + 1) : (to + 1) % count;
            double milliohm = 0.2 + 5 * random.nextDouble();
            String name = "WE" + k;
            step(() -> fixture.earthPoint("XA" + name, "U" + from));
            step(() -> fixture.earthPoint("XB" + name, "U" + to));
            step(() -> fixture.bond(name, "XA" + name, "XB" + name, milliohm));
        }
    }

    private void batteries() {
        battery("G1", "U0", 0.004 + 0.004 * random.nextDouble());
        supplies.add("G1.30");
        returns.add("G1.31");
        if (random.nextBoolean()) {
            battery("G2", "U1", 0.003 + 0.004 * random.nextDouble());
            step(() -> fixture.relay("K1"));
            cable("G1.30", "K1.30", 16);
            cable("K1.87", "G2.30", 16);
        }
        double limitA = 20 + random.nextInt(100);
        step(() -> fixture.alternator("G3", 14.4, limitA, "U2"));
        cable("G3.B+", "G1.30", 10);
        if (random.nextBoolean()) {
            double amps = 5 + random.nextInt(20);
            step(() -> fixture.device("G4", "charger", "L+:plus", "L-:minus"));
            step(() -> fixture.source("G4", "L+", "L-", 14.2, amps, "sun"));
            step(() -> fixture.device("V1", "diode", "A:plus", "B:plus"));
            step(() -> fixture.element("V1#diode", n -> new Plan.Diode("V1#diode", n.device("V1"), n.terminal("V1.A"),
                    n.terminal("V1.B"), 0.6, 0.002, 100)));
            cable("G4.L+", "V1.A", 4);
            cable("V1.B", "G1.30", 4);
            cable("G4.L-", "G1.31", 4);
        }
    }

    private void battery(String id, String body, double ohm) {
        step(() -> fixture.battery(id, 12, ohm, 3 * ohm, 100));
        step(() -> fixture.at(id, "p"));
        step(() -> fixture.earthPoint("X" + id, body));
        cable(id + ".31", "X" + id, 25);
    }

    private void boxes() {
        int boxes = 1 + random.nextInt(4);
        int load = 0;
        for (int k = 0; k < boxes; k++) {
            String box = "F" + k;
            int ways = 2 + random.nextInt(3);
            step(() -> fixture.box(box, ways + 1));
            String from = k == 0 ? "G1.30" : "F" + random.nextInt(k) + ".1";
            cable(from, box + ".30", 10);
            if (random.nextInt(3) == 0) {
                cable(from, box + ".30", 10);
            }
            for (int way = 1; way <= ways; way++) {
                String name = Integer.toString(way);
                double rating = way == 1 ? 60 : 10;
                step(() -> fixture.fuse(box, name, rating));
                if (way > 1) {
                    load("E" + load++, box + "." + way);
                }
            }
        }
    }

    private void load(String id, String from) {
        step(() -> fixture.load(id, "power", 20, 12));
        supplies.add(id + ".L+");
        cable(from, id + ".L+", 1.5);
        if (random.nextBoolean()) {
            cable(id + ".L-", "G1.31", 1.5);
        } else {
            String body = "U" + random.nextInt(3);
            step(() -> fixture.earthPoint("X" + id, body));
            cable(id + ".L-", "X" + id, 1.5);
        }
        returns.add(id + ".L-");
    }

    private void cable(String from, String to, double section) {
        String id = "W" + steps.size();
        double metres = 0.5 + 6 * random.nextDouble();
        step(() -> fixture.cable(id, section, metres, from, to));
    }

    private void step(Runnable step) {
        steps.add(step);
    }
}
