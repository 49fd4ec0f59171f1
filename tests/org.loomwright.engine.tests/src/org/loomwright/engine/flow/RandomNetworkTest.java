// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Properties that hold in every network. */
class RandomNetworkTest {
    private static final int NETWORKS = 320;
    private static final FlowOptions OPTIONS = FlowOptions.standard();

    private static OperatingPoint solve(Network network) {
        return FlowSolver.solve(network, OPTIONS, new BasicMonitor());
    }

    @Test
    void everyLawAndBothBalancesHold() {
        Map<Status, Integer> ended = new EnumMap<>(Status.class);
        for (int seed = 0; seed < NETWORKS; seed++) {
            OperatingPoint point = solve(RandomNetworks.of(seed).network());
            try {
                FlowAssert.checked(point, OPTIONS);
            } catch (AssertionError e) {
                throw new AssertionError("network " + seed + " (" + point.status() + "): " + e.getMessage(), e);
            }
            ended.merge(point.status(), 1, Integer::sum);
        }
        assertTrue(ended.get(Status.SOLVED) > 0.7 * NETWORKS, ended::toString);
        assertTrue(ended.getOrDefault(Status.COLLAPSED, 0) > 0, ended::toString);
    }

    @Test
    void orderOfItemsAndNodesDoesNotMatter() {
        for (int seed = 0; seed < NETWORKS; seed++) {
            Network network = RandomNetworks.of(seed).network();
            Shuffled shuffled = Shuffled.of(network, seed);
            OperatingPoint one = solve(network);
            OperatingPoint two = solve(shuffled.network());
            assertEquals(one.status(), two.status(), "network " + seed);
            for (int item = 0; item < network.items().size(); item++) {
                int there = shuffled.item()[item];
                String where = "network " + seed + " " + network.items().get(item);
                assertEquals(one.on()[item], two.on()[there], where);
                assertEquals(one.limiting()[item], two.limiting()[there], where);
                int[] ends = FlowAssert.ends(network.items().get(item));
                // at the edge of collapse the scale itself is found within a tolerance
                double within = one.status() == Status.COLLAPSED ? 1e-2 : 1e-11;
                for (int k = 0; k < ends.length; k += 2) {
                    assertEquals(one.voltage(ends[k], ends[k + 1]),
                            two.voltage(shuffled.node()[ends[k]], shuffled.node()[ends[k + 1]]), within, where);
                }
            }
        }
    }

    @Test
    void startValuesDoNotMatter() {
        Random random = new Random(7);
        for (int seed = 0; seed < NETWORKS; seed++) {
            Network network = RandomNetworks.of(seed).network();
            OperatingPoint one = solve(network);
            double[] start = random.doubles(network.nodes(), -50, 50).toArray();
            OperatingPoint two = FlowSolver.solve(network, OPTIONS, new BasicMonitor(), start);
            assertEquals(one.status(), two.status(), "network " + seed);
            assertArrayEquals(one.on(), two.on(), "network " + seed);
            assertArrayEquals(one.limiting(), two.limiting(), "network " + seed);
            assertArrayEquals(one.potentialV(), two.potentialV(), one.status() == Status.COLLAPSED ? 1e-2 : 1e-11,
                    "network " + seed);
        }
    }

    @Test
    void threadsDoNotMatterToTheBit() {
        List<OperatingPoint> alone = new ArrayList<>();
        for (int seed = 0; seed < 60; seed++) {
            alone.add(solve(RandomNetworks.of(seed).network()));
        }
        List<OperatingPoint> together = IntStream.range(0, 60).parallel()
                .mapToObj(seed -> solve(RandomNetworks.of(seed).network())).toList();
        for (int seed = 0; seed < 60; seed++) {
            assertArrayEquals(alone.get(seed).potentialV(), together.get(seed).potentialV());
            assertArrayEquals(alone.get(seed).currentA(), together.get(seed).currentA());
            assertArrayEquals(alone.get(seed).temperatureC(), together.get(seed).temperatureC());
        }
    }

    @Test
    void moreLoadNeverRaisesTheVoltageOfABatteryNetwork() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            Wiring wiring = new Wiring().emf("G1", "n0", "0", 12.6, 0.01);
            for (int k = 1; k < 20; k++) {
                wiring.wire("W" + k, "n" + random.nextInt(k), "n" + k, 0.002 + 0.02 * random.nextDouble())
                        .power("E" + k, "n" + k, "0", 1 + 10 * random.nextDouble());
            }
            OperatingPoint light = FlowSolver.solve(wiring.network(), OPTIONS.withLoadScale(0.8), new BasicMonitor());
            OperatingPoint heavy = solve(wiring.network());
            for (int node = 1; node < wiring.network().nodes(); node++) {
                assertTrue(heavy.potentialV()[node] <= light.potentialV()[node] + 1e-12);
            }
        }
    }

    /** A network with its nodes and items in another order. */
    private record Shuffled(Network network, int[] node, int[] item) {
        static Shuffled of(Network original, long seed) {
            Random random = new Random(seed);
            int[] node = places(original.nodes(), random);
            int[] item = places(original.items().size(), random);
            List<String> ids = new ArrayList<>(Collections.nCopies(node.length, ""));
            for (int k = 0; k < node.length; k++) {
                ids.set(node[k], original.nodeIds().get(k));
            }
            List<Network.Item> items = new ArrayList<>(Collections.nCopies(item.length, (Network.Item) null));
            for (int k = 0; k < item.length; k++) {
                items.set(item[k], Renumbered.of(original.items().get(k), node, item));
            }
            return new Shuffled(new Network(ids, node[original.reference()], items), node, item);
        }

        private static int[] places(int size, Random random) {
            List<Integer> order = new ArrayList<>(IntStream.range(0, size).boxed().toList());
            Collections.shuffle(order, random);
            return order.stream().mapToInt(Integer::intValue).toArray();
        }
    }
}
