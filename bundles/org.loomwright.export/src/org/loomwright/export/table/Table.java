// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import java.util.Collections;
import java.util.List;

/**
 * A table of figures, the one source of its text, CSV, XLSX and JSON forms.
 *
 * @param title   title for people
 * @param columns columns
 * @param rows    rows; each cell is a {@link String}, a {@link java.math.BigDecimal} or null for empty, as the column's kind says
 * @param totals  a last row of totals, or null for none
 */
public record Table(String title, List<Column> columns, List<List<Object>> rows, List<Object> totals) {
    public Table {
        columns = List.copyOf(columns);
        rows = Collections.unmodifiableList(rows);
        for (List<Object> row : rows) {
            checkRow(columns, row);
        }
        if (totals != null) {
            checkRow(columns, totals);
        }
    }

    private static void checkRow(List<Column> columns, List<Object> row) {
        if (row.size() != columns.size()) {
            throw new IllegalArgumentException("row of " + row.size() + " cells in a table of " + columns.size());
        }
        for (int i = 0; i < row.size(); i++) {
            Object cell = row.get(i);
            boolean fits = cell == null || (columns.get(i).kind() == Column.Kind.NUMBER
                    ? cell instanceof java.math.BigDecimal
                    : cell instanceof String);
            if (!fits && !(cell instanceof String)) {
                throw new IllegalArgumentException(columns.get(i).key() + " cannot hold " + cell.getClass().getName());
            }
        }
    }
}
