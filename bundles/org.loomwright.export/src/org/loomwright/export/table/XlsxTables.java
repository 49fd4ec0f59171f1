// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes tables as an Office Open XML workbook, one sheet each. Text goes in as text and never as a formula; numbers stay
 * numbers. A text longer than a cell can hold ends in dots.
 */
public final class XlsxTables {
    /** Letters that one cell holds at most (recalled: spreadsheet programs refuse more). */
    private static final int CELL_LETTERS = 32_767;
    private static final String CUT = " ...";
    /** What readers take for a coded character, ECMA-376 part 1, 22.9.2.19 ST_Xstring. */
    private static final Pattern CODED = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private XlsxTables() {
    }

    /**
     * Writes a workbook.
     *
     * @param tables  tables, one a sheet; their titles are the names of the sheets, at most 31 characters
     * @param version version of this program, {@code major.minor}, noted in the file
     * @param out     where to write; not closed
     */
    public static void write(List<Table> tables, String version, OutputStream out) throws IOException {
        try (Workbook book = new Workbook(out, "Loomwright", version)) {
            for (Table table : tables) {
                sheet(book.newWorksheet(table.title()), table);
            }
            book.finish();
        }
    }

    private static void sheet(Worksheet sheet, Table table) {
        for (int column = 0; column < table.columns().size(); column++) {
            Column head = table.columns().get(column);
            sheet.value(0, column, stored(head.unit().isEmpty() ? head.title() : head.title() + ", " + head.unit()));
            sheet.style(0, column).bold().set();
        }
        sheet.freezePane(0, 1);
        int line = 1;
        for (List<Object> row : table.rows()) {
            line(sheet, line++, row, false);
        }
        if (table.totals() != null) {
            line(sheet, line, table.totals(), true);
        }
    }

    private static void line(Worksheet sheet, int line, List<Object> row, boolean bold) {
        for (int column = 0; column < row.size(); column++) {
            Object cell = row.get(column);
            if (cell instanceof BigDecimal number) {
                sheet.value(line, column, number);
            } else if (cell != null) {
                sheet.value(line, column, stored((String) cell));
            }
            if (bold && cell != null) {
                sheet.style(line, column).bold().set();
            }
        }
    }

    /** The text as the format stores it: cut to what a cell holds, and nothing in it read as a coded character. */
    private static String stored(String text) {
        String coded = CODED.matcher(text).replaceAll("_x005F_");
        if (coded.length() <= CELL_LETTERS) {
            return coded;
        }
        int end = CELL_LETTERS - CUT.length();
        return coded.substring(0, Character.isHighSurrogate(coded.charAt(end - 1)) ? end - 1 : end) + CUT;
    }
}
