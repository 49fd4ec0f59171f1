// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.TestTables;
import org.loomwright.engine.protection.Selectivity.Kind;

/** Selectivity of published and made-up curves. */
class SelectivityTest {
    private static CurvePair blade(double ratingA) {
        return CurvePair.of(ratingA, PublishedCurves.regularBlade()).orElseThrow();
    }

    private static CurvePair highCurrent(double ratingA) {
        return CurvePair.of(ratingA, PublishedCurves.highCurrentBlade()).orElseThrow();
    }

    private static Selectivity of(CurvePair up, CurvePair down, double largestA) {
        return Selectivity.of(1, up, 2, down, 1, largestA);
    }

    /**
     * Published gates: 40 A regular blade below an 80 A high-current blade. At every gate the fastest upstream is above the
     * slowest downstream; beyond them 480 A x 480 A x 0.04 s = 9216 A2s against 240 A x 240 A x 0.15 s = 8640 A2s.
     */
    @Test
    void publishedCurvesOfTwiceTheRatingAreSelectiveToTheEnd() {
        Selectivity full = of(highCurrent(80), blade(40), 5000);
        assertEquals(Kind.FULL, full.kind());
        assertEquals(Double.POSITIVE_INFINITY, full.limitA());
        assertEquals(9216 / 25e6, full.upstreamS(), 1e-9);
        assertEquals(8640 / 25e6, full.downstreamS(), 1e-9);
    }

    /** 70 A: 420 x 420 x 0.04 = 7056 A2s is less than 8640 A2s, so beyond some current both open. */
    @Test
    void oneRatingLessIsSelectiveUpToACurrent() {
        Selectivity upTo = of(highCurrent(70), blade(40), 5000);
        assertEquals(Kind.UP_TO, upTo.kind());
        assertTrue(upTo.limitA() > 140 && upTo.limitA() < 420, upTo.toString());
        assertEquals(upTo.upstreamS(), upTo.downstreamS(), 1e-9 * upTo.downstreamS());
        assertEquals(Kind.FULL, of(highCurrent(70), blade(40), upTo.limitA() * 0.999).kind(), "when no fault is larger");
        assertEquals(Kind.UP_TO, of(highCurrent(70), blade(40), upTo.limitA() * 1.001).kind());
    }

    @Test
    void theSameRatingTwiceIsNotSelectiveAtAll() {
        Selectivity none = of(blade(30), blade(30), 1000);
        assertEquals(Kind.NONE, none.kind());
        assertEquals(Kind.NONE, of(blade(20), blade(30), 1000).kind());
    }

    /** Below the limit no current of ten thousand opens upstream first. */
    @Test
    void theLimitIsTheFirstCurrentThatFails() {
        for (double[] ratings : new double[][] {{70, 40}, {60, 30}, {50, 30}, {100, 35}, {35, 10}}) {
            CurvePair up = highCurrent(ratings[0]);
            CurvePair down = blade(ratings[1]);
            double limitA = Selectivity.limitA(up, down, 1);
            double first = Double.POSITIVE_INFINITY;
            for (int k = 0; k < 20_000; k++) {
                double amps = ratings[1] * Math.pow(500, k / 20_000.0);
                double upS = up.fastestS(amps);
                if (Double.isFinite(upS) && upS <= down.slowestS(amps)) {
                    first = amps;
                    break;
                }
            }
            assertEquals(Double.isInfinite(limitA), Double.isInfinite(first), "" + ratings[0]);
            assertTrue(Double.isInfinite(first) || Math.abs(first - limitA) <= 1e-3 * limitA, first + " " + limitA);
        }
    }

    /** Where upstream carries half of the current, it stands twice as much. */
    @Test
    void theShareOfTheUpstreamDeviceCounts() {
        CurvePair up = CurvePair.of(20, TestTables.fuseCurve()).orElseThrow();
        CurvePair down = CurvePair.of(10, TestTables.fuseCurve()).orElseThrow();
        CurvePair twice = CurvePair.of(40, TestTables.fuseCurve()).orElseThrow();
        assertEquals(Selectivity.limitA(twice, down, 1), Selectivity.limitA(up, down, 0.5), 1e-9);
    }

    @Test
    void anUpstreamThatMeltsBeforeDownstreamClearsForCertainIsNotSelective() {
        Plan.FuseCurve slow = new Plan.FuseCurve("slow", "made for tests", List.of(3.0), List.of(100.0), List.of(4.0, 8.0),
                List.of(50.0, 1.0), List.of(), List.of());
        Selectivity none = of(CurvePair.of(10, TestTables.fuseCurve()).orElseThrow(), CurvePair.of(10, slow).orElseThrow(), 500);
        assertEquals(Kind.NONE, none.kind());
        assertEquals(15, none.limitA(), 1e-6, "upstream may melt from 1.5 x 10 A on, downstream clears from 40 A on");
    }
}
