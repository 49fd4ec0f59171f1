// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.math.BigDecimal;
import org.loomwright.engine.result.Figures;

/** Figures as the diagram writes them: three digits that count, SI prefixes, a true minus. */
final class EarthText {
    private static final double NOTHING_A = 5e-4;
    private static final double NOTHING_V = 5e-7;

    private EarthText() {
    }

    /** An amount of current, without sign. */
    static String amps(double amps) {
        double size = StrictMath.abs(amps);
        return size < NOTHING_A ? "0 A" : size < 0.1 ? Figures.three(1000 * size) + " mA" : Figures.three(size) + " A";
    }

    /** A potential with its sign. */
    static String volts(double volts) {
        double size = StrictMath.abs(volts);
        if (size < NOTHING_V) {
            return "0 mV";
        }
        String text = size < 1 ? Figures.three(1000 * size) + " mV" : Figures.three(size) + " V";
        return volts < 0 ? "\u2212" + text : text;
    }

    /** A resistance. */
    static String ohms(double ohm) {
        return ohm < 1 ? Figures.three(1000 * ohm) + " m\u03A9" : Figures.three(ohm) + " \u03A9";
    }

    /** A section. */
    static String section(double mm2) {
        return Double.isNaN(mm2) ? "of open section"
                : BigDecimal.valueOf(mm2).stripTrailingZeros().toPlainString() + " mm\u00B2";
    }
}
