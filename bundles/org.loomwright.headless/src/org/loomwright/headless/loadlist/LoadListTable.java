// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** What becomes of the rows of a list, as a table: loads that are made, and rows that make none with the reason. */
public final class LoadListTable {
    private record Line(int row, List<Object> cells) {
    }

    private LoadListTable() {
    }

    /** The table, in the order of the list. */
    public static Table of(LoadList list, LoadListPlan plan) {
        List<Column> columns = List.of(Column.number("row", "row", ""), Column.text("load", "load"),
                Column.number("count", "made", ""), Column.text("part", "part"), Column.number("watts", "power set", "W"),
                Column.text("place", "place"), Column.text("told", "to know"));
        List<Line> lines = new ArrayList<>();
        plan.rows().forEach(row -> lines.add(new Line(row.entry().row(), made(row))));
        list.faults().forEach(fault -> lines.add(new Line(fault.row(), refused(fault))));
        lines.sort(Comparator.comparingInt(Line::row));
        return new Table("Loads of the list", columns, lines.stream().map(Line::cells).toList(), null);
    }

    private static List<Object> made(PlannedLoad row) {
        List<Object> cells = new ArrayList<>();
        cells.add(BigDecimal.valueOf(row.entry().row()));
        cells.add(row.entry().name());
        cells.add(BigDecimal.valueOf(row.isMade() ? row.entry().count() : 0));
        cells.add(row.isMade() ? row.part().getName() : "");
        cells.add(row.watts());
        cells.add(place(row));
        cells.add(String.join("; ", row.told()));
        return cells;
    }

    private static String place(PlannedLoad row) {
        if (row.newPlace() != null) {
            return row.newPlace() + " (new)";
        }
        return row.place() == null ? "" : row.place().getName();
    }

    private static List<Object> refused(RowFault fault) {
        List<Object> cells = new ArrayList<>();
        cells.add(BigDecimal.valueOf(fault.row()));
        cells.add("");
        cells.add(BigDecimal.ZERO);
        cells.add("");
        cells.add(null);
        cells.add("");
        cells.add(fault.sentence().replaceFirst("^row \\d+[,:] ", ""));
        return cells;
    }
}
