// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;

/**
 * What one row of a list says. Numbers are null where the row says nothing.
 *
 * @param row      row in the file, from 1
 * @param name     what the load is called; never empty
 * @param part     order code or name of its part; may be empty
 * @param place    name of its place; may be empty
 * @param watts    power, W
 * @param amps     current, A
 * @param volts    voltage it is made for, V
 * @param count    how many of them, 1 and more
 * @param position where a new place is; null where the row does not say all of it
 * @param priority 1 (kept longest) and more
 * @param note     kept as the note of the device; may be empty
 */
public record LoadEntry(int row, String name, String part, String place, BigDecimal watts, BigDecimal amps, BigDecimal volts,
        int count, Position position, Integer priority, String note) {
    /** Most loads that one row may stand for. */
    static final int MOST = 99;

    /**
     * A point in the vehicle.
     *
     * @param xMm forward from the rearmost point, mm
     * @param yMm to the left of the centre line, mm
     * @param zMm up from the ground, mm
     */
    public record Position(BigDecimal xMm, BigDecimal yMm, BigDecimal zMm) {
    }
}
