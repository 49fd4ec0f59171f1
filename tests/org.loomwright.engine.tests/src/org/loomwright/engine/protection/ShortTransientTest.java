// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.ReferenceCsv;
import org.loomwright.engine.fixture.TestTables;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.Adiabatic;
import org.loomwright.engine.heat.ConductorTemperature;

/** Temperatures of conductors in short circuits, against the adiabatic rule, stepwise integration and worked examples. */
class ShortTransientTest {
    private static final double NO_GATES = Double.NaN;

    private static ConductorHeat heat(double sectionMm2, double startC, double limitC, boolean losing) {
        ConductorTemperature thermal = losing
                ? new ConductorTemperature(0.018 / sectionMm2, sectionMm2, 3 * sectionMm2, 13 * sectionMm2, 40, 90, 40) : null;
        return new ConductorHeat(0, startC, "test", null, 13 * sectionMm2, 13 * sectionMm2, thermal, sectionMm2, limitC);
    }

    private static ShortTransient sweep(ConductorHeat heat, double lowA, double highA, CurvePair curve) {
        return ShortTransient.of(heat, lowA, highA, curve::slowestS, curve.slowestGatesA());
    }

    /** Published worked examples: the section that just withstands 1000 A or 1095 A for 0.1 s with k = 115. */
    @Test
    void publishedAdiabaticSectionsReachTheirLimitExactly() {
        int examples = 0;
        for (Map<String, String> row : ReferenceCsv.rows("worked_examples.csv")) {
            if (!row.get("topic").equals("adiabatic")) {
                continue;
            }
            double amps = value(row.get("inputs"), "fault_current_A");
            double seconds = value(row.get("inputs"), "time_s");
            double section = value(row.get("expected_outputs"), "area_min_mm2");
            assertEquals(115, value(row.get("inputs"), "k"));
            ConductorHeat heat = heat(section, 70, 160, false);
            ShortTransient transientHeat = ShortTransient.of(heat, amps, amps, a -> seconds, new double[0]);
            assertEquals(160, transientHeat.peakC(), 0.5, row.get("id"));
            assertEquals(115, transientHeat.k(), 0.5, row.get("id"));
            assertEquals(amps * amps * seconds, transientHeat.withstandA2s(), 0.01 * amps * amps * seconds, row.get("id"));
            examples++;
        }
        assertEquals(2, examples);
    }

    private static double value(String pairs, String name) {
        for (String pair : pairs.split(";")) {
            if (pair.startsWith(name + "=")) {
                return Double.parseDouble(pair.substring(name.length() + 1));
            }
        }
        throw new IllegalArgumentException(name + " is not in " + pairs);
    }

    /** With loss of heat the wire gets less hot than without, and the adiabatic rule is on the safe side. */
    @Test
    void theAdiabaticCaseIsABound() {
        for (double amps = 100; amps < 3000; amps *= 1.3) {
            double seconds = 2e5 / (amps * amps);
            ConductorHeat losing = heat(4, 50, 160, true);
            assertTrue(losing.afterC(amps, seconds) < losing.adiabaticC(50, amps * amps * seconds), "at " + amps);
        }
        double k = Adiabatic.k(50, 160);
        assertEquals(160, heat(4, 50, 160, false).adiabaticC(50, k * k * 16), 1e-9);
    }

    /** Middle-point steps of a ten-thousandth of the time. */
    @Test
    void temperatureAgreesWithStepwiseIntegration() {
        ConductorHeat heat = heat(2.5, 60, 160, true);
        ConductorTemperature t = heat.hottest();
        for (double[] pulse : new double[][] {{80, 20}, {250, 1}, {900, 0.05}}) {
            double temperature = 60;
            double step = pulse[1] / 10_000;
            for (int i = 0; i < 10_000; i++) {
                double middle = temperature + step / 2 * rate(t, pulse[0], temperature);
                temperature += step * rate(t, pulse[0], middle);
            }
            assertEquals(temperature, heat.afterC(pulse[0], pulse[1]), 1e-3 * (temperature - 60));
        }
    }

