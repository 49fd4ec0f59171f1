// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

/**
 * A text with a place marked in it.
 *
 * @param text   the text without the mark
 * @param line   line of the mark, counted from 1
 * @param column column of the mark, counted from 1
 */
record Marked(String text, int line, int column) {
    static final String MARK = "\u00A7";

    static Marked of(String textWithMark) {
        int at = textWithMark.indexOf(MARK);
        if (at < 0 || textWithMark.indexOf(MARK, at + 1) >= 0) {
            throw new IllegalArgumentException("one mark is needed");
        }
        String before = textWithMark.substring(0, at);
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new Marked(before + textWithMark.substring(at + 1), line, at - (before.lastIndexOf('\n') + 1) + 1);
    }
}
