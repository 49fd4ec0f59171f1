// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.loomwright.engine.choice.ChoiceProblem.Item;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Option;
import org.loomwright.engine.choice.ChoiceProblem.Pairing;
import org.loomwright.engine.choice.ChoiceProblem.Term;

/** Trees of cables as problems: a trunk, feeders, branches; a drop limit a load and case; fuses paired with cables. */
final class RandomChoice {
    private static final double[] SECTIONS = {0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70};
    private final Random random;
    private final int options;
    private final List<Item> items = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Pairing> pairings = new ArrayList<>();
    private final List<double[]> ohms = new ArrayList<>();

    RandomChoice(long seed, int options) {
        random = new Random(seed);
        this.options = options;
    }

    /** Boxes with loads; every load with a drop limit in each of some cases, returns shared by a second tree. */
    ChoiceProblem tree(int boxes, int loads, int cases, boolean fuses) {
        int trunk = cable("trunk", 1 + random.nextDouble());
        int back = cable("back", 1 + random.nextDouble());
        for (int b = 0; b < boxes; b++) {
            int feeder = boxes > 1 ? cable("feeder" + b, 1 + 2 * random.nextDouble()) : -1;
            for (int l = 0; l < loads; l++) {
                String id = b + "." + l;
                int branch = cable("branch" + id, 0.5 + 3 * random.nextDouble());
                double amps = 1 + random.nextInt(15);
                for (int c = 0; c < cases; c++) {
                    List<Term> terms = new ArrayList<>();
                    terms.add(term(branch, amps));
                    terms.add(term(trunk, amps * StrictMath.min(12, loads * boxes) * (0.3 + 0.7 * random.nextDouble())));
                    terms.add(term(back, amps * StrictMath.min(12, loads * boxes) * (0.3 + 0.7 * random.nextDouble())));
                    if (feeder >= 0) {
                        terms.add(term(feeder, amps * StrictMath.min(5, loads) * (0.3 + 0.7 * random.nextDouble())));
                    }
                    limits.add(new Limit("drop " + id + " case " + c, random.nextInt(3) == 0 ? 0.36 : 1.2, terms));
                }
                if (fuses) {
                    fuse("fuse" + id, branch);
                }
            }
        }
        return new ChoiceProblem(items, limits, pairings, new ChoiceProblem.LeastCost());
    }

    /** Pools over the kinds of a problem. */
    Map<Integer, Double> pools() {
        return Map.of(3, 2.0 + 3 * random.nextDouble(), 4, 2.0 + 4 * random.nextDouble(), 5, 2.0, 7, 1.5);
    }

    Set<Integer> anyway() {
        return random.nextBoolean() ? Set.of() : Set.of(random.nextInt(SECTIONS.length));
    }

    private int cable(String id, double metres) {
        List<Option> some = new ArrayList<>();
        double[] of = new double[options];
        int first = random.nextInt(SECTIONS.length - options + 1);
        for (int o = 0; o < options; o++) {
            double section = SECTIONS[first + o];
            some.add(new Option(section + " mm2", priceOf(first + o) * metres, section * metres, first + o, metres));
            of[o] = 0.0185 / section * metres;
        }
        items.add(new Item(id, some));
        ohms.add(of);
        return items.size() - 1;
    }

    private static double priceOf(int section) {
        return 0.3 + 0.11 * SECTIONS[section];
    }

    private Term term(int cable, double amps) {
        List<Double> values = new ArrayList<>();
        for (double ohm : ohms.get(cable)) {
            values.add(ohm * amps);
        }
        return new Term(cable, values);
    }

    private void fuse(String id, int cable) {
        List<Option> some = new ArrayList<>();
        for (int o = 0; o < 3; o++) {
            some.add(new Option(5 * (o + 1) + " A", 0.1 * random.nextInt(3), o, -1, 0));
        }
        items.add(new Item(id, some));
        ohms.add(new double[3]);
        List<List<Boolean>> allowed = new ArrayList<>();
        for (int o = 0; o < 3; o++) {
            List<Boolean> row = new ArrayList<>();
            for (int k = 0; k < options; k++) {
                row.add(k >= o + random.nextInt(2) - 1);
            }
            allowed.add(row);
        }
        pairings.add(new Pairing("pair " + id, items.size() - 1, cable, allowed));
        // at least so many amperes
        int least = random.nextInt(3);
        limits.add(new Limit("load " + id, 0.5, List.of(new Term(items.size() - 1,
                List.of(least > 0 ? 1.0 : 0.0, least > 1 ? 1.0 : 0.0, 0.0)))));
    }
}
