// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Batteries, regulated sources and rectifiers together. */
class SourceLawTest {
    private static final double V = 1e-9;

    private static Wiring alternatorAndBattery(double loadA) {
        // 14.4 V less 5 mohm, at most 100 A, beside 12.6 V behind 10 mohm
        return new Wiring().regulator("G2", "a", "0", 14.4, 0.005, 100).emf("G1", "a", "0", 12.6, 0.01)
                .current("E1", "a", "0", loadA);
    }

    @Test
    void regulatorHoldsItsVoltageLessDroopWhileItCan() {
        var at = new Wiring().regulator("G2", "a", "0", 14.4, 0.01, 100).current("E1", "a", "0", 40).solve();
        assertEquals(14.0, at.volt("a"), V);
        assertTrue(at.on("G2"));
        assertFalse(at.limiting("G2"));
    }

    @Test
    void regulatorAtItsLimitLeavesTheRestToTheBattery() {
        var at = alternatorAndBattery(130).solve();
        // 100 A from the regulator, 30 A from the battery: 12.6 - 30 x 0.01
        assertEquals(12.3, at.volt("a"), V);
        assertEquals(-100, at.amps("G2"), V);
        assertEquals(-30, at.amps("G1"), V);
        assertTrue(at.limiting("G2"));
    }

    @Test
    void regulatorChargesTheBatteryWhenLightlyLoaded() {
        var at = new Wiring().regulator("G2", "a", "0", 14.4, 0.005, 150).emf("G1", "a", "0", 13.5, 0.01)
                .current("E1", "a", "0", 10).solve();
        // (14.4 - v) / 0.005 = (v - 13.5) / 0.01 + 10  ->  300 v = 2880 + 1350 - 10
        double v = (14.4 / 0.005 + 13.5 / 0.01 - 10) / 300;
        assertEquals(v, at.volt("a"), V);
        assertFalse(at.limiting("G2"));
    }

    @Test
    void regulatorRestsAboveItsVoltage() {
        var at = new Wiring().regulator("G2", "a", "0", 12.0, 0.005, 100).emf("G1", "a", "0", 12.6, 0.01)
                .current("E1", "a", "0", 20).solve();
        assertEquals(12.4, at.volt("a"), V);
        assertEquals(0, at.amps("G2"), 1e-12);
        assertFalse(at.on("G2"));
    }

    @Test
    void modesFollowTheLoadFromRestOverVoltageToLimit() {
        for (int amps = 1; amps <= 400; amps += 3) {
            var at = new Wiring().regulator("G2", "a", "0", 12.4, 0.002, 50).emf("G1", "a", "0", 12.6, 0.004)
                    .current("E1", "a", "0", amps).solve();
            // rests while the battery alone holds 12.4 V: up to 50 A; limits from v = 12.3 on: 75 A + 50 A
            assertEquals(amps > 50, at.on("G2"), amps + " A");
            assertEquals(amps >= 125, at.limiting("G2"), amps + " A");
        }
    }

    @Test
    void regulatorAloneShowsItsVoltageWithoutLoad() {
        var at = new Wiring().regulator("G2", "a", "0", 14.4, 0.01, 100).wire("W1", "a", "b", 0.1).solve();
        assertEquals(14.4, at.volt("b"), V);
        assertFalse(at.on("G2"));
    }

    @Test
    void regulatorWithoutLimitLeftDeliversNothing() {
        var at = new Wiring().regulator("G2", "a", "0", 14.4, 0.01, 0).emf("G1", "a", "0", 12, 0.1).solve();
        assertEquals(12, at.volt("a"), V);
        assertFalse(at.on("G2"));
    }

    @Test
    void regulatorHoldsTheVoltageWhereItSenses() {
        var at = new Wiring().sensing("G2", "a", "0", 14.2, 0.001, 100, "b", "0").wire("W1", "a", "b", 0.01)
                .emf("G1", "b", "0", 13.0, 0.05).current("E1", "b", "0", 30).solve();
        // at b: (14.2 - v) / 0.001 = 30 + (v - 13) / 0.05
        double v = (14.2 / 0.001 - 30 + 13.0 / 0.05) / (1 / 0.001 + 1 / 0.05);
        double amps = (14.2 - v) / 0.001;
        assertEquals(v, at.volt("b"), V);
        assertEquals(-amps, at.amps("G2"), 1e-7);
        assertEquals(v + 0.01 * amps, at.volt("a"), V);
    }

    @Test
    void remoteSensingKeepsTheLimit() {
        var at = new Wiring().sensing("G2", "a", "0", 14.2, 0.001, 60, "b", "0").wire("W1", "a", "b", 0.01)
                .emf("G1", "b", "0", 12.5, 0.01).power("E1", "b", "0", 1000).solve();
        assertEquals(-60, at.amps("G2"), V);
        assertTrue(at.limiting("G2"));
    }

