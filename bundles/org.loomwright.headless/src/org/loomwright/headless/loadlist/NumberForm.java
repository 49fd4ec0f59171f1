// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How numbers are written in a list: with a decimal comma or a decimal point. A number like 1,234 says nothing by itself; others in
 * the list tell, and where none does, the way the file is written.
 */
enum NumberForm {
    /** 1,234.5. */
    POINT('.', ','),
    /** 1.234,5. */
    COMMA(',', '.');

    private static final Pattern NUMBER = Pattern.compile("([+-]?[0-9][0-9.,' \u00A0\u202F]*)\\s*([\\p{L}%\u00D7]*)\\.?");

    private final char decimal;
    private final char group;

    NumberForm(char decimal, char group) {
        this.decimal = decimal;
        this.group = group;
    }

    /** The form that the numbers of a list have. */
    static NumberForm of(List<String> texts, boolean decimalComma) {
        int comma = 0;
        int point = 0;
        for (String text : texts) {
            Matcher parts = NUMBER.matcher(text);
            if (parts.matches()) {
                String digits = parts.group(1).strip();
                comma += COMMA.clear(digits) ? 1 : 0;
                point += POINT.clear(digits) ? 1 : 0;
            }
        }
        if (comma == point) {
            return decimalComma ? COMMA : POINT;
        }
        return comma > point ? COMMA : POINT;
    }

    /** True when a text can only be read in this form. */
    private boolean clear(String digits) {
        int at = digits.lastIndexOf(decimal);
        if (at < 0 || digits.indexOf(decimal) != at) {
            return false;
        }
        return digits.indexOf(group) >= 0 ? digits.lastIndexOf(group) < at : digits.length() - at - 1 != 3;
    }

    /**
     * The value of a text, with or without a unit.
     *
     * @param plainFactor what a number without a unit is multiplied by
     * @throws IllegalArgumentException for what is no number or has a unit of something else; the message is for people
     */
    BigDecimal value(String text, Quantity quantity, BigDecimal plainFactor) {
        Matcher parts = NUMBER.matcher(text);
        if (!parts.matches()) {
            throw new IllegalArgumentException("is not a number");
        }
        BigDecimal factor = parts.group(2).isEmpty() ? plainFactor : quantity.factor(parts.group(2));
        if (factor == null) {
            throw new IllegalArgumentException("has the unit " + parts.group(2)
                    + (quantity.unit().isEmpty() ? ", where a plain number belongs" : ", where " + quantity.unit() + " belongs"));
        }
        BigDecimal value = number(parts.group(1).replaceAll("[' \u00A0\u202F]", "")).multiply(factor).stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    private BigDecimal number(String digits) {
        int at = digits.lastIndexOf(decimal);
        if (at >= 0 && digits.indexOf(decimal) != at || digits.indexOf(group, Math.max(at, 0)) >= 0 && at >= 0 || !grouped(digits)) {
            throw new IllegalArgumentException("is not a number with a decimal " + (this == COMMA ? "comma" : "point"));
        }
        return new BigDecimal(digits.replace(String.valueOf(group), "").replace(decimal, '.'));
    }

    /** True when groups of the whole part have three digits each. */
    private boolean grouped(String digits) {
        String whole = digits.indexOf(decimal) < 0 ? digits : digits.substring(0, digits.indexOf(decimal));
        String[] groups = whole.split(Pattern.quote(String.valueOf(group)), -1);
        for (int i = 1; i < groups.length; i++) {
            if (groups[i].length() != 3) {
                return false;
            }
        }
        return true;
    }
}
