// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Circuits that can be solved on paper; the arithmetic stands beside each. */
class HandSolvedCircuitTest {
    private static final double V = 1e-10;

    @Test
    void currentThroughOneLoopIsEmfOverAllResistance() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).wire("W1", "a", "b", 0.2).resistive("E1", "b", "0", 2.7).solve();
        // 12 / (0.1 + 0.2 + 2.7) = 4
        assertEquals(4, at.amps("W1"), V);
        assertEquals(11.6, at.volt("a"), V);
        assertEquals(10.8, at.volt("b"), V);
        assertEquals(-4, at.amps("G1"), V);
        assertEquals(Status.SOLVED, at.point().status());
        assertTrue(at.on("E1"));
    }

    @Test
    void parallelCablesShareByConductance() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.5).wire("W1", "a", "b", 0.3).wire("W2", "a", "b", 0.6)
                .resistive("E1", "b", "0", 1.3).solve();
        // 0.3 || 0.6 = 0.2; 12 / (0.5 + 0.2 + 1.3) = 6, shared 2 : 1
        assertEquals(4, at.amps("W1"), V);
        assertEquals(2, at.amps("W2"), V);
    }

    @Test
    void balancedBridgeCarriesNothingAcross() {
        var at = new Wiring().emf("G1", "a", "0", 10, 1).resistor("R1", "a", "l", 1).resistor("R2", "l", "0", 2)
                .resistor("R3", "a", "r", 3).resistor("R4", "r", "0", 6).resistor("R5", "l", "r", 5).solve();
        assertEquals(0, at.amps("R5"), V);
        // 3 || 9 = 2.25; 10 / 3.25
        assertEquals(-10 / 3.25, at.amps("G1"), V);
    }

    @Test
    void unbalancedBridgeFollowsThevenin() {
        var at = new Wiring().emf("G1", "a", "0", 10, 1e-6).resistor("R1", "a", "l", 1).resistor("R2", "l", "0", 3)
                .resistor("R3", "a", "r", 3).resistor("R4", "r", "0", 1).resistor("R5", "l", "r", 1.5).solve();
        // open: l at 7.5, r at 2.5; 0.75 + 0.75 behind them; 5 / (1.5 + 1.5)
        assertEquals(5.0 / 3, at.amps("R5"), 1e-5);
    }

    @Test
    void ladderOfEqualStepsFollowsTheGoldenRatio() {
        // series 1, shunt 1: an endless ladder looks like (1 + sqrt 5) / 2; it may end in that resistance at any step
        double golden = (1 + Math.sqrt(5)) / 2;
        Wiring wiring = new Wiring().emf("G1", "n0", "0", 10, 1);
        for (int k = 1; k <= 20; k++) {
            wiring.resistor("S" + k, "n" + (k - 1), "n" + k, 1).resistor("P" + k, "n" + k, "0", 1);
        }
        wiring.resistor("end", "n20", "0", golden);
        var at = wiring.solve();
        double first = 10 * golden / (1 + golden);
        for (int k = 0; k <= 20; k++) {
            assertEquals(first * Math.pow(1 - 1 / golden, k), at.volt("n" + k), 1e-9);
        }
    }

    @Test
    void twoBatteriesShareByEmfAndResistance() {
        var at = new Wiring().emf("G1", "a", "0", 12.8, 0.02).emf("G2", "a", "0", 12.5, 0.03).current("E1", "a", "0", 20)
                .solve();
        // (12.8 / 0.02 + 12.5 / 0.03 - 20) / (1 / 0.02 + 1 / 0.03) = 1036.6667 / 83.3333 = 12.44
        assertEquals(12.44, at.volt("a"), V);
        assertEquals(-18, at.amps("G1"), 1e-9);
        assertEquals(-2, at.amps("G2"), 1e-9);
    }

    @Test
    void constantPowerMeetsTheQuadraticOnItsUpperBranch() {
        for (double watt : new double[] {1, 100, 500, 1000, 1400, 1439}) {
            var at = new Wiring().emf("G1", "s", "0", 12, 0.005).wire("W1", "s", "a", 0.02).power("E1", "a", "0", watt).solve();
            double expected = (12 + Math.sqrt(144 - 4 * 0.025 * watt)) / 2;
            assertEquals(expected, at.volt("a"), 1e-8, watt + " W");
            assertEquals(watt / expected, at.amps("E1"), 1e-6, watt + " W");
            assertEquals(Status.SOLVED, at.point().status());
        }
    }

    @Test
    void constantPowerOverItsOwnReturnIsTheSameAsWithOneWire() {
        var at = new Wiring().emf("G1", "s", "0", 12, 0.005).wire("W1", "s", "a", 0.01).wire("W2", "b", "0", 0.01)
                .power("E1", "a", "b", 1000).solve();
        assertEquals((12 + Math.sqrt(144 - 100)) / 2, at.volt("a", "b"), 1e-9);
    }

    @Test
    void loadTheWrongWayRoundTakesThePowerAllTheSame() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).power("E1", "0", "a", 100).solve();
        assertEquals((12 + Math.sqrt(144 - 40)) / 2, at.volt("a"), V);
        assertTrue(at.amps("E1") < 0);
    }

    @Test
    void openContactLeavesAPartWithoutPotential() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).contact("Q1", "a", "b", 0.001, new Network.Fixed(false))
                .wire("W1", "b", "c", 0.1).power("E1", "c", "d", 50).solve();
        assertTrue(Double.isNaN(at.volt("b")) && Double.isNaN(at.volt("c")) && Double.isNaN(at.volt("d")));
        assertEquals(12, at.volt("a"), V);
        assertFalse(at.on("E1"));
        assertFalse(at.on("Q1"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void loadBehindAnOpenContactFallsToItsReturn() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).contact("Q1", "a", "b", 0.001, new Network.Fixed(false))
                .resistive("E1", "b", "0", 5).solve();
        assertEquals(0, at.volt("b"), V);
        assertFalse(at.on("E1"));
        assertEquals(0, at.amps("E1"), V);
    }

    @Test
    void networkWithoutSourceHasNoPotentials() {
        var at = new Wiring().wire("W1", "a", "0", 1).power("E1", "a", "0", 5).solve();
        assertTrue(Double.isNaN(at.volt("a")) && Double.isNaN(at.volt("0")));
        assertFalse(at.on("E1"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void islandWithItsOwnBatteryTakesItsLowestNodeAsReference() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).emf("G2", "p", "m", 24, 0.1).resistive("E2", "p", "m", 23.9).solve();
        // p was named before m
        assertEquals(0, at.volt("p"), V);
        assertEquals(-23.9, at.volt("m"), V);
    }
}
