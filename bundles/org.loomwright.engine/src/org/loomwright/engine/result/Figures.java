// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How figures are written for people. */
public final class Figures {
    /** Below this, in any unit that figures are shown in, a value is what rounding left over of nothing. */
    private static final double NOTHING = 1e-9;
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);

    private Figures() {
    }

    /**
     * Three significant figures, decimal point, no exponent between 0.00001 and 9 999 999; numbers of 100 and above
     * are written whole, those below 1e-9 as 0. A number that is not finite is written as such.
     */
    public static String three(double value) {
        if (Double.isNaN(value)) {
            return "unknown";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "unlimited" : "-unlimited";
        }
        double size = StrictMath.abs(value);
        if (size < NOTHING) {
            return "0";
        }
        if (size < 1e-5 || size > 9_999_999) {
            return new BigDecimal(value).round(THREE).toString();
        }
        BigDecimal rounded = new BigDecimal(value).round(size >= 100 ? new MathContext(15) : THREE);
        return size >= 99.95 ? rounded.setScale(0, RoundingMode.HALF_UP).toPlainString() : rounded.toPlainString();
    }
}
