// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.util.List;

/**
 * One row of a list as it stands in the file.
 *
 * @param number row in the file, from 1
 * @param cells  texts of its cells without space at their ends; never null
 */
public record ListRow(int number, List<String> cells) {
    /** Copies the cells. */
    public ListRow {
        cells = List.copyOf(cells);
    }

    /** Text of a column; empty where the row has no such column. */
    public String cell(int column) {
        return column >= 0 && column < cells.size() ? cells.get(column) : "";
    }

    /** True when nothing stands in it. */
    public boolean isBlank() {
        return cells.stream().allMatch(String::isEmpty);
    }
}
