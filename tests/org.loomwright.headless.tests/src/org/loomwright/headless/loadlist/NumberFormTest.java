// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of lists: decimal commas and points, groups of digits, units. */
class NumberFormTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"POINT|12|12", "POINT|12.5|12.5", "POINT|1,234.5|1234.5", "POINT|1,234|1234", "COMMA|12,5|12.5",
        "COMMA|1.234,5|1234.5", "COMMA|1.234|1234", "COMMA|0,125|0.125", "POINT|1 500|1500", "POINT|1'500|1500", "POINT|-3|-3",
        "COMMA|1.000.000|1000000", "POINT|10.50|10.5", "POINT|100|100"})
    void valuesAreReadInTheirForm(NumberForm form, String text, String expected) {
        assertEquals(new BigDecimal(expected), form.value(text, Quantity.POWER, BigDecimal.ONE));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"45 W|POWER|45", "0.12kW|POWER|120", "250 mA|CURRENT|0.25", "12 V|VOLTAGE|12", "1.2 m|LENGTH|1200",
        "120 cm|LENGTH|1200", "10 in|LENGTH|254", "2 ft|LENGTH|609.6", "3x|NUMBER|3", "2 pcs.|NUMBER|2"})
    void unitsInTheCellAreUnderstood(String text, Quantity quantity, String expected) {
        assertEquals(new BigDecimal(expected), NumberForm.POINT.value(text, quantity, new BigDecimal("7")));
    }

    @Test
    void aNumberWithoutUnitHasThatOfTheHead() {
        assertEquals(new BigDecimal("1200"), NumberForm.COMMA.value("1,2", Quantity.LENGTH, new BigDecimal("1000")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"POINT|abc", "POINT|1.2.3", "COMMA|1,2,3", "POINT|1,23.4", "COMMA|12.5", "POINT|12 Ah", "POINT|W 12",
        "POINT|1,5", "POINT|,", "POINT|12 V"})
    void whatIsNoSuchNumberIsRefusedInWords(NumberForm form, String text) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> form.value(text, Quantity.POWER, BigDecimal.ONE));
        assertTrue(refused.getMessage().startsWith("is not a number") || refused.getMessage().startsWith("has the unit"),
                refused.getMessage());
    }

    @Test
    void whatOneNumberLeavesOpenOthersTell() {
        assertEquals(NumberForm.COMMA, NumberForm.of(List.of("1,234", "2,5"), false));
        assertEquals(NumberForm.POINT, NumberForm.of(List.of("1,234", "2.5"), true));
        assertEquals(NumberForm.POINT, NumberForm.of(List.of("1,234", "1,234.5 W"), true));
        assertEquals(NumberForm.COMMA, NumberForm.of(List.of("1,234", "12", ""), true));
        assertEquals(NumberForm.POINT, NumberForm.of(List.of("1,234", "12", ""), false));
    }
}
