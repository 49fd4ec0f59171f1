// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.util.List;

/**
 * A list of loads as it stands in a file, before anything is made of it.
 *
 * @param header       row with the names of the columns
 * @param rows         rows below it that are not blank
 * @param decimalComma true when the way the file is written speaks for decimal commas
 */
public record ListSheet(ListRow header, List<ListRow> rows, boolean decimalComma) {
    /** Copies the rows. */
    public ListSheet {
        rows = List.copyOf(rows);
    }

    /**
     * The sheet of rows: the first that is not blank is the header.
     *
     * @throws UnreadableListException when there is no row
     */
    static ListSheet of(List<ListRow> all, boolean decimalComma) {
        List<ListRow> filled = all.stream().filter(row -> !row.isBlank()).toList();
        if (filled.isEmpty()) {
            throw new UnreadableListException("the list is empty");
        }
        return new ListSheet(filled.get(0), filled.subList(1, filled.size()), decimalComma);
    }

    /** Number of columns of the widest row. */
    public int width() {
        return rows.stream().mapToInt(row -> row.cells().size()).reduce(header.cells().size(), Math::max);
    }
}
