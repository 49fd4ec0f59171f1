// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WireGaugeTest {
    private static final double CIRCULAR_MIL_MM2 = StrictMath.PI / 4 * 0.0254 * 0.0254;

    /** Circular mils as printed in two lessons on voltage drop for electricians' licences (12: 6530, 8: 16510). */
    @ParameterizedTest
    @CsvSource({"12, 6530", "8, 16510"})
    void sectionsAreThoseOfTheTables(int number, double circularMils) {
        double printedMm2 = circularMils * CIRCULAR_MIL_MM2;
        assertEquals(printedMm2, new WireGauge(number).sectionMm2(), 0.001 * printedMm2);
    }

    /** By the definition of the gauge, ASTM B258: 36 has 0.005 inch, 4/0 has 0.46 inch. */
    @Test
    void theTwoSizesThatDefineTheGaugeAreMet() {
        assertEquals(25 * CIRCULAR_MIL_MM2, new WireGauge(36).sectionMm2(), 1e-12);
        assertEquals(460 * 460 * CIRCULAR_MIL_MM2, new WireGauge(-3).sectionMm2(), 1e-9);
    }

    @Test
    void everySizeIsFoundBySectionAndByName() {
        for (int number = -3; number <= 40; number++) {
            WireGauge size = new WireGauge(number);
            assertEquals(size, WireGauge.near(size.sectionMm2()));
            assertEquals(size, WireGauge.written(size.words()));
            assertEquals(size.words(), WireGauge.approximately(size.tabledMm2().doubleValue()));
        }
    }

    @Test
    void sectionsBetweenSizesAreToldFromThoseOfTheGauge() {
        assertEquals("AWG 14", WireGauge.approximately(2.081));
        assertEquals("~AWG 13", WireGauge.approximately(2.5));
        assertNull(WireGauge.approximately(185));
        assertNull(WireGauge.approximately(0));
        assertNull(WireGauge.approximately(Double.NaN));
    }

    @Test
    void sizesAreReadAsPeopleWriteThem() {
        assertEquals(new WireGauge(10), WireGauge.written("10 awg"));
        assertEquals(new WireGauge(-1), WireGauge.written("2/0"));
        assertEquals(new WireGauge(0), WireGauge.written("AWG 0"));
        assertNull(WireGauge.written("5/0"));
        assertNull(WireGauge.written("0/0"));
        assertNull(WireGauge.written("2.5"));
        assertNull(WireGauge.written("10"), "a bare number may be square millimetres");
        assertEquals(new BigDecimal("5.261"), WireGauge.written("AWG10").tabledMm2());
    }
}
