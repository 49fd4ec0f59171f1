// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.values;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * The text form of numbers in files: a plain decimal such as {@code 2.50}, {@code 0} or {@code -15}.
 * The digits are kept as written, so that a file is saved as it was loaded. There is no exponent,
 * no plus sign, no decimal comma, no leading zero, and neither NaN nor infinity.
 */
public final class PlainDecimal {
    private static final Pattern FORM = Pattern.compile("-?(0|[1-9][0-9]{0,14})(\\.[0-9]{1,15})?");
    private static final Pattern MINUS_ZERO = Pattern.compile("-0(\\.0+)?");

    private PlainDecimal() {
    }

    /**
     * Reads a number.
     *
     * @param text the text of an attribute
     * @return the number with the digits as written
     * @throws IllegalArgumentException when the text is not a plain decimal; the message says what was expected
     */
    public static BigDecimal parse(String text) {
        if (!FORM.matcher(text).matches() || MINUS_ZERO.matcher(text).matches()) {
            throw new IllegalArgumentException("'" + shortened(text) + "' is not a plain decimal number such as 2.5"
                    + (text.indexOf(',') >= 0 ? " (write a point, not a comma)" : ""));
        }
        return new BigDecimal(text);
    }

    /** Writes a number without exponent; {@code parse(write(x))} is equal to {@code x}. */
    public static String write(BigDecimal number) {
        return number.toPlainString();
    }

    static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 37) + "...";
    }
}
