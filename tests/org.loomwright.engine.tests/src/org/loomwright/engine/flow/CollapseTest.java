// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Loads that ask for more than the network can bring. */
class CollapseTest {
    private static double collapse(Wiring wiring, double upTo) {
        return FlowSolver.collapseScale(wiring.network(), upTo, FlowOptions.standard(), new BasicMonitor());
    }

    @Test
    void powerCollapsesAtEmfSquaredOverFourResistances() {
        // 12^2 / (4 x 0.025) = 1440 W
        Wiring wiring = new Wiring().emf("G1", "s", "0", 12, 0.005).wire("W1", "s", "a", 0.02).power("E1", "a", "0", 2000);
        var at = wiring.solve();
        assertEquals(Status.COLLAPSED, at.point().status());
        assertEquals(0.72, at.point().loadScale(), 1e-6);
        assertEquals(6, at.volt("a"), 0.01);
        assertEquals(List.of("E1"), at.trouble());
        assertEquals(0.72, collapse(wiring, 3), 1e-6);
        assertEquals(0.5, collapse(wiring, 0.5));
    }

    @Test
    void currentCollapsesWhenItWouldPullTheVoltageToTheFloor() {
        // (12 - 0.5) / 1 = 11.5 A
        Wiring wiring = new Wiring().emf("G1", "a", "0", 12, 1).current("E1", "a", "0", 23);
        assertEquals(0.5, wiring.solve().point().loadScale(), 1e-6);
    }

    @Test
    void resistiveLoadsNeverCollapse() {
        assertEquals(1e6, collapse(new Wiring().emf("G1", "a", "0", 12, 1).resistive("E1", "a", "0", 1), 1e6));
    }

    @Test
    void resistiveLoadBesideTakesItsShareOfTheReserve() {
        // 4 ohm beside 1 ohm at scale s: Thevenin 12 / (1 + s/4) behind 1 / (1 + s/4); P s = 36 / (1 + s/4), P = 24 -> s = 1.1623
        Wiring wiring = new Wiring().emf("G1", "a", "0", 12, 1).resistive("E1", "a", "0", 4).power("E2", "a", "0", 24);
        // 24 s (1 + s/4) = 36 -> s^2 + 4 s - 6 = 0
        assertEquals(-2 + Math.sqrt(10), collapse(wiring, 10), 1e-5);
    }

    @Test
    void limitedSourceCollapsesAtItsPower() {
        // 14 V less 10 A x 0.01 ohm, times 10 A
        Wiring wiring = new Wiring().regulator("G2", "a", "0", 14, 0.01, 10).power("E1", "a", "0", 200);
        var at = wiring.solve();
        assertEquals(Status.COLLAPSED, at.point().status());
        assertEquals(139.0 / 200, at.point().loadScale(), 1e-6);
    }

    @Test
    void weakestLoadIsNamedAndOthersAreNot() {
        Wiring wiring = new Wiring().emf("G1", "s", "0", 12, 0.01).power("E1", "s", "0", 200).wire("W2", "s", "a", 0.01)
                .power("E2", "a", "0", 100).wire("W3", "s", "b", 0.5).power("E3", "b", "0", 100);
        var at = wiring.solve();
        assertEquals(Status.COLLAPSED, at.point().status());
        assertEquals(List.of("E3"), at.trouble());
        assertTrue(at.point().loadScale() > 0.6 && at.point().loadScale() < 0.72);
    }

    @Test
    void overloadBehindAConverterIsACollapseOfItsOutput() {
        Wiring wiring = new Wiring().emf("G1", "a", "0", 24, 0.02).converter("T1", "a", "0", "b", "0", 12, 0.01, 10, 0.9, 1)
                .power("E1", "b", "0", 150).power("E2", "a", "0", 100);
        var at = wiring.solve();
        assertEquals(Status.COLLAPSED, at.point().status());
        // (12 - 10 x 0.01) x 10 = 119 W
        assertEquals(119.0 / 150, at.point().loadScale(), 1e-6);
        assertEquals(List.of("E1"), at.trouble());
    }

    @Test
    void converterCanBeTheOneThatCannotBeFed() {
        Wiring wiring = new Wiring().emf("G1", "a", "0", 12, 0.5).converter("T1", "a", "0", "b", "0", 24, 0.01, 10, 0.9, 0.5)
                .current("E1", "b", "0", 5);
        var at = wiring.solve();
        assertEquals(Status.COLLAPSED, at.point().status());
        assertEquals(List.of("T1"), at.trouble());
        // input power at most 144 / 2 = 72 W: (24 - 0.01 i) i / 0.9 + 0.5 = 72
        double i = (24 - Math.sqrt(576 - 4 * 0.01 * 71.5 * 0.9)) / 0.02;
        assertEquals(i / 5, at.point().loadScale(), 1e-6);
    }

    @Test
    void hotCablesCollapseEarlierThanColdOnes() {
        Network.WireHeat heat = new Network.WireHeat(30, 60, 30, 105, 0.00393);
        Wiring wiring = new Wiring().emf("G1", "s", "0", 12, 0.005).wire("W1", "s", "a", 0.05, 0, heat)
                .power("E1", "a", "0", 100);
        double hot = collapse(wiring, 20);
        double cold = FlowSolver.collapseScale(wiring.network(), 20, FlowOptions.standard().withTemperatureFeedback(false),
                new BasicMonitor());
        assertEquals(144 / (4 * 0.055) / 100, cold, 1e-5);
        assertTrue(hot < cold && hot > 0.5 * cold, () -> hot + " against " + cold);
    }

    @Test
    void emptyNetworkHasAnOperatingPointAtAnyScale() {
        assertEquals(7, collapse(new Wiring().emf("G1", "a", "0", 12, 1), 7));
    }
}
