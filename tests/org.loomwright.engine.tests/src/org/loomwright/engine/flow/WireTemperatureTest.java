// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Conductors at the temperature that their own current gives them. */
class WireTemperatureTest {
    private static final Network.WireHeat HEAT = new Network.WireHeat(40, 20, 30, 105, 0.00393);

    @Test
    void conductorAtItsRatingAndReferenceAmbientReachesItsRatedTemperature() {
        var heat = new Network.WireHeat(30, 20, 30, 105, 0.00393);
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02, 0.001, heat).current("E1", "b", "0", 20)
                .solve();
        assertEquals(105, at.celsius("W1"), 1e-6);
        assertEquals(20 * (0.02 * (1 + 0.00393 * 85) + 0.001), at.volt("a", "b"), 1e-9);
    }

    @Test
    void temperatureFollowsTheClosedForm() {
        for (double amps : new double[] {0.5, 5, 15, 25, 35}) {
            var at = new Wiring().emf("G1", "a", "0", 24, 0.01).wire("W1", "a", "b", 0.02, 0, HEAT)
                    .current("E1", "b", "0", amps).solve();
            double x = 75 * (amps / 20) * (amps / 20) / (1 + 0.00393 * 85);
            double expected = (40 + x * (1 - 20 * 0.00393)) / (1 - 0.00393 * x);
            assertEquals(expected, at.celsius("W1"), 1e-8 * expected, amps + " A");
        }
    }

    @Test
    void powerLoadAndHeatFindTheirCommonPoint() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.005).wire("W1", "a", "b", 0.03, 0, HEAT).power("E1", "b", "0", 250)
                .solve();
        assertEquals(Status.SOLVED, at.point().status());
        double ohm = 0.03 * (1 + 0.00393 * (at.celsius("W1") - 20)) + 0.005;
        assertEquals((12 + Math.sqrt(144 - 4 * ohm * 250)) / 2, at.volt("b"), 1e-9);
        assertTrue(at.celsius("W1") > 90);
    }

    @Test
    void withoutFeedbackConductorsStayAtTwentyDegrees() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02, 0, HEAT).current("E1", "b", "0", 20)
                .solve(FlowOptions.standard().withTemperatureFeedback(false));
        assertEquals(20, at.celsius("W1"));
        assertEquals(0.4, at.volt("a", "b"), 1e-9);
    }

    @Test
    void conductorWithoutHeatStaysAtTwentyDegrees() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02).current("E1", "b", "0", 20).solve();
        assertEquals(20, at.celsius("W1"));
    }

    @Test
    void idleConductorHasItsAmbient() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02, 0, HEAT).solve();
        assertEquals(40, at.celsius("W1"), 1e-12);
    }

    @Test
    void runawayIsCutAtTheHighestTemperature() {
        // 100 A on a rating of 20 A: alpha x above 1
        var at = new Wiring().emf("G1", "a", "0", 24, 0.01).wire("W1", "a", "b", 0.02, 0, HEAT).current("E1", "b", "0", 100)
                .solve();
        assertEquals(FlowOptions.COPPER_MELTS_C, at.celsius("W1"));
        assertEquals(100 * 0.02 * (1 + 0.00393 * (FlowOptions.COPPER_MELTS_C - 20)), at.volt("a", "b"), 1e-9);
    }

    @Test
    void shortCircuitSettlesBetweenColdAndRunaway() {
        // cold 12 / 0.15 = 80 A would run away; hot it limits itself below the current of runaway
        for (double ohm = 0.02; ohm < 1; ohm *= 1.2) {
            var at = new Wiring().emf("G1", "a", "0", 12, 0.005).wire("W1", "a", "0", ohm, 0, HEAT).solve();
            assertEquals(Status.SOLVED, at.point().status());
            double hot = ohm * (1 + 0.00393 * (at.celsius("W1") - 20));
            assertEquals(12 / (0.005 + hot), at.amps("W1"), 1e-7);
        }
    }

    @Test
    void parallelHotCablesShareAccordingToTheirHeat() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02, 0, HEAT)
                .wire("W2", "a", "b", 0.02, 0, new Network.WireHeat(90, 20, 30, 105, 0.00393))
                .current("E1", "b", "0", 30).solve();
        assertTrue(at.amps("W1") > at.amps("W2"));
        assertTrue(at.celsius("W2") > at.celsius("W1"));
    }
}
