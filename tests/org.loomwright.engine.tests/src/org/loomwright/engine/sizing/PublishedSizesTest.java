// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.ReferenceCsv;

/** Sections that published tables and examples choose, chosen by sizing from the same sections at the same resistances. */
class PublishedSizesTest {
    /** Resistance constant of the marine rule, ohm circular mil/ft. */
    private static final double K = 10.75;
    private static final double METRES_A_FOOT = 0.3048;
    /** By the published rule 26,875 circular mils are needed there; AWG 6 has less on either scale of areas. */
    private static final String DOES_NOT_FOLLOW = "15 A over 60 ft";
    private static final List<Double> METRIC = List.of(1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0);

    /** Gauges by their smallest areas after SAE, each with its number; the section stands for the area in circular mils. */
    private static Map<Double, String> gauges() {
        Map<Double, String> gauges = new LinkedHashMap<>();
        for (Map<String, String> row : ReferenceCsv.rows("awg_table.csv")) {
            String mils = row.get("circular_mils_sae_min_published");
            if (!mils.isEmpty()) {
                gauges.put(Double.parseDouble(mils), row.get("awg"));
            }
        }
        return gauges;
    }

    @Test
    void threePerCentOfTwelveVoltsAfterTheMarineTable() {
        Map<Double, String> gauges = gauges();
        List<Plan.SectionOption> options = new ArrayList<>();
        gauges.keySet().stream().sorted().forEach(mils -> options.add(new Plan.SectionOption(mils, K / mils / METRES_A_FOOT,
                K / mils / METRES_A_FOOT, 2, mils, mils)));
        int compared = 0;
        for (Map<String, String> row : ReferenceCsv.rows("marine_sizing_3pct_12V.csv")) {
            String what = row.get("current_A") + " A over " + row.get("round_trip_length_ft") + " ft";
            if (!what.equals(DOES_NOT_FOLLOW)) {
                double mils = OneLoad.sectionMm2(Double.parseDouble(row.get("current_A")),
                        Double.parseDouble(row.get("round_trip_length_ft")) * METRES_A_FOOT, 0.03 * 12, options);
                assertEquals(row.get("awg"), gauges.get(mils), what);
                compared++;
            }
        }
        assertTrue(compared > 40, compared + " compared");
    }

    /**
     * Examples of worked_examples.csv, with their sources there: a mast-head lamp, a plus line alone, the starter cables of an
     * engine's manual (3.5 milliohm of line, at 10 A).
     */
    @ParameterizedTest
    @CsvSource({"CS01, 0.017857142857, 36, 2.1, 0.6, 2.5", "CS02, 0.018, 1.8, 8.3, 0.5, 1",
        "CS09, 0.017857142857, 4, 10, 0.035, 25", "CS10, 0.017857142857, 10, 10, 0.035, 70"})
    void examplesOfGuides(String id, double rho, double lengthM, double amps, double limitV, double chosenMm2) {
        Map<String, String> row = ReferenceCsv.rows("worked_examples.csv").stream().filter(each -> each.get("id").equals(id))
                .findFirst().orElseThrow();
        String published = row.get("expected_outputs").replaceFirst(".*area_chosen_mm2=", "");
        assertEquals(Double.parseDouble(published), chosenMm2);
        assertEquals(chosenMm2, OneLoad.sectionMm2(amps, lengthM, limitV, OneLoad.sections(rho, METRIC)));
    }

    /** CS13, a fact of the trade and plain arithmetic: R = rho L / S, so S grows with L, and copper with S x L. */
    @Test
    void twiceTheRunTakesTwiceTheSectionAndFourTimesTheCopper() {
        double step = 0.005;
        List<Plan.SectionOption> fine = OneLoad.sections(0.018, OneLoad.stepped(0.5, 60, step));
        for (double lengthM : new double[] {2.5, 4, 7}) {
            double once = OneLoad.sectionMm2(10, lengthM, 0.36, fine);
            double twice = OneLoad.sectionMm2(10, 2 * lengthM, 0.36, fine);
            assertEquals(2, twice / once, 2 * 1.01 * step, lengthM + " m");
            assertEquals(4, twice * 2 * lengthM / (once * lengthM), 4 * 1.01 * step, lengthM + " m");
        }
    }

    /** CS14: at twice the voltage the same power and share of drop take a quarter of the section. */
    @Test
    void twiceTheVoltageTakesAQuarterOfTheSection() {
        double step = 0.005;
        List<Plan.SectionOption> fine = OneLoad.sections(0.018, OneLoad.stepped(0.5, 60, step));
        double at12 = OneLoad.sectionMm2(10, 8, 0.36, fine);
        double at24 = OneLoad.sectionMm2(5, 8, 0.72, fine);
        assertEquals(0.25, at24 / at12, 0.25 * 1.01 * step);
    }
}
