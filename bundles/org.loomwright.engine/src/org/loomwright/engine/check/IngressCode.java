// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Digits of a protection code after IEC 60529 and ISO 20653, for example IP54, IPX5 or IP6K9K; of several codes, as in
 * IP66/IP69K, the highest of each. An X counts as 0. The digits are compared as numbers, as the trade does; strictly,
 * immersion (7, 8) does not include jets (5, 6).
 *
 * @param solids first digit, 0 to 6
 * @param water  second digit, 0 to 9
 */
record IngressCode(int solids, int water) {
    private static final Pattern CODE = Pattern.compile("(?:IP)?\\s*([0-6X])K?([0-9X])K?");

    /** The code; empty when the text is no code or null. */
    static Optional<IngressCode> of(String text) {
        if (text == null) {
            return Optional.empty();
        }
        int solids = -1;
        int water = -1;
        for (String part : text.trim().toUpperCase(Locale.ROOT).split("\\s*[/,]\\s*")) {
            Matcher matcher = CODE.matcher(part);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            solids = StrictMath.max(solids, digit(matcher.group(1)));
            water = StrictMath.max(water, digit(matcher.group(2)));
        }
        return Optional.of(new IngressCode(solids, water));
    }

    /** True when it is at least as tight as another one, in both digits. */
    boolean meets(IngressCode wanted) {
        return solids >= wanted.solids && water >= wanted.water;
    }

    /** The higher of each digit. */
    IngressCode inside(IngressCode host) {
        return new IngressCode(StrictMath.max(solids, host.solids), StrictMath.max(water, host.water));
    }

    private static int digit(String text) {
        return "X".equals(text) ? 0 : Integer.parseInt(text);
    }
}
