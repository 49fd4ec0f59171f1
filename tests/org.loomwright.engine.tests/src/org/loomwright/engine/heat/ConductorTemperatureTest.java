// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.ReferenceCsv;

class ConductorTemperatureTest {
    /** 2.5 mm2 of copper as the test table rates it: 30 A from 40 to 90 degrees Celsius. */
    private static ConductorTemperature at(double ambientC) {
        return new ConductorTemperature(0.018 / 2.5, 2.5, 4, 30, 40, 90, ambientC);
    }

    @Test
    void ratedCurrentInReferenceAmbientGivesTheRatedTemperature() {
        assertEquals(90, at(40).steadyC(30), 1e-9);
        assertEquals(30, at(40).currentA(90), 1e-9);
    }

    @Test
    void steadyTemperatureBalancesHeat() {
        ConductorTemperature conductor = at(25);
        for (double amps = 1; amps < 60; amps += 3.7) {
            double hotC = conductor.steadyC(amps);
            double madeW = amps * amps * 0.018 / 2.5 * Copper.factor(hotC);
            assertEquals(madeW, (hotC - 25) * conductor.lossWPerKM(), 1e-9 * madeW);
            assertEquals(amps, conductor.currentA(hotC), 1e-9 * amps);
        }
    }

    @Test
    void temperatureRisesWithCurrentAndWithAmbient() {
        double before = 0;
        for (double amps = 0; amps <= 60; amps += 5) {
            double now = at(20).steadyC(amps);
            assertTrue(now > before);
            assertTrue(at(30).steadyC(amps) > now);
            before = now;
        }
    }

    @Test
    void noCurrentIsAmbientAndTooMuchRunsAway() {
        assertEquals(35, at(35).steadyC(0), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, at(35).steadyC(200));
    }

    @Test
    void transientStartsAtItsStartAndEndsSteady() {
        ConductorTemperature conductor = at(25);
        assertEquals(25, conductor.afterC(25, 30, 0), 1e-12);
        assertEquals(conductor.steadyC(30), conductor.afterC(25, 30, 1e6), 1e-9);
        assertEquals(25, conductor.afterC(80, 0, 1e6), 1e-9);
    }

    @Test
    void transientSolvesTheThermalEquation() {
        ConductorTemperature conductor = at(25);
        double h = 1e-3;
        for (double t = 1; t < 400; t *= 3) {
            double slope = (conductor.afterC(25, 45, t + h) - conductor.afterC(25, 45, t - h)) / (2 * h);
            double hotC = conductor.afterC(25, 45, t);
            double net = 45 * 45 * 0.018 / 2.5 * Copper.factor(hotC) - (hotC - 25) * conductor.lossWPerKM();
            assertEquals(net, conductor.capacityJPerKM() * slope, 1e-5 * Math.abs(net) + 1e-6);
        }
    }

    @Test
    void timeToATemperatureIsTheInverseOfTheTransient() {
        ConductorTemperature conductor = at(25);
        double seconds = conductor.secondsTo(25, 85, 60);
        assertEquals(85, conductor.afterC(25, 60, seconds), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, conductor.secondsTo(25, 85, 20));
        assertEquals(0, conductor.secondsTo(50, 50, 20));
    }

    @Test
    void shortCircuitsComeOutAsTheAdiabaticFormula() {
        ConductorTemperature bare = new ConductorTemperature(0.017241 / 6, 6, 0, 50, 40, 90, 70);
        double seconds = bare.secondsTo(70, 160, 5000);
        assertEquals(Adiabatic.sectionMm2(5000, seconds, Adiabatic.k(70, 160)), 6, 0.03);
    }

    @Test
    void adiabaticFactorsAreThoseOfTheStandard() {
        // IEC 60364-5-54 and BS 7671, tables of k for copper: 115 and 143
        assertEquals(115, Adiabatic.k(70, 160), 0.5);
        assertEquals(143, Adiabatic.k(90, 250), 0.5);
        assertEquals(143, Adiabatic.k(30, 160), 0.5);
        assertEquals(0, Adiabatic.k(160, 160));
    }

    @Test
    void resistanceFollowsThePublishedTemperatureFactors() {
        for (Map<String, String> row : ReferenceCsv.rows("resistance_temperature_factors.csv")) {
            double published = Double.parseDouble(row.get("factor_to_20C_published"));
            double hotC = Double.parseDouble(row.get("temperature_C"));
            assertEquals(published, 1 / Copper.factor(0.004, hotC), 0.001);
            assertEquals(published, 1 / Copper.factor(hotC), 0.005);
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ConductorTemperature(0, 1, 0, 1, 30, 70, 20));
        assertThrows(IllegalArgumentException.class, () -> new ConductorTemperature(1, 1, 0, 1, 70, 70, 20));
        assertThrows(IllegalArgumentException.class, () -> new ConductorTemperature(1, 1, 0, Double.NaN, 30, 70, 20));
    }
}
