// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;
import org.eclipse.emf.common.util.Enumerator;

/**
 * Puts a label together: what the thing is called, two blanks, then what it is, divided by commas. Nothing is said twice: words
 * that stand in the label already are left out.
 */
final class LabelText {
    private static final int MM_PER_M_DIGITS = 3;
    private final String name;
    private final StringBuilder rest = new StringBuilder();

    /** A label that begins with a name; null or blank for none. */
    LabelText(String name) {
        this.name = name == null ? "" : name.strip();
    }

    /** Adds words; null or blank adds nothing. */
    LabelText add(String words) {
        return add(", ", words);
    }

    /** Adds words that belong to those before, without a comma. */
    LabelText addTo(String words) {
        return add(" ", words);
    }

    /** Adds words when something is so. */
    LabelText addIf(Boolean condition, String words) {
        return Boolean.TRUE.equals(condition) ? add(words) : this;
    }

    /** Adds a number as it was written, with its unit; null adds nothing. */
    LabelText add(BigDecimal number, String unit) {
        return add(quantity(number, unit));
    }

    /** Adds the word of an enumeration in small letters: {@code as built} for {@code asBuilt}. */
    LabelText add(Enumerator word) {
        return add(words(word));
    }

    private LabelText add(String between, String words) {
        if (words == null || words.isBlank() || says(words.strip())) {
            return this;
        }
        rest.append(rest.isEmpty() ? "" : between).append(words.strip());
        return this;
    }

    private boolean says(String words) {
        return Pattern.compile("(?<![\\p{L}\\p{N}.])" + Pattern.quote(words) + "(?![\\p{L}\\p{N}.])").matcher(rest).find();
    }

    /** The label; empty when there is nothing to say. */
    String text() {
        return name.isEmpty() || rest.isEmpty() ? name + rest : name + "  " + rest;
    }

    /** {@code 2.5 mm2}; null without a number. */
    static String quantity(BigDecimal number, String unit) {
        return number == null ? null : number.toPlainString() + " " + unit;
    }

    /** Millimetres shown as metres with two decimals; null without a number. */
    static String metres(BigDecimal mm) {
        return mm == null ? null : quantity(mm.movePointLeft(MM_PER_M_DIGITS).setScale(2, RoundingMode.HALF_UP), "m");
    }

    /** {@code 0.5 to 6 mm2}, {@code from 0.5 mm2}, {@code up to 6 mm2}; null without numbers. */
    static String range(BigDecimal from, BigDecimal to, String unit) {
        if (from == null || to == null) {
            return from == null ? to == null ? null : "up to " + quantity(to, unit) : "from " + quantity(from, unit);
        }
        return from.compareTo(to) == 0 ? quantity(to, unit) : from.toPlainString() + " to " + quantity(to, unit);
    }

    /** The word of an enumeration in small letters; null without one. */
    static String words(Enumerator word) {
        return word == null ? null : word.getLiteral().replaceAll("(?<=[a-z])(?=[A-Z][a-z])", " ").toLowerCase(Locale.ROOT);
    }
}
