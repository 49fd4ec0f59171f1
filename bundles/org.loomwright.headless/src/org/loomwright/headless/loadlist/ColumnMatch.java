// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which column of a sheet holds what.
 *
 * @param columns index of the column, from 0, of what is in the list
 */
public record ColumnMatch(Map<ListColumn, Integer> columns) {
    /** Copies the map. */
    public ColumnMatch {
        columns = columns.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(columns));
    }

    /**
     * What the words of the header say. A column is used once; a head that is a word as a whole comes before one that only has the
     * word in it.
     */
    public static ColumnMatch guess(ListSheet sheet) {
        Map<ListColumn, Integer> found = new EnumMap<>(ListColumn.class);
        Set<Integer> used = new HashSet<>();
        for (boolean whole : new boolean[] {true, false}) {
            for (ListColumn each : ListColumn.values()) {
                for (int index = 0; index < sheet.header().cells().size() && !found.containsKey(each); index++) {
                    if (!used.contains(index) && speaksOf(each, sheet.header().cell(index), whole)) {
                        found.put(each, index);
                        used.add(index);
                    }
                }
            }
        }
        return new ColumnMatch(found);
    }

    private static boolean speaksOf(ListColumn column, String head, boolean whole) {
        HeaderCell cell = HeaderCell.of(head);
        if (!cell.unit().isEmpty() && column.quantity() != null && column.quantity().factor(cell.unit()) == null) {
            return false;
        }
        if (whole) {
            return column.words().contains(cell.words());
        }
        // single letters stand for a column only when they are the whole head
        return column.words().stream().filter(word -> word.length() > 1)
                .anyMatch(word -> (" " + cell.words() + " ").contains(" " + word + " "));
    }

    /** The same with a column set by hand; a column that held something else until now is free for it. */
    public ColumnMatch with(ListColumn column, Integer index) {
        Map<ListColumn, Integer> changed = new EnumMap<>(ListColumn.class);
        changed.putAll(columns);
        changed.values().removeIf(used -> used.equals(index));
        if (index == null) {
            changed.remove(column);
        } else {
            changed.put(column, index);
        }
        return new ColumnMatch(changed);
    }

    /** True when a column of the sheet holds it. */
    public boolean has(ListColumn column) {
        return columns.containsKey(column);
    }

    /** Text of a row in the column of something; empty without such a column. */
    String text(ListRow row, ListColumn column) {
        return row.cell(columns.getOrDefault(column, -1));
    }

    /** What numbers without a unit of their own are multiplied by, from the unit in the head; 1 without one. */
    BigDecimal headFactor(ListSheet sheet, ListColumn column) {
        String unit = HeaderCell.of(sheet.header().cell(columns.getOrDefault(column, -1))).unit();
        BigDecimal factor = unit.isEmpty() || column.quantity() == null ? null : column.quantity().factor(unit);
        return factor == null ? BigDecimal.ONE : factor;
    }
}
