// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.math.BigDecimal;

/** From the decimals of the model, where null means not stated, to the doubles of the plan, where NaN does. */
final class Decimals {
    private Decimals() {
    }

    /** The number, or NaN when not stated. */
    static double of(BigDecimal stated) {
        return or(stated, Double.NaN);
    }

    /** The number, or another one when not stated. */
    static double or(BigDecimal stated, double otherwise) {
        return stated == null ? otherwise : stated.doubleValue();
    }

    /** A thousandth of the number, rounded once: milliohm to ohm. NaN when not stated. */
    static double thousandth(BigDecimal stated) {
        return shifted(stated, 3);
    }

    /** A millionth of the number, rounded once: microfarad to farad. NaN when not stated. */
    static double millionth(BigDecimal stated) {
        return shifted(stated, 6);
    }

    private static double shifted(BigDecimal stated, int places) {
        return stated == null ? Double.NaN : stated.movePointLeft(places).doubleValue();
    }

    /** The number as people write it: 2.5, 16. */
    static String text(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** True when stated and true. */
    static boolean yes(Boolean flag) {
        return Boolean.TRUE.equals(flag);
    }
}
