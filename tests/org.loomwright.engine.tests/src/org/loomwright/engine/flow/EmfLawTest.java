// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** A battery that takes current through a larger resistance than it gives it. */
class EmfLawTest {
    private static final double V = 1e-9;

    @Test
    void itGivesThroughTheOneResistance() {
        var at = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).current("E1", "a", "0", 50).solve();
        assertEquals(12.6 - 50 * 0.005, at.volt("a"), V);
        assertEquals(-50, at.amps("G1"), V);
    }

    @Test
    void itTakesThroughTheOther() {
        var at = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).regulator("G2", "a", "0", 14.4, 0.002, 150).solve();
        // (14.4 - 12.6) / (0.002 + 0.04)
        assertEquals(1.8 / 0.042, at.amps("G1"), V);
        assertEquals(12.6 + 0.04 * 1.8 / 0.042, at.volt("a"), V);
    }

    @Test
    void aSourceThatCannotGiveMoreThanTheBatteryTakesStaysAtItsLimit() {
        var at = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).regulator("G2", "a", "0", 14.4, 0.002, 30).solve();
        assertEquals(12.6 + 30 * 0.04, at.volt("a"), V);
        assertTrue(at.limiting("G2"));
    }

    @Test
    void bothResistancesMeetAtNoCurrent() {
        for (int load = 0; load <= 100; load++) {
            Wiring wiring = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).regulator("G2", "a", "0", 20, 0.002, 50);
            var at = (load == 0 ? wiring : wiring.current("E1", "a", "0", load)).solve();
            double taken = 50 - load;
            assertEquals(taken, at.amps("G1"), 1e-8);
            assertEquals(12.6 + taken * (taken > 0 ? 0.04 : 0.005), at.volt("a"), V, load + " A");
        }
    }

    @Test
    void theFullerOfTwoChargesTheOther() {
        var at = new Wiring().cell("G1", "a", "0", 12.8, 0.01, 0.1).cell("G2", "b", "0", 12.2, 0.01, 0.1)
                .wire("W1", "a", "b", 0.005).solve();
        assertEquals(0.6 / (0.01 + 0.005 + 0.1), at.amps("G2"), V);
        assertEquals(-at.amps("G2"), at.amps("G1"), V);
    }

    @Test
    void aPowerLoadTakesTheBatteryFromChargingToGiving() {
        for (int watt = 100; watt <= 1500; watt += 50) {
            var at = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.04).regulator("G2", "a", "0", 20, 1e-6, 50)
                    .power("E1", "a", "0", watt).solve();
            // the limit of 50 A is 630 W at 12.6 V; (12.6 - v) / R + 50 = P / v
            double ohm = watt < 630 ? 0.04 : 0.005;
            double open = 12.6 + 50 * ohm;
            assertEquals((open + Math.sqrt(open * open - 4 * ohm * watt)) / 2, at.volt("a"), 1e-8, watt + " W");
        }
    }

    @Test
    void beyondItsLargestPowerItCollapsesAsWithOneResistance() {
        // E^2 / 4R (maximum power theorem) with the resistance to current that it gives
        OperatingPoint point = FlowSolver.solve(new Wiring().cell("G1", "a", "0", 12, 0.01, 0.3).power("E1", "a", "0", 7200)
                .network(), FlowOptions.standard(), new BasicMonitor());
        assertEquals(Status.COLLAPSED, point.status());
        assertEquals(0.5, point.loadScale(), 1e-4);
    }

    @Test
    void startValuesDoNotMatterWhereBatteriesRest() {
        Random random = new Random(4);
        for (int trial = 0; trial < 50; trial++) {
            Wiring wiring = new Wiring();
            for (int k = 0; k < 5; k++) {
                // some at the very same voltage, so that no current flows between them
                wiring.cell("G" + k, "n" + k, "0", 12 + 0.2 * random.nextInt(2), 0.01, 0.01 * (1 + random.nextInt(9)))
                        .wire("W" + k, "n" + k, "bus", 0.01);
            }
            Network network = wiring.network();
            OperatingPoint one = FlowSolver.solve(network, FlowOptions.standard(), new BasicMonitor());
            double[] start = random.doubles(network.nodes(), -20, 40).toArray();
            OperatingPoint two = FlowSolver.solve(network, FlowOptions.standard(), new BasicMonitor(), start);
            FlowAssert.checked(one, FlowOptions.standard());
            assertArrayEquals(one.potentialV(), two.potentialV(), 1e-12);
        }
    }

    @Test
    void lessResistanceToChargingIsRefused() {
        Wiring wiring = new Wiring().cell("G1", "a", "0", 12.6, 0.005, 0.004);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, wiring::solve);
        assertTrue(refused.getMessage().contains("G1") && refused.getMessage().contains("chargeOhm is 0.004"),
                refused.getMessage());
    }
}
