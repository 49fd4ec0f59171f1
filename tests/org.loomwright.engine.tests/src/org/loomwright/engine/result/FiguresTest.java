// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures for people. */
class FiguresTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "4.62E-33, 0", "-1E-12, 0", "0.0000123, 0.0000123", "2E-7, 2.00E-7", "0.36, 0.360", "99.94, 99.9", "99.96, 100",
        "1234.5, 1235", "-12.345, -12.3", "NaN, unknown", "Infinity, unlimited"})
    void areShortAndSayNothingOfWhatRoundingLeft(double value, String expected) {
        assertEquals(expected, Figures.three(value));
    }
}
