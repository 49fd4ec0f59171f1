// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;

/** A battery, a main fuse, a box with some loads, own returns over a bar: lengths, loads and temperatures by chance. */
final class SmallVehicle {
    private static final double[] RATINGS = {5, 7.5, 10, 15, 20, 25, 30};

    private SmallVehicle() {
    }

    /** A plan of a seed with so many loads; every load has a cable to it and one back. */
    static Plan of(long seed, int loads) {
        Random random = new Random(seed);
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").zone("bay", -10, 30 + random.nextInt(25))
                .place("front", 4000, 0, 800, "bay").place("rear", 0, 0, 800, "bay")
                .battery("G1", 12, 0.014, 0.018, 100).at("G1", "front").box("F1", 1).fuse("F1", "1", 60).at("F1", "front")
                .box("F2", loads).at("F2", "rear").negativeBar("N1", loads + 1).at("N1", "rear")
                .cable("W1", 16, 0.15, "G1.30", "F1.30").cable("W2", 16, length(random, 1, 4), "F1.1", "F2.30")
                .cable("W3", 16, length(random, 1, 4), "N1.N1", "G1.31");
        for (int l = 1; l <= loads; l++) {
            double amps = 1 + random.nextInt(9);
            String law = List.of("power", "current", "resistance").get(random.nextInt(3));
            fixture.fuse("F2", String.valueOf(l), rating(amps / 0.6)).load("E" + l, law, law.equals("power") ? 12 * amps
                    : law.equals("current") ? amps : 12 / amps, 12).at("E" + l, "rear")
                    .cable("W" + (10 * l), 2.5, length(random, 0.5, 5), "F2." + l, "E" + l + ".L+")
                    .cable("W" + (10 * l + 1), 2.5, length(random, 0.5, 5), "E" + l + ".L-", "N1.N" + (l + 1));
            if (random.nextInt(3) == 0) {
                fixture.set("E" + l + "#load", "critical", true);
            }
        }
        return fixture.build();
    }

    private static double length(Random random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private static double rating(double leastA) {
        for (double rating : RATINGS) {
            if (rating >= leastA) {
                return rating;
            }
        }
        return 30;
    }

    /** The same with sections on offer for some cables only, the others marked as existing. */
    static Plan only(Plan plan, List<String> open, int step) {
        List<Plan.Cable> cables = new ArrayList<>();
        for (Plan.Cable c : plan.cables()) {
            boolean is = open.contains(c.id());
            List<Plan.SectionOption> some = new ArrayList<>();
            for (int o = 0; o < c.options().size(); o += step) {
                some.add(c.options().get(o));
            }
            cables.add(new Plan.Cable(c.id(), c.designation(), c.part(), c.partSource(), c.insulation(), c.sectionMm2(), is,
                    c.path(), c.ducts(), c.lengthMm(), c.lengthParts(), c.zone(), c.maxC(), c.shortTimeMaxC(), c.sheathed(),
                    c.cores(), c.outerDiameterMm(), !is, c.ampacity(), c.grouping(), is ? some : c.options()));
        }
        return new Plan(plan.vehicle(), plan.arrangement(), plan.practice(), plan.domains(), plan.zones(), plan.places(),
                plan.runs(), plan.bodies(), plan.bodyLinks(), plan.bonds(), plan.devices(), plan.terminals(), plan.elements(),
                cables, plan.conductors(), plan.cases(), plan.waivers());
    }
}
