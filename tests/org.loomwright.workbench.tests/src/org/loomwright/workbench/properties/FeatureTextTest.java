// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.vehicle.VehiclePackage;
import org.loomwright.workbench.preference.ShownFigures;

class FeatureTextTest {
    private static final ShownFigures METRIC = new ShownFigures(false, false);
    private static final ShownFigures IMPERIAL = new ShownFigures(true, true);
    private final FeatureText section = new FeatureText(VehiclePackage.Literals.CABLE__SECTION_MM2, METRIC);

    @Test
    void unitsAreWrittenAsPeopleDo() {
        assertEquals("mm\u00B2", section.unit());
        assertEquals("\u00B0C", new FeatureText(VehiclePackage.Literals.ZONE__AMBIENT_MAX_C, METRIC).unit());
        assertEquals("", new FeatureText(PartsPackage.Literals.NAMED__NAME, METRIC).unit());
    }

    @Test
    void numbersAreKeptAsWritten() {
        assertEquals(new BigDecimal("2.50"), section.value(" 2.50 "));
        assertEquals("2.50", section.shown(new BigDecimal("2.50")));
        assertNull(section.value(" "));
    }

    @Test
    void whatCannotBeMeantIsRefusedAtEntry() {
        assertNull(section.refusal("2.5"));
        assertNull(section.refusal(""));
        assertNotNull(section.refusal("thick"));
        assertNotNull(section.refusal("2,5"));
        assertTrue(section.refusal("-1").contains("-1"));
        FeatureText name = new FeatureText(PartsPackage.Literals.NAMED__NAME, METRIC);
        assertNull(name.refusal("W12"));
        assertNotNull(name.refusal("W 12"));
        assertNotNull(name.refusal(""));
    }

    @Test
    void sectionsAreShownAndReadByGaugeToo() {
        FeatureText gauge = new FeatureText(VehiclePackage.Literals.CABLE__SECTION_MM2, IMPERIAL);
        assertEquals("AWG 14", gauge.shown(new BigDecimal("2.08")));
        assertEquals("2.5", gauge.shown(new BigDecimal("2.5")), "a section between sizes keeps its figure");
        assertEquals(new BigDecimal("5.261"), gauge.value("10 AWG"));
        assertEquals(new BigDecimal("10"), gauge.value("10"), "a bare number is square millimetres");
        assertNotNull(gauge.refusal("AWG 99"));
        assertEquals(new BigDecimal("5.261"), section.value("AWG 10"), "whatever is shown");
    }

    /** One inch is 25.4 mm; 212 degrees Fahrenheit are 100 degrees Celsius, by definition. */
    @Test
    void lengthsAndTemperaturesAreShownAndReadInOtherUnits() {
        FeatureText length = new FeatureText(VehiclePackage.Literals.VEHICLE__LENGTH_MM, IMPERIAL);
        assertEquals("in", length.unit());
        assertEquals("100", length.shown(new BigDecimal("2540")));
        assertEquals(new BigDecimal("2540"), length.value("100"));
        assertEquals(new BigDecimal("2540"), length.value("2.54 m"));
        assertEquals(new BigDecimal("609.6"), length.value("2 ft"));
        assertEquals(new BigDecimal("609.6"), new FeatureText(VehiclePackage.Literals.VEHICLE__LENGTH_MM, METRIC).value("24 in"));
        assertNotNull(length.refusal("2 kg"));
        FeatureText hottest = new FeatureText(VehiclePackage.Literals.ZONE__AMBIENT_MAX_C, IMPERIAL);
        assertEquals("\u00B0F", hottest.unit());
        assertEquals("212", hottest.shown(new BigDecimal("100")));
        assertEquals(new BigDecimal("100"), hottest.value("212"));
        assertEquals(new BigDecimal("55"), hottest.value("55 C"));
    }
}
