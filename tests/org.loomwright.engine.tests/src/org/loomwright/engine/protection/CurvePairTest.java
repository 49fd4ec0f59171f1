// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.ReferenceCsv;
import org.loomwright.engine.fixture.TestTables;

/** Curve pairs against published gates (makers' data sheets to ISO 8820-3) and by their own rules. */
class CurvePairTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static CurvePair pair(double ratingA, Plan.FuseCurve curve) {
        return CurvePair.of(ratingA, curve).orElseThrow();
    }

    @Test
    void everyPublishedGateIsMetAtItsCurrent() {
        int gates = 0;
        for (String kind : List.of("Regular blade", "Maxi blade")) {
            CurvePair fuse = pair(40, kind.startsWith("Reg") ? PublishedCurves.regularBlade()
                    : PublishedCurves.highCurrentBlade());
            for (Map<String, String> row : PublishedCurves.rows(kind)) {
                double amps = 40 * Double.parseDouble(row.get("percent_of_rating")) / 100;
                if (!row.get("min_time_s").isEmpty()) {
                    double seconds = Double.parseDouble(row.get("min_time_s"));
                    assertEquals(seconds, fuse.fastestS(amps), 1e-9 * seconds, row::toString);
                    gates++;
                }
                if (!row.get("max_time_s").isEmpty()) {
                    double seconds = Double.parseDouble(row.get("max_time_s"));
                    assertEquals(seconds, fuse.slowestS(amps), 1e-9 * seconds, row::toString);
                    gates++;
                }
            }
        }
        assertEquals(17, gates);
    }

    /** The 40 A parts' data sheets name a typical melting I2t, which has to lie between the curves' extremes. */
    @Test
    void typicalMeltingIntegralsLieBetweenTheCurvesBeyondTheLastGate() {
        for (Map<String, String> row : ReferenceCsv.rows("fuse_i2t.csv")) {
            CurvePair fuse = pair(40, row.get("fuse_type").startsWith("regular") ? PublishedCurves.regularBlade()
                    : PublishedCurves.highCurrentBlade());
            double typical = Double.parseDouble(row.get("i2t_typical_A2s"));
            assertTrue(fuse.fastestA2s(1000) <= typical, row::toString);
            assertTrue(fuse.slowestA2s(1000) >= typical, row::toString);
        }
    }

    @Test
    void usableCurrentFollowsThePublishedAmbientPoints() {
        CurvePair fuse = pair(40, PublishedCurves.highCurrentBlade());
        assertEquals(0.85, fuse.at(65).factor(), 1e-12);
        assertEquals(30 / 40.0, fuse.at(85).factor(), 1e-12);
        assertEquals((34 + 30) / 2 / 40.0, fuse.at(75).factor(), 1e-12, "half-way between 65 and 85 degC");
        assertEquals(1, fuse.at(-40).factor(), 1e-12, "the nearest point beyond the ends");
        assertEquals(22 / 40.0, fuse.at(200).factor(), 1e-12);
        assertEquals(2, fuse.at(65).fastestS(2 * 34), 1e-9, "the gate at 200 % moves to 200 % of what it bears");
        assertEquals(1800, fuse.at(65).slowestS(1.35 * 34), 1e-6);
    }

    @Test
    void belowTheFirstGateNothingIsCertain() {
        CurvePair fuse = pair(10, TestTables.fuseCurve());
        assertEquals(INFINITE, fuse.slowestS(13.4));
        assertEquals(600, fuse.slowestS(13.5), 1e-9);
        assertEquals(INFINITE, fuse.fastestS(14.9));
        assertEquals(10, fuse.fastestS(15), 1e-9);
        assertEquals(INFINITE, fuse.slowestA2s(0));
        assertEquals(13.5, fuse.conventionalA(), 1e-12);
        assertEquals(15, fuse.meltingA(), 1e-12);
    }

    @Test
    void aGateIsMetWhateverRoundingDoesToTheCurrent() {
        for (double rating = 0.1; rating < 50; rating += 0.37) {
            CurvePair fuse = pair(rating, TestTables.fuseCurve()).at(41.7);
            assertEquals(600, fuse.slowestS(fuse.conventionalA()), 1e-6);
            for (double gate : fuse.slowestGatesA()) {
                assertTrue(fuse.slowestS(gate) < INFINITE);
            }
        }
    }

    /** From 2 x 20 s to 4 x 0.5 s: half-way in logarithms is sqrt(8) times and sqrt(10) s. */
    @Test
    void betweenGatesTheTimeFollowsAPowerOfTheCurrent() {
        CurvePair fuse = pair(10, TestTables.fuseCurve());
        assertEquals(Math.sqrt(10), fuse.slowestS(10 * Math.sqrt(8)), 1e-9);
        assertEquals(fuse.slowestS(25) * fuse.slowestS(32), fuse.slowestS(Math.sqrt(25 * 32)) * fuse.slowestS(Math.sqrt(25 * 32)),
                1e-9);
    }

    @Test
    void beyondTheLastGateTheIntegralIsConstant() {
        CurvePair fuse = pair(10, TestTables.fuseCurve());
        double lastA2s = 100 * 100 * 0.05;
        assertEquals(lastA2s, fuse.slowestA2s(100), 1e-9);
        assertEquals(lastA2s, fuse.slowestA2s(137), 1e-9);
        assertEquals(lastA2s, fuse.slowestA2s(20000), 1e-9);
        assertEquals(100 * 100 * 0.01, fuse.fastestA2s(5000), 1e-9);
    }

    @Test
    void theCurrentThatClearsInATimeIsTheInverse() {
        CurvePair fuse = pair(25, PublishedCurves.regularBlade()).at(60);
        for (double seconds : new double[] {1000, 600, 100, 5, 1, 0.3, 0.15, 0.01}) {
            double amps = fuse.clearingA(seconds);
            assertTrue(fuse.slowestS(amps) <= seconds * (1 + 1e-9), "at " + seconds);
            assertTrue(seconds >= 600 || fuse.slowestS(amps * 0.999) > seconds, "at " + seconds);
        }
        assertEquals(INFINITE, fuse.clearingA(0));
    }

    @Test
    void gatesMayComeInAnyOrderAndABreakersStepIsUpright() {
        Gates gates = Gates.of(List.of(8.0, 1.3, 8.0, 4.0), List.of(0.02, 1000.0, 3.0, 10.0));
        assertEquals(1000, gates.seconds(1.3), 1e-9);
        assertEquals(0.02, gates.seconds(8), 1e-12);
        assertEquals(3, gates.seconds(8 * (1 - 1e-12)), 1e-6);
        assertEquals(8, gates.current(1), 1e-12);
    }

    @Test
    void withoutACurveThereIsNoPair() {
        assertTrue(CurvePair.of(10, new Plan.FuseCurve("none", "made for tests", List.of(), List.of(), List.of(1.35),
                List.of(600.0), List.of(), List.of())).isEmpty());
    }
}
