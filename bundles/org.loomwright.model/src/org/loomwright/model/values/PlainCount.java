// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.values;

import java.util.regex.Pattern;

/** The text form of whole numbers in files: digits only, without sign or leading zeros, at most nine. */
public final class PlainCount {
    private static final Pattern FORM = Pattern.compile("0|[1-9][0-9]{0,8}");

    private PlainCount() {
    }

    /**
     * Reads a whole number.
     *
     * @throws IllegalArgumentException when the text is anything else; the message says what was expected
     */
    public static Integer parse(String text) {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("'" + PlainDecimal.shortened(text) + "' is not a whole number such as 12");
        }
        return Integer.valueOf(text);
    }

    /** Writes a whole number. */
    public static String write(Integer number) {
        return number.toString();
    }
}
