// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The head of a column taken apart: words, and the unit behind them in brackets, after a slash or after "in".
 *
 * @param words without accents, in lower case
 * @param unit  as written; empty where there is none
 */
record HeaderCell(String words, String unit) {
    private static final Pattern WITH_UNIT = Pattern.compile(
            "^(.*?)\\s*(?:[\\[(]\\s*([^\\])]+?)\\s*[\\])]|/\\s*(\\p{L}+)|\\bin\\s+(\\p{L}+))\\s*$", Pattern.CASE_INSENSITIVE);

    static HeaderCell of(String text) {
        Matcher parts = WITH_UNIT.matcher(text);
        if (parts.matches() && !parts.group(1).isBlank()) {
            for (int group = 2; group <= 4; group++) {
                if (parts.group(group) != null) {
                    return new HeaderCell(plain(parts.group(1)), parts.group(group));
                }
            }
        }
        return new HeaderCell(plain(text), "");
    }

    /** Lower case without accents, single spaces. */
    static String plain(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "").replace("\u00DF", "ss");
        return apart.toLowerCase(Locale.ROOT).replaceAll("[\\s._-]+", " ").strip();
    }
}
