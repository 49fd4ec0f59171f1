// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class LogAxisTest {
    private final LogAxis axis = new LogAxis(1, 100, 0, 200);

    @Test
    void eachDecadeTakesTheSameWidth() {
        assertEquals(0, axis.px(1), 1e-9);
        assertEquals(100, axis.px(10), 1e-9);
        assertEquals(200, axis.px(100), 1e-9);
    }

    @Test
    void ticksLieOnTheAxisInRisingOrder() {
        assertEquals(List.of(1.0, 10.0, 100.0), axis.decades());
        assertEquals(List.of(1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0), axis.oneTwoFive());
        assertEquals(19, axis.all().size());
    }

    @Test
    void anAxisWithoutWidthOrBelowZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new LogAxis(0, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new LogAxis(5, 5, 0, 1));
    }

    @Test
    void numbersHaveNoExponentAndThousandsAreParted() {
        assertEquals("0.001", AxisText.plain(0.001));
        assertEquals("5000", AxisText.plain(5000));
        assertEquals("10\u2009000", AxisText.plain(10_000));
    }
}
