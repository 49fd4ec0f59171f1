// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.Network.LoadLaw;

/** Cancelling, malformed networks, options, zero resistances. */
class FlowSolverContractTest {
    private static final FlowOptions OPTIONS = FlowOptions.standard();

    private static void refused(Wiring wiring, String... words) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
                () -> FlowSolver.solve(wiring.network(), OPTIONS, new BasicMonitor()));
        for (String word : words) {
            assertTrue(e.getMessage().contains(word), e.getMessage());
        }
        assertTrue(e.getMessage().contains("expected"), e.getMessage());
    }

    @Test
    void cancelledMonitorStopsAtOnce() {
        BasicMonitor monitor = new BasicMonitor();
        monitor.setCanceled(true);
        Network network = new Wiring().emf("G1", "a", "0", 12, 0.1).network();
        assertThrows(CancellationException.class, () -> FlowSolver.solve(network, OPTIONS, monitor));
        assertThrows(CancellationException.class, () -> FlowSolver.collapseScale(network, 2, OPTIONS, monitor));
    }

    @Test
    void cancelIsHeardAtEveryStep() {
        Network network = LargeNetworkTest.vehicle(60).network();
        int[] all = {0};
        FlowSolver.solve(network, OPTIONS, new BasicMonitor() {
            @Override
            public boolean isCanceled() {
                all[0]++;
                return false;
            }
        });
        assertTrue(all[0] > 5);
        for (int after = 0; after < all[0]; after++) {
            int stop = after;
            int[] asked = {0};
            BasicMonitor monitor = new BasicMonitor() {
                @Override
                public boolean isCanceled() {
                    return asked[0]++ >= stop;
                }
            };
            assertThrows(CancellationException.class, () -> FlowSolver.solve(network, OPTIONS, monitor));
            assertEquals(stop + 1, asked[0]);
        }
    }

    @Test
    void malformedItemsAreRefusedByName() {
        refused(new Wiring().resistor("R7", "a", "0", -1), "R7", "-1.0", "ohm");
        refused(new Wiring().wire("W1", "a", "0", Double.NaN), "W1", "NaN");
        refused(new Wiring().emf("G1", "a", "0", Double.POSITIVE_INFINITY, 1), "G1", "volt");
        refused(new Wiring().power("E1", "a", "0", 0), "E1", "value");
        refused(new Wiring().load("E1", "a", "0", LoadLaw.POWER, 5, 11, 10), "E1", "restartV");
        refused(new Wiring().load("E1", "a", "0", null, 5), "E1", "law");
        refused(new Wiring().regulator("G2", "a", "0", 14, 0.01, -5), "G2", "limitA");
        refused(new Wiring().rectifier("V1", "a", "0", -0.1, 0.01), "V1", "forwardV");
        refused(new Wiring().converter("T1", "a", "0", "b", "0", 12, 0.01, 10, 1.2, 0), "T1", "efficiency");
        refused(new Wiring().converter("T1", "a", "0", "b", "0", 12, 0.01, 10, 0.9, -1), "T1", "standbyW");
        refused(new Wiring().contact("Q1", "a", "0", 0.01, null), "Q1", "drive");
        refused(new Wiring().contact("Q1", "a", "0", 0.01, new Network.ByCoil(0, 8, 3, false)), "Q1", "resistor");
        refused(new Wiring().contact("Q1", "a", "0", 0.01, new Network.ByComparator(9, false)), "Q1", "comparator");
        refused(new Wiring().resistor("K1", "a", "0", 90).contact("Q1", "a", "0", 0.01, new Network.ByCoil(0, 3, 8, false)),
                "Q1", "pickUpV");
        refused(new Wiring().comparator("B1", "a", "0", Double.NaN, 1), "B1", "onAt");
        refused(new Wiring().wire("W1", "a", "0", 1, 0, new Network.WireHeat(40, 0, 30, 105, 0.00393)), "W1", "ratedA");
        refused(new Wiring().wire("W1", "a", "0", 1, 0, new Network.WireHeat(40, 10, 105, 105, 0.00393)), "W1", "maxC");
        refused(new Wiring().add(new Network.Resistor("R1", 0, 5, 1)), "R1", "nodes 0 and 5");
        refused(new Wiring().add(new Network.Comparator("B1", -1, -1, 7, 1, 0)), "B1", "item 7");
    }

    @Test
    void malformedNetworkIsRefused() {
        Network without = new Network(List.of("a"), 3, List.of());
        assertThrows(IllegalArgumentException.class, () -> FlowSolver.solve(without, OPTIONS, new BasicMonitor()));
        assertThrows(IllegalArgumentException.class,
                () -> FlowSolver.solve(new Network(List.of(), 0, List.of()), OPTIONS, new BasicMonitor()));
        assertThrows(IllegalArgumentException.class,
                () -> FlowSolver.collapseScale(without, 0, OPTIONS, new BasicMonitor()));
    }

    @Test
    void malformedOptionsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> OPTIONS.withLoadScale(-1));
        assertThrows(IllegalArgumentException.class, () -> OPTIONS.withLoadScale(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new FlowOptions(true, 1, 0, 1e-6, 1000, 1e-12, 10, 10, 1e-6));
    }

    @Test
    void networkWithoutItemsIsSolved() {
        OperatingPoint point = FlowSolver.solve(new Network(List.of("a"), 0, List.of()), OPTIONS, new BasicMonitor());
        assertEquals(OperatingPoint.Status.SOLVED, point.status());
    }

    @Test
    void zeroResistancesAreRaisedToTheSmallest() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0).wire("W1", "a", "b", 0).contact("Q1", "b", "c", 0,
                new Network.Fixed(true)).resistor("F1", "c", "d", 0).current("E1", "d", "0", 50).solve();
        assertEquals(12 - 50 * 4e-6, at.volt("d"), 1e-9);
    }

    @Test
    void itemWithBothEndsOnOneNodeCarriesNothing() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).wire("W1", "a", "a", 0.1).power("E1", "a", "a", 10)
                .resistive("E2", "a", "0", 2).solve();
        assertEquals(0, at.amps("W1"));
        assertEquals(0, at.amps("E1"));
        assertEquals(12 * 2 / 2.1, at.volt("a"), 1e-9);
    }

    @Test
    void loadScaleMultipliesEveryLaw() {
        Wiring wiring = new Wiring().emf("G1", "a", "0", 12, 0.1).power("E1", "a", "0", 10).current("E2", "a", "0", 1)
                .resistive("E3", "a", "0", 12);
        Wiring twice = new Wiring().emf("G1", "a", "0", 12, 0.1).power("E1", "a", "0", 20).current("E2", "a", "0", 2)
                .resistive("E3", "a", "0", 6);
        assertArrayEquals(twice.solve().point().potentialV(), wiring.solve(OPTIONS.withLoadScale(2)).point().potentialV(), 1e-12);
        assertEquals(12, wiring.solve(OPTIONS.withLoadScale(0)).volt("a"), 1e-7);
    }

    @Test
    void solvingAgainGivesTheSameBits() {
        Network network = LargeNetworkTest.vehicle(100).network();
        OperatingPoint one = FlowSolver.solve(network, OPTIONS, new BasicMonitor());
        OperatingPoint two = FlowSolver.solve(network, OPTIONS, new BasicMonitor());
        assertArrayEquals(one.potentialV(), two.potentialV());
        assertArrayEquals(one.currentA(), two.currentA());
    }
}
