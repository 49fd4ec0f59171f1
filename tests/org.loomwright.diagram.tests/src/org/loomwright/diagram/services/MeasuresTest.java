// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.result.WireGauge;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.PartsLibrary;

class MeasuresTest {
    private static final Measures METRIC = new Measures(DrawingPreferences.metric());
    private static final Measures AMERICAN = new Measures(new DrawingPreferences(true, true));

    @Test
    void sectionsOfTheLibraryThatAreGaugesAreNamedAsThere() {
        int compared = 0;
        for (PartsLibrary library : Studied.fleet("heron").get(0).vehicle().getLibraries()) {
            for (CablePart cable : library.getCables()) {
                for (CableRow row : cable.getRows()) {
                    if (row.getSize() != null && row.getSize().startsWith("AWG ") && row.getSectionMm2() != null) {
                        assertEquals(row.getSize(), WireGauge.approximately(row.getSectionMm2().doubleValue()));
                        compared++;
                    }
                }
            }
        }
        assertTrue(compared > 5, "compared: " + compared);
    }

    @Test
    void aMetricSectionIsAboutAGauge() {
        assertEquals("2.5 mm\u00B2", METRIC.section(new BigDecimal("2.50")));
        assertEquals("2.5 mm\u00B2 (~AWG 13)", AMERICAN.section(new BigDecimal("2.5")));
        assertEquals("150 mm\u00B2", AMERICAN.section(new BigDecimal("150")), "beyond the gauge there is none to name");
        assertEquals("", AMERICAN.section(null));
    }

    /** A foot is 304.8 mm, an inch 25.4 mm, by definition. */
    @Test
    void lengths() {
        assertEquals("0.960 m", METRIC.length(960));
        assertEquals("12.3 m", METRIC.length(12_340));
        assertEquals("1 ft", AMERICAN.length(304.8));
        assertEquals("8 ft 4 in", AMERICAN.length(2540));
        assertEquals("6 in", AMERICAN.length(152.4));
    }

    /** Water freezes at 32 and boils at 212 degrees Fahrenheit, by the definition of the scale. */
    @Test
    void temperatures() {
        assertEquals("\u22125 \u00B0C", METRIC.temperature(-5.2));
        assertEquals("32 \u00B0F", AMERICAN.temperature(0));
        assertEquals("212 \u00B0F", AMERICAN.temperature(100));
    }
}
