// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.util.Locale;

/** What columns are called in messages and options. */
public final class ColumnWords {
    private ColumnWords() {
    }

    /** The word for a column, for example power. */
    public static String of(ListColumn column) {
        return column.name().toLowerCase(Locale.ROOT);
    }

    /**
     * The column that a word stands for.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static ListColumn column(String word) {
        for (ListColumn each : ListColumn.values()) {
            if (of(each).equalsIgnoreCase(word.strip())) {
                return each;
            }
        }
        throw new IllegalArgumentException("there is no column " + word + " in a list of loads");
    }
}
