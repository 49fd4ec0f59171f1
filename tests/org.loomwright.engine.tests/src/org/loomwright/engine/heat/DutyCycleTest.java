// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DutyCycleTest {
    private static final ConductorTemperature WIRE = new ConductorTemperature(0.018 / 2.5, 2.5, 4, 30, 40, 90, 25);

    @Test
    void peakLiesBetweenMeanSquareAndOnCurrent() {
        for (double period = 0.01; period < 1e5; period *= 3) {
            DutyCycle duty = new DutyCycle(period * 0.3, period);
            double peakC = duty.peakC(WIRE, 40, 5);
            assertTrue(peakC >= WIRE.steadyC(duty.rmsA(40, 5)) - 1e-9, () -> "period " + duty.periodS());
            assertTrue(peakC <= WIRE.steadyC(40) + 1e-9, () -> "period " + duty.periodS());
        }
    }

    @Test
    void peakGrowsWithThePeriodAtTheSameShare() {
        double before = 0;
        for (double period = 0.1; period < 1e4; period *= 2) {
            double now = new DutyCycle(period * 0.3, period).peakC(WIRE, 40, 5);
            assertTrue(now > before);
            before = now;
        }
    }

    @Test
    void alwaysOnIsSteadyAndVeryShortIsMeanSquare() {
        assertEquals(WIRE.steadyC(35), new DutyCycle(60, 60).peakC(WIRE, 35, 0), 1e-9);
        DutyCycle fast = new DutyCycle(3e-7, 1e-6);
        assertEquals(WIRE.steadyC(fast.rmsA(40, 5)), fast.peakC(WIRE, 40, 5), 1e-4);
        DutyCycle slow = new DutyCycle(1e6, 2e6);
        assertEquals(WIRE.steadyC(40), slow.peakC(WIRE, 40, 0), 1e-9);
    }

    @Test
    void closedFormAgreesWithManyCyclesOneAfterTheOther() {
        DutyCycle duty = new DutyCycle(40, 100);
        double nowC = 25;
        double peakC = 0;
        for (int cycle = 0; cycle < 200; cycle++) {
            peakC = WIRE.afterC(nowC, 50, 40);
            nowC = WIRE.afterC(peakC, 2, 60);
        }
        assertEquals(peakC, duty.peakC(WIRE, 50, 2), 1e-9);
    }

    @Test
    void moreCurrentBetweenIsHotter() {
        DutyCycle duty = new DutyCycle(10, 100);
        assertTrue(duty.peakC(WIRE, 40, 20) > duty.peakC(WIRE, 40, 0));
        assertEquals(WIRE.steadyC(60), new DutyCycle(1e-3, 1e7).peakC(WIRE, 0, 60), 1e-6);
    }

    @Test
    void aCurrentThatRunsAwayInTheMeanHasNoPeak() {
        assertEquals(Double.POSITIVE_INFINITY, new DutyCycle(50, 100).peakC(WIRE, 400, 0));
        assertEquals(Double.POSITIVE_INFINITY, new DutyCycle(1e9, 1e9).peakC(WIRE, 400, 0));
    }

    @Test
    void theCoveringDutyIsNoCoolerThanAnyOfThem() {
        List<DutyCycle> duties = List.of(new DutyCycle(10, 1000), new DutyCycle(2, 4), new DutyCycle(300, 900));
        DutyCycle covering = DutyCycle.covering(duties);
        for (DutyCycle duty : duties) {
            assertTrue(covering.peakC(WIRE, 40, 0) >= duty.peakC(WIRE, 40, 0) - 1e-9);
        }
        assertEquals(new DutyCycle(10, 20), DutyCycle.covering(List.of(new DutyCycle(10, 20))));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new DutyCycle(0, 10));
        assertThrows(IllegalArgumentException.class, () -> new DutyCycle(11, 10));
        assertThrows(IllegalArgumentException.class, () -> new DutyCycle(1, Double.NaN));
    }
}
