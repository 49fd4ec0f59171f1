// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Set;

/** Columns that a text takes on a screen with letters of one width. */
final class TextWidth {
    private static final Set<UnicodeScript> WIDE = EnumSet.of(UnicodeScript.HAN, UnicodeScript.HIRAGANA, UnicodeScript.KATAKANA,
            UnicodeScript.HANGUL);

    private TextWidth() {
    }

    /** Columns: none for a mark set over a letter, two for East Asian letters and pictographs. */
    static int of(String text) {
        return text.codePoints().map(TextWidth::columns).sum();
    }

    private static int columns(int letter) {
        return switch (Character.getType(letter)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            default -> (WIDE.contains(UnicodeScript.of(letter)) || pictograph(letter)) && !halfWidth(letter) ? 2 : 1;
        };
    }

    private static boolean pictograph(int letter) {
        return letter >= 0x1F300 && letter <= 0x1FAFF;
    }

    private static boolean halfWidth(int letter) {
        return letter >= 0xFF61 && letter <= 0xFFDC;
    }

    /** The text with control characters, line breaks among them, as blanks. */
    static String onOneLine(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints().map(letter -> Character.isISOControl(letter) || letter == 0x2028 || letter == 0x2029 ? ' ' : letter)
                .forEach(line::appendCodePoint);
        return line.toString();
    }
}