    private static double rate(ConductorTemperature t, double amps, double temperature) {
        double warm = 1 + 0.00393 * (temperature - 20);
        double atMax = 1 + 0.00393 * (t.maxC() - 20);
        double lostPerK = t.ratedA() * t.ratedA() * t.r20OhmPerM() * atMax / (t.maxC() - t.referenceC());
        double lost = (temperature - t.ambientC()) * lostPerK;
        return (amps * amps * t.r20OhmPerM() * warm - lost) / (3.45 * t.sectionMm2() + 1.9 * t.insulationMm2());
    }

    /** The worst of the sweep is not below any of ten thousand currents between its ends. */
    @Test
    void noCurrentBetweenIsHotterThanTheWorst() {
        CurvePair curve = CurvePair.of(30, PublishedCurves.highCurrentBlade()).orElseThrow();
        for (boolean losing : new boolean[] {true, false}) {
            for (double section : new double[] {1, 2.5, 6}) {
                ConductorHeat heat = heat(section, 60, 160, losing);
                ShortTransient worst = sweep(heat, 60, 2000, curve);
                for (int k = 0; k <= 10_000; k++) {
                    double amps = 60 * Math.pow(2000 / 60.0, k / 10_000.0);
                    double hotC = heat.afterC(amps, curve.slowestS(amps));
                    assertTrue(hotC <= worst.peakC() + 0.05, section + " mm2 at " + amps + ": " + hotC + " above " + worst);
                }
                assertTrue(worst.worstA() >= 60 && worst.worstA() <= 2000);
                assertTrue(worst.largestA() == 2000 && worst.smallestA() == 60);
            }
        }
    }

    @Test
    void aCurrentThatNeverClearsGivesItsSteadyTemperature() {
        CurvePair curve = CurvePair.of(30, TestTables.fuseCurve()).orElseThrow();
        ConductorHeat heat = heat(4, 45, 160, true);
        ShortTransient worst = sweep(heat, 35, 39, curve);
        assertEquals(heat.hottest().steadyC(39), worst.peakC(), 1e-6, "below 1.35 x 30 A it never clears");
        assertEquals(Double.POSITIVE_INFINITY, worst.seconds());
        assertEquals(FlowOptions.COPPER_MELTS_C, sweep(heat(0.5, 45, 160, true), 40, 40, curve).peakC(), "it would melt");
        ShortTransient above = sweep(heat, 35, 300, curve);
        assertTrue(above.worstA() > 40.4 && above.worstA() < 40.6 || above.peakC() > worst.peakC(), above.toString());
    }

    @Test
    void withoutALimitTheVerdictIsUnknown() {
        CurvePair curve = CurvePair.of(30, TestTables.fuseCurve()).orElseThrow();
        ShortTransient none = sweep(heat(4, 45, NO_GATES, true), 200, 900, curve);
        assertEquals(Verdict.UNKNOWN, none.verdict());
        assertTrue(Double.isNaN(none.k()));
    }

    /** Just below, at and above the limit. */
    @Test
    void theLimitItselfStillHolds() {
        double k = Adiabatic.k(70, 160);
        double amps = k * 2.5 / Math.sqrt(0.2);
        ConductorHeat heat = heat(2.5, 70, 160, false);
        assertEquals(Verdict.HOLDS, ShortTransient.of(heat, amps * 0.999, amps * 0.999, a -> 0.2, new double[0]).verdict());
        assertEquals(160, ShortTransient.of(heat, amps, amps, a -> 0.2, new double[0]).peakC(), 1e-9);
        assertEquals(Verdict.FAILS, ShortTransient.of(heat, amps * 1.001, amps * 1.001, a -> 0.2, new double[0]).verdict());
        assertTrue(ShortTransient.of(heat, amps * 0.999, amps * 0.999, a -> 0.2, new double[0]).adiabaticHolds());
    }
}
