// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

/** Compares figures with limits so that a figure at its limit, but for the last digits of arithmetic, still meets it. */
final class Beyond {
    private static final double DIGITS = 1e-9;

    private Beyond() {
    }

    /** True when a figure is above a limit; false when either is no number. */
    static boolean above(double figure, double limit) {
        return figure > limit + DIGITS * StrictMath.abs(limit);
    }

    /** True when a figure is below a limit; false when either is no number. */
    static boolean below(double figure, double limit) {
        return figure < limit - DIGITS * StrictMath.abs(limit);
    }
}
