// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.loomwright.engine.result.WireGauge;

/** Sections, lengths and temperatures as a person wants them shown. */
public record Measures(DrawingPreferences preferences) {
    private static final double MM_PER_INCH = 25.4;
    private static final int INCHES_PER_FOOT = 12;

    /** A section, with its gauge where that is wanted and there is one; empty for null. */
    public String section(BigDecimal mm2) {
        if (mm2 == null) {
            return "";
        }
        String text = number(mm2) + " mm\u00B2";
        String gauge = preferences.awg() ? WireGauge.approximately(mm2.doubleValue()) : null;
        return gauge == null ? text : text + " (" + gauge + ")";
    }

    /** A length in metres with three significant figures, or in feet and whole inches. */
    public String length(double mm) {
        if (!preferences.imperial()) {
            return metres(mm);
        }
        long inches = StrictMath.round(mm / MM_PER_INCH);
        long feet = inches / INCHES_PER_FOOT;
        long rest = inches % INCHES_PER_FOOT;
        return feet == 0 ? rest + " in" : rest == 0 ? feet + " ft" : feet + " ft " + rest + " in";
    }

    /** A temperature in whole degrees. */
    public String temperature(double celsius) {
        double shown = preferences.imperial() ? celsius * 9 / 5 + 32 : celsius;
        return Long.toString(StrictMath.round(shown)).replace('-', '\u2212') + (preferences.imperial() ? " \u00B0F" : " \u00B0C");
    }

    private static String metres(double mm) {
        BigDecimal metres = BigDecimal.valueOf(mm / 1000).round(new MathContext(3, RoundingMode.HALF_UP));
        int missing = 3 - metres.precision();
        return (metres.scale() < 0 ? metres.setScale(0) : missing > 0 ? metres.setScale(metres.scale() + missing) : metres)
                .toPlainString() + " m";
    }

    /** A decimal without trailing zeros. */
    public static String number(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
