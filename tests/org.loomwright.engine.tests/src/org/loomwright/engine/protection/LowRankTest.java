// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;

/** Bonds lost as updates of low rank against networks built without them, and properties of random networks. */
class LowRankTest {
    private static final int NETWORKS = 25;

    @Test
    void lostBondsAgreeWithARebuiltNetwork() {
        int compared = 0;
        for (int seed = 0; seed < NETWORKS; seed++) {
            RandomVehicle vehicle = new RandomVehicle(seed);
            Plan whole = vehicle.plan();
            for (Extreme extreme : Extreme.values()) {
                FaultNetwork network = FaultNetwork.together(whole, extreme);
                for (List<Integer> lost : losses(whole, seed)) {
                    FaultNetwork updated = network.without(lost.stream()
                            .mapToInt(bond -> network.branch(FaultBranch.Kind.BOND, bond)).toArray());
                    Plan less = without(whole, lost);
                    FaultNetwork rebuilt = FaultNetwork.together(less, extreme);
                    for (int[] pair : vehicle.pairs(whole, 12)) {
                        double expected = rebuilt.fault(pair[0], pair[1]).currentA();
                        double actual = updated.fault(pair[0], pair[1]).currentA();
                        String where = "vehicle " + seed + " " + extreme + " without " + lost;
                        assertEquals(expected, actual, 2e-3 + 1e-7 * Math.abs(expected), where);
                        double ohm = rebuilt.resistanceOhm(pair[0], pair[1]);
                        if (ohm < 1000) {
                            assertEquals(ohm, updated.resistanceOhm(pair[0], pair[1]), 1e-6 * ohm, where);
                            compared++;
                        }
                    }
                }
            }
        }
        assertTrue(compared > 1500, "compared " + compared);
    }

    @Test
    void currentsOfLostBondsAndKirchhoffHold() {
        int balanced = 0;
        for (int seed = 0; seed < NETWORKS; seed++) {
            RandomVehicle vehicle = new RandomVehicle(seed);
            Plan plan = vehicle.plan();
            FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
            int lost = network.branch(FaultBranch.Kind.BOND, 0);
            for (int[] pair : vehicle.pairs(plan, 6)) {
                FaultFlow flow = network.without(lost).fault(pair[0], pair[1]);
                assertEquals(0, flow.branchA(lost));
                if (flow.currentA() == 0) {
                    continue;
                }
                balanced++;
                double[] into = new double[1 + network.branches().stream().mapToInt(b -> Math.max(b.a(), b.b())).max().orElse(0)];
                for (int k = 0; k < network.branches().size(); k++) {
                    into[network.branches().get(k).b()] += flow.branchA(k);
                    into[network.branches().get(k).a()] -= flow.branchA(k);
                }
                for (FaultSource source : network.sources()) {
                    into[source.a()] += flow.sourceA(source.element());
                    into[source.b()] -= flow.sourceA(source.element());
                }
                into[pair[0]] -= flow.currentA();
                into[pair[1]] += flow.currentA();
                for (double left : into) {
                    assertEquals(0, left, 0.01 + 1e-7 * Math.abs(flow.currentA()), "vehicle " + seed);
                }
            }
        }
        assertTrue(balanced > NETWORKS, "balanced " + balanced);
    }

    /** Rayleigh's monotonicity: taking a resistance away never lowers the resistance between any two points. */
    @Test
    void losingABondNeverLowersAResistance() {
        for (int seed = 0; seed < NETWORKS; seed++) {
            RandomVehicle vehicle = new RandomVehicle(seed);
            Plan plan = vehicle.plan();
            FaultNetwork network = FaultNetwork.apart(plan, Extreme.SMALLEST);
            for (int bond = 0; bond < plan.bonds().size(); bond++) {
                FaultNetwork less = network.without(network.branch(FaultBranch.Kind.BOND, bond));
                for (int[] pair : vehicle.pairs(plan, 15)) {
                    double with = network.resistanceOhm(pair[0], pair[1]);
                    assertTrue(less.resistanceOhm(pair[0], pair[1]) >= with * (1 - 1e-9), "vehicle " + seed + " bond " + bond);
                }
            }
        }
    }

    /** Smallest is never above largest for the same two points. */
    @Test
    void theSmallestFaultIsNotAboveTheLargest() {
        for (int seed = 0; seed < NETWORKS; seed++) {
            RandomVehicle vehicle = new RandomVehicle(seed);
            Plan plan = vehicle.plan();
            FaultNetwork largest = FaultNetwork.together(plan, Extreme.LARGEST);
            FaultNetwork smallest = FaultNetwork.apart(plan, Extreme.SMALLEST);
            for (int[] pair : vehicle.supplyToReturn(plan)) {
                assertTrue(smallest.faultA(pair[0], pair[1]) <= largest.faultA(pair[0], pair[1]) * (1 + 1e-9), "vehicle " + seed);
            }
        }
    }

    private static List<List<Integer>> losses(Plan plan, long seed) {
        Random random = new Random(seed);
        List<List<Integer>> losses = new ArrayList<>();
        for (int bond = 0; bond < plan.bonds().size(); bond++) {
            losses.add(List.of(bond));
            int other = random.nextInt(plan.bonds().size());
            if (other != bond) {
                losses.add(List.of(bond, other));
            }
        }
        return losses;
    }

    static Plan without(Plan plan, List<Integer> lost) {
        List<Plan.Bond> bonds = new ArrayList<>();
        for (int bond = 0; bond < plan.bonds().size(); bond++) {
            if (!lost.contains(bond)) {
                bonds.add(plan.bonds().get(bond));
            }
        }
        return new Plan(plan.vehicle(), plan.arrangement(), plan.practice(), plan.domains(), plan.zones(), plan.places(),
                plan.runs(), plan.bodies(), plan.bodyLinks(), bonds, plan.devices(), plan.terminals(), plan.elements(),
                plan.cables(), plan.conductors(), plan.cases(), plan.waivers());
    }
}