    @Test
    void senseAcrossAnOpenContactFallsBackToOwnTerminals() {
        var at = new Wiring().sensing("G2", "a", "0", 14.2, 0.01, 100, "s", "0").contact("Q1", "a", "s", 0.001,
                new Network.Fixed(false)).current("E1", "a", "0", 20).solve();
        assertEquals(14.0, at.volt("a"), V);
    }

    @Test
    void equalRegulatorsShareByDroop() {
        var at = new Wiring().regulator("G1", "a", "0", 14.4, 0.01, 100).regulator("G2", "a", "0", 14.4, 0.03, 100)
                .current("E1", "a", "0", 40).solve();
        // 0.01 || 0.03 = 0.0075
        assertEquals(14.4 - 40 * 0.0075, at.volt("a"), V);
        assertEquals(-30, at.amps("G1"), 1e-8);
        assertEquals(-10, at.amps("G2"), 1e-8);
    }

    @Test
    void higherOfTwoSourcesFeedsThroughItsRectifier() {
        var at = new Wiring().emf("G1", "a", "0", 13.0, 0.01).emf("G2", "b", "0", 12.0, 0.01)
                .rectifier("R1", "a", "c", 0.5, 0.01).rectifier("R2", "b", "c", 0.5, 0.01).current("E1", "c", "0", 10).solve();
        assertEquals(13.0 - 0.5 - 0.2, at.volt("c"), V);
        assertTrue(at.on("R1"));
        assertFalse(at.on("R2"));
        assertEquals(12.0, at.volt("b"), V);
    }

    @Test
    void bothRectifiersConductUnderHeavyLoad() {
        var at = new Wiring().emf("G1", "a", "0", 13.0, 0.01).emf("G2", "b", "0", 12.0, 0.01)
                .rectifier("R1", "a", "c", 0.5, 0.01).rectifier("R2", "b", "c", 0.5, 0.01).current("E1", "c", "0", 100).solve();
        // (12.5 - v) / 0.02 + (11.5 - v) / 0.02 = 100
        assertEquals(11.0, at.volt("c"), V);
        assertTrue(at.on("R1") && at.on("R2"));
    }

    @Test
    void unloadedRectifierTellsThePotentialBehindIt() {
        var at = new Wiring().emf("G1", "a", "0", 13.0, 0.01).emf("G2", "b", "0", 12.0, 0.01)
                .rectifier("R1", "a", "c", 0.5, 0.01).rectifier("R2", "b", "c", 0.5, 0.01).wire("W1", "c", "d", 0.01).solve();
        assertEquals(12.5, at.volt("d"), 1e-8);
        assertFalse(at.on("R1"));
        assertFalse(at.on("R2"));
    }

    @Test
    void blockedRectifierFeedsNothing() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).rectifier("R1", "b", "a", 0.5, 0.01).power("E1", "b", "0", 50)
                .solve();
        assertEquals(Status.SOLVED, at.point().status());
        assertFalse(at.on("E1"));
        assertEquals(0, at.volt("b"), 1e-8);
    }

    @Test
    void partBetweenTwoBlockedRectifiersHasNoPotential() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).emf("G2", "b", "0", 14, 0.01).rectifier("R1", "a", "c", 0.5, 0.01)
                .rectifier("R2", "d", "b", 0.5, 0.01).wire("W1", "c", "d", 0.01).resistive("E1", "a", "0", 5).solve();
        assertTrue(Double.isNaN(at.volt("c")));
        assertTrue(Double.isNaN(at.volt("d")));
    }

    @Test
    void powerBeyondALimitedSourceFallsToTheBatteryBehindARectifier() {
        // the upper end of the regulator's limit is passed at 144 W; the battery then takes over below 12 V
        Wiring wiring = new Wiring().regulator("G2", "a", "0", 14.4, 1e-5, 10).emf("G1", "b", "0", 12, 0.01)
                .rectifier("R1", "b", "a", 0.0, 0.01);
        wiring.power("E1", "a", "0", 145);
        var at = wiring.solve();
        assertEquals(Status.SOLVED, at.point().status());
        assertTrue(at.on("R1"));
        // (12 - v) / 0.02 + 10 = 145 / v
        double b = 12 + 10 * 0.02;
        assertEquals((b + Math.sqrt(b * b - 4 * 0.02 * 145)) / 2, at.volt("a"), V);
    }

    @Test
    void ofTwoWaysToServeALoadTheHigherVoltageIsTaken() {
        // at 140 W the regulator alone holds 14.4 V, though 12 V with the battery's help would be an operating point too
        var at = new Wiring().regulator("G2", "a", "0", 14.4, 1e-5, 10).emf("G1", "b", "0", 12, 0.01)
                .rectifier("R1", "b", "a", 0.0, 0.01).power("E1", "a", "0", 140).solve();
        assertEquals(14.4, at.volt("a"), 1e-3);
        assertFalse(at.on("R1"));
    }
}
