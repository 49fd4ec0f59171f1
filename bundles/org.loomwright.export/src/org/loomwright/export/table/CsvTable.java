// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;

/**
 * Writes a table as comma-separated values (RFC 4180): a heading line of column keys, decimal points, CR LF line ends. Text
 * that a spreadsheet would take for a formula is led in by an apostrophe.
 */
public final class CsvTable {
    private static final String END = "\r\n";
    /** Full-width forms too: some spreadsheets take them for the plain signs. */
    private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private CsvTable() {
    }

    /** Writes heading and rows; totals are left to the reader's spreadsheet. */
    public static void write(Table table, Writer out) throws IOException {
        out.write(String.join(",", table.columns().stream().map(column -> quoted(column.key())).toList()));
        out.write(END);
        for (List<Object> row : table.rows()) {
            out.write(String.join(",", row.stream().map(CsvTable::cell).toList()));
            out.write(END);
        }
    }

    private static String cell(Object cell) {
        return cell == null ? "" : cell instanceof BigDecimal number ? number.toPlainString() : quoted(harmless((String) cell));
    }

    private static String harmless(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
