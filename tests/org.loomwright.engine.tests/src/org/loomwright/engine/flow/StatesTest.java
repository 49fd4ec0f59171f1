// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.Network.LoadLaw;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Relays, comparators and cut-outs with hysteresis. */
class StatesTest {
    private static Network.Drive coil(int item, double pickUpV, double dropOutV, boolean restClosed) {
        return new Network.ByCoil(item, pickUpV, dropOutV, restClosed);
    }

    @Test
    void relayPullsInAndFeedsItsLoad() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).resistor("K1", "a", "0", 90)
                .contact("K1.30", "a", "b", 0.01, coil(1, 8, 3, false)).resistive("E1", "b", "0", 3).solve();
        assertTrue(at.on("K1.30") && at.on("E1"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void restContactOpensWhenTheRelayPullsIn() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).resistor("K1", "a", "0", 90)
                .contact("K1.87a", "a", "b", 0.01, coil(1, 8, 3, true)).resistive("E1", "b", "0", 3).solve();
        assertFalse(at.on("K1.87a"));
        assertFalse(at.on("E1"));
    }

    @Test
    void relayHeldBelowItsPickUpStaysReleased() {
        // 6 V at the coil: above drop-out, below pick-up, released at the start
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).resistor("R1", "a", "c", 100).resistor("K1", "c", "0", 100)
                .contact("K1.30", "a", "b", 0.01, coil(2, 8, 3, false)).resistive("E1", "b", "0", 3).solve();
        assertFalse(at.on("K1.30"));
    }

    @Test
    void relayThatHoldsItselfStaysReleasedFromTheStart() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).contact("K1.30", "a", "b", 0.01, coil(2, 8, 3, false))
                .resistor("K1", "b", "0", 90).solve();
        assertFalse(at.on("K1.30"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void relayThatHoldsItselfLatchesOnceItWasPulledIn() {
        // a starting path through 30 ohm pulls it in; its own contact then bridges that path
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).resistor("S1", "a", "b", 30).resistor("K1", "b", "0", 90)
                .contact("K1.30", "a", "b", 0.01, coil(2, 8, 3, false)).solve();
        assertTrue(at.on("K1.30"));
        assertTrue(at.volt("b") > 11.9);
    }

    @Test
    void relayThatInterruptsItsOwnCoilBuzzes() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).contact("K1.87a", "a", "b", 0.01, coil(2, 8, 3, true))
                .resistor("K1", "b", "0", 90).solve();
        assertEquals(Status.CYCLING, at.point().status());
        assertEquals(List.of("K1.87a"), at.trouble());
    }

    @Test
    void relayWhoseLoadTakesItsOwnVoltageAwayCycles() {
        // pulls in at 12 V; its load leaves 12 x 0.2 / 1.21 = 1.98 V, below drop-out
        var at = new Wiring().emf("G1", "a", "0", 12, 1).resistor("K1", "a", "0", 90)
                .contact("K1.30", "a", "b", 0.01, coil(1, 8, 3, false)).resistive("E1", "b", "0", 0.2).solve();
        assertEquals(Status.CYCLING, at.point().status());
        assertEquals(List.of("K1.30"), at.trouble());
    }

    @Test
    void chainOfRelaysSettlesStepByStep() {
        Wiring wiring = new Wiring().emf("G1", "n0", "0", 12, 0.1);
        for (int k = 0; k < 6; k++) {
            wiring.resistor("K" + k, "n" + k, "0", 90)
                    .contact("Q" + k, "n" + k, "n" + (k + 1), 0.01, coil(wiring.item("K" + k), 8, 3, false));
        }
        var at = wiring.resistive("E1", "n6", "0", 6).solve();
        assertTrue(at.on("Q5") && at.on("E1"));
    }

    @Test
    void comparatorWithHysteresisStaysOffBetweenItsThresholds() {
        var at = new Wiring().emf("G1", "a", "0", 13.0, 0.1).comparator("B1", "a", "0", 13.3, 12.8)
                .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, false)).resistive("E1", "b", "0", 10).solve();
        assertFalse(at.on("B1"));
        assertFalse(at.on("Q1"));
    }

    @Test
    void cutOutThatWasClosedStaysClosedBetweenItsThresholds() {
        var at = new Wiring().emf("G1", "a", "0", 12.2, 0.01).cutOut("B1", "a", "0", 12.6, 11.8)
                .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, false)).resistive("E1", "b", "0", 10).solve();
        assertTrue(at.on("B1") && at.on("Q1") && at.on("E1"));
    }

    @Test
    void cutOutThatWasClosedOpensBelowItsLowerThreshold() {
        var at = new Wiring().emf("G1", "a", "0", 11.7, 0.01).cutOut("B1", "a", "0", 12.6, 11.8)
                .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, false)).resistive("E1", "b", "0", 10).solve();
        assertFalse(at.on("B1") || at.on("Q1"));
    }

    @Test
    void comparatorHoldsWhatItClosedWithinItsHysteresis() {
        // on at 13.4 V; the load it lets on leaves 13.4 x 10 / 10.21 = 13.12 V, still above 12.8 V
        var at = new Wiring().emf("G1", "a", "0", 13.4, 0.2).comparator("B1", "a", "0", 13.3, 12.8)
                .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, false)).resistive("E1", "b", "0", 10).solve();
        assertTrue(at.on("B1") && at.on("Q1") && at.on("E1"));
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void comparatorThatWasOnBeforeHoldsWithinItsHysteresis() {
        for (boolean before : new boolean[] {false, true}) {
            Wiring wiring = new Wiring().emf("G1", "a", "0", 13.0, 0.1);
            var at = wiring.add(new Network.Comparator("B1", wiring.node("a"), 0, -1, 13.3, 12.8, before))
                    .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, false)).resistive("E1", "b", "0", 100).solve();
            assertEquals(before, at.on("B1"));
            assertEquals(before, at.on("Q1"));
        }
    }

    @Test
    void comparatorThatSwitchesOffItsOwnCauseCycles() {
        var at = new Wiring().emf("G1", "a", "0", 13.4, 1).comparator("B1", "a", "0", 13.3, 12.8)
                .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, false)).resistive("E1", "b", "0", 10).solve();
        assertEquals(Status.CYCLING, at.point().status());
        assertEquals(List.of("B1", "Q1"), at.trouble());
    }

    @Test
    void lowVoltageComparatorOpensARestContact() {
        // below 11 V on, off above 12 V; the contact rests closed and opens
        var at = new Wiring().emf("G1", "a", "0", 10.8, 0.01).comparator("B1", "a", "0", 11, 12)
                .contact("Q1", "a", "b", 0.01, new Network.ByComparator(1, true)).resistive("E1", "b", "0", 10).solve();
        assertTrue(at.on("B1"));
        assertFalse(at.on("Q1"));
    }

    @Test
    void comparatorSensesACurrent() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).resistor("R1", "a", "b", 0.001).current("E1", "b", "0", 50)
                .currentComparator("B1", "R1", 40, 30).contact("Q1", "a", "c", 0.01, new Network.ByComparator(3, false))
                .resistive("P1", "c", "0", 100).solve();
        assertTrue(at.on("B1") && at.on("P1"));
    }

    @Test
    void loadBelowItsCutOutGoesOff() {
        var at = new Wiring().emf("G1", "a", "0", 11.5, 1).load("E1", "a", "0", LoadLaw.CURRENT, 2, 10, 12).solve();
        // 9.5 V with the load: off; 11.5 V without it is below the restart
        assertFalse(at.on("E1"));
        assertEquals(11.5, at.volt("a"), 1e-9);
        assertEquals(Status.SOLVED, at.point().status());
    }

    @Test
    void loadThatRestartsOnTheVoltageItLeavesBehindCycles() {
        var at = new Wiring().emf("G1", "a", "0", 11.5, 1).load("E1", "a", "0", LoadLaw.POWER, 25, 10, 11).solve();
        assertEquals(Status.CYCLING, at.point().status());
        assertEquals(List.of("E1"), at.trouble());
    }

    @Test
    void loadWithCutOutIsShedBeforeTheNetworkCollapses() {
        // 60 W through 1 ohm have no solution; the load that may cut out leaves, the other stays
        var at = new Wiring().emf("G1", "a", "0", 12, 1).load("E1", "a", "0", LoadLaw.POWER, 40, 10, 13)
                .power("E2", "a", "0", 20).solve();
        assertEquals(Status.SOLVED, at.point().status());
        assertFalse(at.on("E1"));
        assertTrue(at.on("E2"));
    }

    @Test
    void coilWithoutSupplyIsReleased() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).contact("Q1", "a", "c", 0.01, new Network.Fixed(false))
                .resistor("K1", "c", "d", 90).contact("K1.30", "a", "b", 0.01, coil(2, 8, 3, false))
                .resistive("E1", "b", "0", 3).solve();
        assertFalse(at.on("K1.30"));
    }
}
