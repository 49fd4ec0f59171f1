// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.schedule;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as they are cut: full centimetres upwards. */
public final class CutLength {
    /** A thousandth of a millimetre: what lies below is left over from binary fractions, not length. */
    private static final int MM_DECIMALS = 3;

    private CutLength() {
    }

    /**
     * A length in metres with two decimals, rounded up; 1470 mm is 1.47 m, 1470.1 mm is 1.48 m.
     *
     * @param lengthMm length, mm
     * @return metres, or null when the length is not known (not finite)
     */
    public static BigDecimal metres(double lengthMm) {
        return Double.isFinite(lengthMm) ? metres(BigDecimal.valueOf(lengthMm)) : null;
    }

    /** The same for a decimal length, mm. */
    public static BigDecimal metres(BigDecimal lengthMm) {
        return lengthMm.setScale(MM_DECIMALS, RoundingMode.HALF_UP).movePointLeft(3).setScale(2, RoundingMode.CEILING);
    }
}
