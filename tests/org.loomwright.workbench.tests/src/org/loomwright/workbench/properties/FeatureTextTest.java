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

class FeatureTextTest {
    private final FeatureText section = new FeatureText(VehiclePackage.Literals.CABLE__SECTION_MM2);

    @Test
    void unitsAreWrittenAsPeopleDo() {
        assertEquals("mm\u00B2", section.unit());
        assertEquals("\u00B0C", new FeatureText(VehiclePackage.Literals.ZONE__AMBIENT_MAX_C).unit());
        assertEquals("", new FeatureText(PartsPackage.Literals.NAMED__NAME).unit());
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
        FeatureText name = new FeatureText(PartsPackage.Literals.NAMED__NAME);
        assertNull(name.refusal("W12"));
        assertNotNull(name.refusal("W 12"));
        assertNotNull(name.refusal(""));
    }
}
