// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.scene.Tone;

/** Texts of line diagrams: figures with three significant digits, labels that fit their room. */
final class LineText {
    /** Size of text and figures, px. */
    static final double PX = 12;

    private LineText() {
    }

    static Mark text(double x, double y, String text, boolean bold, Mark.Anchor anchor, Tone tone) {
        return new Mark.Text(new Point(x, y), text, PX, bold, anchor, tone);
    }

    static Mark start(double x, double y, String text, boolean bold, Tone tone) {
        return text(x, y, text, bold, Mark.Anchor.START, tone);
    }

    static Mark middle(double x, double y, String text, boolean bold, Tone tone) {
        return text(x, y, text, bold, Mark.Anchor.MIDDLE, tone);
    }

    static double width(TextMeasure measure, String text, boolean bold) {
        return text.isEmpty() ? 0 : measure.widthPx(text, PX, bold);
    }

    /** The text, cut with an ellipsis when it is wider than its room. */
    static String fitted(TextMeasure measure, String text, boolean bold, double roomPx) {
        if (width(measure, text, bold) <= roomPx) {
            return text;
        }
        String cut = text;
        while (!cut.isEmpty() && width(measure, cut + "\u2026", bold) > roomPx) {
            cut = cut.substring(0, cut.length() - 1).stripTrailing();
        }
        return cut + "\u2026";
    }

    /** A potential, V, or whole mV below 0.1 V. */
    static String volts(double volts) {
        return StrictMath.abs(volts) < 0.1 ? figure(StrictMath.rint(volts * 1000)).replaceFirst("\\.0+$", "") + " mV"
                : figure(volts) + " V";
    }

    /** A figure with three significant digits, plain, with U+2212 for minus. */
    static String figure(double value) {
        if (value == 0 || StrictMath.abs(value) < 1e-9) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(3, RoundingMode.HALF_UP));
        if (rounded.scale() < 0) {
            rounded = rounded.setScale(0);
        }
        if (rounded.scale() > 3) {
            rounded = rounded.setScale(3, RoundingMode.HALF_UP);
        }
        int missing = 3 - rounded.precision();
        if (missing > 0 && StrictMath.abs(value) >= 0.1) {
            rounded = rounded.setScale(rounded.scale() + missing);
        }
        String text = rounded.toPlainString();
        return text.startsWith("-") ? "\u2212" + text.substring(1) : text;
    }
}
