// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Values are written as they were read, and everything else is refused with a reason. */
class PlainValuesTest {
    @ParameterizedTest
    @ValueSource(strings = {"0", "0.0", "0.00", "1", "-1", "2.50", "-0.001", "100", "0.000000000000001", "999999999999999.999"})
    void decimalsKeepTheirDigits(String text) {
        assertEquals(text, PlainDecimal.write(PlainDecimal.parse(text)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " 1", "1 ", "+1", "01", "1.", ".5", "-0", "-0.00", "1e3", "1E3", "NaN", "Infinity", "-Infinity",
        "1,5", "1_000", "0x10", "1.0000000000000000", "1234567890123456", "\u0661", "--1", "1-"})
    void whatIsNoPlainDecimalIsRefused(String text) {
        String message = assertThrows(IllegalArgumentException.class, () -> PlainDecimal.parse(text)).getMessage();
        assertTrue(message.contains("'" + text + "' is not a plain decimal number such as 2.5"), message);
    }

    @Test
    void decimalCommaAndLongTextsAreExplainedShortly() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PlainDecimal.parse("1,5")).getMessage()
                .contains("a point, not a comma"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PlainDecimal.parse("9".repeat(5000))).getMessage()
                .length() < 120);
    }

    @Test
    void randomDecimalsRoundTrip() {
        Random random = new Random(7);
        for (int i = 0; i < 10_000; i++) {
            BigDecimal number = BigDecimal.valueOf(random.nextLong() % 1_000_000_000_000L, random.nextInt(13));
            if (number.signum() != 0) {
                assertEquals(number, PlainDecimal.parse(PlainDecimal.write(number)));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "1", "42", "999999999"})
    void countsRoundTrip(String text) {
        assertEquals(text, PlainCount.write(PlainCount.parse(text)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-1", "01", "1.0", "1000000000", " 1", "two"})
    void whatIsNoCountIsRefused(String text) {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PlainCount.parse(text)).getMessage()
                .contains("is not a whole number"));
    }

    @Test
    void flagsAreTrueOrFalse() {
        assertEquals("true", PlainFlag.write(PlainFlag.parse("true")));
        assertEquals("false", PlainFlag.write(PlainFlag.parse("false")));
        for (String text : new String[] {"", "True", "yes", "1", " true"}) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> PlainFlag.parse(text)).getMessage()
                    .contains("is neither true nor false"));
        }
    }
}
