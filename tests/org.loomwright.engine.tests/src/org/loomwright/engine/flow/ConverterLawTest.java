// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Converters between domains. */
class ConverterLawTest {
    private static final double V = 1e-9;

    private static Wiring twentyFourToTwelve(double loadOhm) {
        return new Wiring().emf("G1", "a", "0", 24, 0.05)
                .converter("T1", "a", "0", "p", "m", 12, 0.01, 20, 0.9, 5).resistive("E1", "p", "m", loadOhm);
    }

    @Test
    void regulatedOutputDrawsItsPowerOverTheEfficiencyAndStandby() {
        var at = twentyFourToTwelve(1.19).solve();
        // 12 / (0.01 + 1.19) = 10 A at 11.9 V; input 11.9 x 10 / 0.9 + 5
        assertEquals(10, at.outputAmps("T1"), V);
        assertEquals(11.9, at.volt("p", "m"), V);
        double watt = 119 / 0.9 + 5;
        double v = (24 + Math.sqrt(576 - 4 * 0.05 * watt)) / 2;
        assertEquals(v, at.volt("a"), V);
        assertEquals(watt / v, at.amps("T1"), V);
        assertTrue(at.on("T1"));
        assertFalse(at.limiting("T1"));
    }

    @Test
    void outputBeyondItsLimitFallsInVoltage() {
        var at = twentyFourToTwelve(0.3).solve();
        // 20 A through 0.3 ohm
        assertEquals(20, at.outputAmps("T1"), V);
        assertEquals(6, at.volt("p", "m"), V);
        assertTrue(at.limiting("T1"));
        assertEquals(120 / 0.9 + 5, at.volt("a") * at.amps("T1"), 1e-8);
    }

    @Test
    void isolatedOutputHasItsOwnReference() {
        var at = twentyFourToTwelve(1.19).solve();
        assertEquals(0, at.volt("p"), V);
        assertEquals(-11.9, at.volt("m"), V);
    }

    @Test
    void unloadedConverterTakesItsStandby() {
        var at = new Wiring().emf("G1", "a", "0", 24, 0.05).converter("T1", "a", "0", "p", "0", 12, 0.01, 20, 0.9, 6).solve();
        assertEquals(12, at.volt("p"), V);
        assertEquals(6, at.volt("a") * at.amps("T1"), V);
    }

    @Test
    void converterWithoutInputDoesNothing() {
        var at = new Wiring().emf("G1", "a", "0", 24, 0.05).contact("Q1", "a", "b", 0.01, new Network.Fixed(false))
                .converter("T1", "b", "0", "p", "0", 12, 0.01, 20, 0.9, 6).power("E1", "p", "0", 20).solve();
        assertFalse(at.on("T1"));
        assertFalse(at.on("E1"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void converterBehindABlockedRectifierDoesNothing() {
        var at = new Wiring().emf("G1", "a", "0", 24, 0.05).rectifier("R1", "b", "a", 0.5, 0.01)
                .converter("T1", "b", "0", "p", "0", 12, 0.01, 20, 0.9, 6).power("E1", "p", "0", 20).solve();
        assertFalse(at.on("T1"));
        assertFalse(at.on("E1"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void convertersThatOnlyFeedEachOtherAreDead() {
        var at = new Wiring().converter("T1", "a", "0", "b", "0", 24, 0.01, 20, 0.9, 1)
                .converter("T2", "b", "0", "a", "0", 12, 0.01, 20, 0.9, 1).solve();
        assertFalse(at.on("T1"));
        assertFalse(at.on("T2"));
        assertTrue(Double.isNaN(at.volt("a")));
    }

    @Test
    void convertersInALoopAroundABatteryBalance() {
        // 12 V battery up to 24 V, from there a charger back to the battery at its limit of 5 A
        var at = new Wiring().emf("G1", "a", "0", 12, 0.02).converter("T1", "a", "0", "b", "0", 24, 0.01, 20, 0.9, 1)
                .converter("T2", "b", "0", "a", "0", 14, 0.01, 5, 0.9, 1).power("E1", "b", "0", 100).solve();
        assertEquals(Status.SOLVED, at.point().status());
        assertEquals(5, at.outputAmps("T2"), V);
        assertTrue(at.limiting("T2"));
        double into2 = (5 * at.volt("a")) / 0.9 + 1;
        double out1 = 100 + into2;
        double into1 = out1 / 0.9 + 1;
        assertEquals(into1, at.volt("a") * at.amps("T1"), 1e-7);
        assertEquals(12 - 0.02 * (at.amps("T1") - 5), at.volt("a"), V);
    }

    @Test
    void converterCutsOutAtLowInputAndStaysOutBelowItsRestart() {
        var at = new Wiring().emf("G1", "a", "0", 22, 0.5)
                .converter("T1", "a", "0", "p", "0", 12, 0.01, 20, 0.9, 6, 21, 23).power("E1", "p", "0", 100).solve();
        // 117 W through 0.5 ohm pull 22 V below 21 V; without load 22 V is below 23 V
        assertFalse(at.on("T1"));
        assertFalse(at.on("E1"));
        assertEquals(22, at.volt("a"), V);
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void converterThatRestartsAtItsUnloadedInputCycles() {
        var at = new Wiring().emf("G1", "a", "0", 22, 0.5)
                .converter("T1", "a", "0", "p", "0", 12, 0.01, 20, 0.9, 6, 21, 21.5).power("E1", "p", "0", 100).solve();
        assertEquals(Status.CYCLING, at.point().status());
        assertEquals(java.util.List.of("T1"), at.trouble());
    }

    @Test
    void chainOfConvertersCarriesThePowerUpstream() {
        var at = new Wiring().emf("G1", "a", "0", 24, 0.02).converter("T1", "a", "0", "b", "0", 12, 0.005, 40, 0.9, 2)
                .wire("W1", "b", "c", 0.05).converter("T2", "c", "0", "d", "0", 5, 0.005, 10, 0.8, 0.5)
                .current("E1", "d", "0", 8).solve();
        double out2 = 5 - 8 * 0.005;
        assertEquals(out2, at.volt("d"), V);
        double in2 = out2 * 8 / 0.8 + 0.5;
        double vc = (12 + Math.sqrt(144 - 4 * 0.055 * in2)) / 2;
        assertEquals(vc, at.volt("c"), V);
    }
}
