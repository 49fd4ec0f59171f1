// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Finding;

/**
 * The least copper of a feeder with branches, were any section to be had, in closed form.
 *
 * <p>A feeder of length L0 carries I0 = sum of Ii to branches of lengths Li with currents Ii; each load may lose V in all. With
 * sections S the volume is L0 S0 + sum Li Si, to be least under rho (L0 I0 / S0 + Li Ii / Si) = V for every i. Give the feeder a part u
 * of V. Then S0 = rho L0 I0 / u and Si = rho Li Ii / (V - u), and the volume is rho (A / u + B / (V - u)) with A = L0^2 I0 and B = sum
 * of Li^2 Ii. Its derivative vanishes at u = V sqrt A / (sqrt A + sqrt B), where it is rho (sqrt A + sqrt B)^2 / V (Lagrange's
 * condition; for cables of one length in a row the sections then go with the roots of their currents). Sections on offer, joints and
 * warmth can only need more.
 */
class TreeBoundTest {
    private static final double RHO = 0.018;
    private static final double LIMIT_V = 0.36;

    private record Tree(double feederM, double[] branchM, double[] amps) {
        static Tree of(long seed) {
            Random random = new Random(seed);
            int branches = 2 + random.nextInt(3);
            double[] lengths = new double[branches];
            double[] currents = new double[branches];
            for (int i = 0; i < branches; i++) {
                lengths[i] = 1 + 4 * random.nextDouble();
                currents[i] = 1 + 7 * random.nextDouble();
            }
            return new Tree(1 + 4 * random.nextDouble(), lengths, currents);
        }

        double leastKg() {
            double a = 0;
            double b = 0;
            for (int i = 0; i < amps.length; i++) {
                a += feederM * feederM * amps[i];
                b += branchM[i] * branchM[i] * amps[i];
            }
            double root = Math.sqrt(a) + Math.sqrt(b);
            return RHO * root * root / LIMIT_V * 1e-3 * Copper.DENSITY_KG_PER_DM3;
        }

        Plan plan(List<Plan.SectionOption> options) {
            PlanFixture fixture = new PlanFixture().limit("drop-class.other", LIMIT_V / 12).limit("section-min.single", 0.01)
                    .domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).device("X1", "busbar", terminals("P", "plus"))
                    .device("X2", "busbar", terminals("N", "minus"));
            fixture.cable("W0", 1, feederM, "G1.30", "X1.0").cable("R0", 120, 0.001, "X2.0", "G1.31");
            OneLoad.ideal(OneLoad.bare(fixture, "W0", options), "R0");
            for (int i = 0; i < amps.length; i++) {
                int number = i + 1;
                fixture.load("E" + number, "current", amps[i], 12).cable("W" + number, 1, branchM[i], "X1." + number,
                        "E" + number + ".L+").cable("R" + number, 120, 0.001, "E" + number + ".L-", "X2." + number);
                OneLoad.ideal(OneLoad.bare(fixture, "W" + number, options), "R" + number);
            }
            return fixture.state("on", state -> {
                state.ambient(20);
                for (int i = 1; i <= amps.length; i++) {
                    state.on("E" + i);
                }
            }).build();
        }

        private String[] terminals(String bar, String role) {
            String[] names = new String[amps.length + 1];
            for (int i = 0; i < names.length; i++) {
                names[i] = i + ":" + role + ":" + bar;
            }
            return names;
        }
    }

    @Test
    void noChoiceHasLessAndFineStepsComeNear() {
        double step = 0.04;
        List<Plan.SectionOption> fine = OneLoad.sections(RHO, OneLoad.stepped(0.1, 60, step));
        for (int seed = 0; seed < 12; seed++) {
            Tree tree = Tree.of(seed);
            SizingResult result = OneLoad.sized(tree.plan(fine));
            assertEquals(List.of(), result.troubles().stream().map(Finding::title).toList(), "seed " + seed);
            assertEquals(0, result.gap(), "seed " + seed);
            assertTrue(result.after().copperKg() >= tree.leastKg() * (1 - 1e-9), "seed " + seed);
            // rounding every section up to the next step is one choice, so the best has at most one step more
            assertTrue(result.after().copperKg() <= tree.leastKg() * (1 + step) * (1 + 1e-6), "seed " + seed + ": "
                    + result.after().copperKg() + " kg, bound " + tree.leastKg());
            assertTrue(result.after().copperKg() <= result.alone().copperKg() + 1e-9, "seed " + seed);
        }
    }

    @Test
    void sectionsOfTheTradeNeedMoreThanTheBound() {
        List<Plan.SectionOption> coarse = OneLoad.sections(RHO, List.of(0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0,
                50.0));
        for (int seed = 0; seed < 12; seed++) {
            Tree tree = Tree.of(seed);
            double kg = OneLoad.sized(tree.plan(coarse)).after().copperKg();
            assertTrue(kg >= tree.leastKg() * (1 - 1e-9) && kg < 2 * tree.leastKg(), "seed " + seed);
        }
    }
}
