// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

/**
 * A number with its unit.
 *
 * @param value the number, in {@code unit}
 * @param unit  SI unit with prefix as people write it, such as {@code V}, {@code mm2}, {@code mohm}, {@code degC};
 *              {@code 1} for a ratio, {@code %} for a ratio times a hundred
 */
public record Quantity(double value, String unit) {
    public Quantity {
        if (unit == null || unit.isEmpty()) {
            throw new IllegalArgumentException("a figure needs a unit; use 1 for a ratio");
        }
    }

    /** A number with its unit. */
    public static Quantity of(double value, String unit) {
        return new Quantity(value, unit);
    }

    /** The number with three significant figures, and its unit: for example {@code 10.4 A}. */
    @Override
    public String toString() {
        return "1".equals(unit) ? Figures.three(value) : Figures.three(value) + " " + unit;
    }
}
