// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a table as lines of text: columns two spaces apart, numbers aligned on the decimal point. Line breaks and other control
 * characters in a cell become blanks.
 */
public final class TextTable {
    private static final String GAP = "  ";
    private final Table table;
    private final String indent;
    private final int[] decimals;
    private final int[] widths;

    /** A writer for one table; every line begins with {@code indent}. */
    public TextTable(Table table, String indent) {
        this.table = table;
        this.indent = indent;
        this.decimals = new int[table.columns().size()];
        for (List<Object> row : rowsAndTotals()) {
            for (int i = 0; i < decimals.length; i++) {
                decimals[i] = StrictMath.max(decimals[i], decimals(row.get(i)));
            }
        }
        this.widths = new int[table.columns().size()];
        for (int i = 0; i < widths.length; i++) {
            Column column = table.columns().get(i);
            widths[i] = StrictMath.max(TextWidth.of(column.title()), TextWidth.of(column.unit()));
        }
        for (List<Object> row : rowsAndTotals()) {
            List<String> texts = texts(row);
            for (int i = 0; i < widths.length; i++) {
                widths[i] = StrictMath.max(widths[i], TextWidth.of(texts.get(i)));
            }
        }
    }

    /** Heading lines: titles, and units below them when any column has one. */
    public List<String> heading() {
        List<String> lines = new ArrayList<>();
        lines.add(line(table.columns().stream().map(Column::title).toList()));
        if (table.columns().stream().anyMatch(column -> !column.unit().isEmpty())) {
            lines.add(line(table.columns().stream().map(Column::unit).toList()));
        }
        return lines;
    }

    /** One line a row, in order. */
    public List<String> body() {
        return table.rows().stream().map(row -> line(texts(row))).toList();
    }

    /** The totals line; empty when the table has none. */
    public List<String> totals() {
        return table.totals() == null ? List.of() : List.of(line(texts(table.totals())));
    }

    /** Heading, rows and totals. */
    public List<String> all() {
        List<String> lines = new ArrayList<>(heading());
        lines.addAll(body());
        lines.addAll(totals());
        return lines;
    }

    private List<String> texts(List<Object> row) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            Object cell = row.get(i);
            texts.add(cell instanceof BigDecimal number ? padded(number.toPlainString(), decimals[i])
                    : cell == null ? "" : TextWidth.onOneLine((String) cell));
        }
        return texts;
    }

    private static String padded(String number, int decimals) {
        int point = number.indexOf('.');
        int have = point < 0 ? 0 : number.length() - point;
        return number + " ".repeat(StrictMath.max(0, decimals - have));
    }

    /** Characters behind and including the decimal point. */
    private static int decimals(Object cell) {
        if (!(cell instanceof BigDecimal number)) {
            return 0;
        }
        String text = number.toPlainString();
        int point = text.indexOf('.');
        return point < 0 ? 0 : text.length() - point;
    }

    private List<List<Object>> rowsAndTotals() {
        List<List<Object>> all = new ArrayList<>(table.rows());
        if (table.totals() != null) {
            all.add(table.totals());
        }
        return all;
    }

    private String line(List<String> texts) {
        StringBuilder line = new StringBuilder(indent);
        for (int i = 0; i < texts.size(); i++) {
            int width = widths[i];
            String text = texts.get(i);
            String fill = " ".repeat(StrictMath.max(0, width - TextWidth.of(text)));
            boolean number = table.columns().get(i).kind() == Column.Kind.NUMBER;
            line.append(number ? fill + text : text + fill);
            if (i + 1 < texts.size()) {
                line.append(GAP);
            }
        }
        return line.toString().stripTrailing();
    }
}
