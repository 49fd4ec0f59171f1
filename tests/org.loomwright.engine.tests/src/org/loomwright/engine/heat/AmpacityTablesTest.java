// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.RecordChange;
import org.loomwright.engine.fixture.ReferenceCsv;
import org.loomwright.engine.fixture.TestTables;

class AmpacityTablesTest {
    private static Plan.Ampacity table(List<Double> sections, List<Double> amps) {
        return new Plan.Ampacity("t", "made for tests", false, 1, 40, 90, sections, amps);
    }

    @Test
    void publishedPointsComeBackAsPublished() {
        assertEquals(30, AmpacityTables.ratedA(TestTables.ampacity(), 2.5));
        assertEquals(10, AmpacityTables.ratedA(TestTables.ampacity(), 0.5));
        assertEquals(350, AmpacityTables.ratedA(TestTables.ampacity(), 120));
    }

    @Test
    void betweenPointsThePowerOfTheSectionIsKept() {
        Plan.Ampacity power = table(List.of(1.0, 16.0), List.of(10.0, 10 * Math.pow(16, 0.625)));
        assertEquals(10 * Math.pow(4, 0.625), AmpacityTables.ratedA(power, 4), 1e-9);
    }

    @Test
    void ratingsNeverFallBetweenPoints() {
        double before = 0;
        for (double section = 0.5; section <= 120; section += 0.25) {
            double now = AmpacityTables.ratedA(TestTables.ampacity(), section);
            assertTrue(now > before);
            before = now;
        }
    }

    @Test
    void tablesThatCannotBeRightAreRefused() {
        assertRefused("falls", table(List.of(1.0, 1.5, 2.5), List.of(10.0, 20.0, 19.0)), 1);
        assertRefused("grow", table(List.of(1.0, 1.0), List.of(10.0, 20.0)), 1);
        assertRefused("above 0", table(List.of(0.0, 1.0), List.of(10.0, 20.0)), 1);
        assertRefused("rating for each", table(List.of(1.0, 2.0), List.of(10.0)), 1);
        assertRefused("reference", new Plan.Ampacity("t", "", false, 1, 90, 90, List.of(1.0), List.of(10.0)), 1);
    }

    @Test
    void sectionsOutsideTheTableAreRefused() {
        assertRefused("0.5 to 120", TestTables.ampacity(), 150);
        assertRefused("0.5 to 120", TestTables.ampacity(), 0.35);
        assertRefused("NaN", TestTables.ampacity(), Double.NaN);
    }

    private static void assertRefused(String says, Plan.Ampacity table, double section) {
        String message = assertThrows(AmpacityTables.TableException.class, () -> AmpacityTables.ratedA(table, section))
                .getMessage();
        assertTrue(message.contains(says), message);
    }

    @Test
    void ambientFactorsAreThePublishedOnes() {
        List<Map<String, String>> rows = ReferenceCsv.rows("ampacity_ambient_ref45C.csv");
        assertEquals(29, rows.size());
        for (Map<String, String> row : rows) {
            double factor = AmpacityTables.ambientFactor(Double.parseDouble(row.get("insulation_C")),
                    Double.parseDouble(row.get("reference_ambient_C")), Double.parseDouble(row.get("ambient_C")));
            assertEquals(Double.parseDouble(row.get("factor_published")), factor, 0.01, row::toString);
        }
    }

    @Test
    void ratingsFallWithAmbientDownToNothing() {
        double before = 2;
        for (double ambient = 0; ambient < 90; ambient += 10) {
            double now = AmpacityTables.ambientFactor(90, 40, ambient);
            assertTrue(now < before);
            before = now;
        }
        assertEquals(0, AmpacityTables.ambientFactor(90, 40, 90));
        assertEquals(0, AmpacityTables.ambientFactor(90, 40, 120));
    }

    @Test
    void aLowerClassOfCableIsRatedByTheSameHeatLoss() {
        Plan.Cable cable = RecordChange.with(TestTables.cable("W1"), "maxC", 70.0);
        ConductorRating lower = Ratings.of(cable, 2.5, 40, 1);
        ConductorTemperature asTable = new ConductorTemperature(0.018 / 2.5, 2.5, 0, 30, 40, 90, 40);
        assertEquals(70, asTable.steadyC(lower.correctedA()), 1e-9);
        assertEquals(70, lower.maxC());
        assertEquals(0, Ratings.of(RecordChange.with(cable, "maxC", 40.0), 2.5, 20, 1).correctedA());
    }

    @Test
    void aHigherClassOfCableKeepsTheTable() {
        ConductorRating rating = Ratings.of(RecordChange.with(TestTables.cable("W1"), "maxC", 125.0), 2.5, 40, 1);
        assertEquals(30, rating.correctedA());
        assertEquals(90, rating.maxC());
    }

    @Test
    void whatHasNoRatingSaysWhy() {
        ConductorRating none = Ratings.of(RecordChange.with(TestTables.cable("W1"), "ampacity", null), 2.5, 40, 1);
        assertTrue(Double.isNaN(none.correctedA()));
        assertTrue(none.source().contains("no rating table"));
        ConductorRating outside = Ratings.of(TestTables.cable("W1"), 150, 40, 1);
        assertTrue(Double.isNaN(outside.tableA()));
        assertTrue(outside.source().contains("no 150"), outside.source());
    }

    @Test
    void ratingsFallWithTheNumberTogether() {
        double before = 100;
        for (int together : new int[] {1, 2, 3, 4, 7}) {
            double now = Ratings.of(TestTables.cable("W1"), 2.5, 40, together).correctedA();
            assertTrue(now < before);
            before = now;
        }
        assertEquals(0.5, AmpacityTables.groupingFactor(TestTables.grouping(), 1000));
        assertEquals(1, AmpacityTables.groupingFactor(null, 12));
    }
}
