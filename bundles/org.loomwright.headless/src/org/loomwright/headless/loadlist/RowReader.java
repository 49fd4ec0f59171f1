// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.List;

/** Understands single rows of a list. */
final class RowReader {
    private final ListSheet sheet;
    private final ColumnMatch match;
    private final NumberForm numbers;

    RowReader(ListSheet sheet, ColumnMatch match, NumberForm numbers) {
        this.sheet = sheet;
        this.match = match;
        this.numbers = numbers;
    }

    /** What a row says; null, with the faults added, when it cannot be taken. */
    LoadEntry read(ListRow row, List<RowFault> faults) {
        int before = faults.size();
        String name = match.text(row, ListColumn.NAME);
        if (name.isEmpty()) {
            faults.add(new RowFault(row.number(), ListColumn.NAME, "", "is missing"));
        }
        BigDecimal watts = positive(row, ListColumn.POWER, faults);
        BigDecimal amps = positive(row, ListColumn.CURRENT, faults);
        BigDecimal volts = positive(row, ListColumn.VOLTAGE, faults);
        Integer count = whole(row, ListColumn.COUNT, LoadEntry.MOST, faults);
        Integer priority = whole(row, ListColumn.PRIORITY, Integer.MAX_VALUE, faults);
        LoadEntry.Position position = position(row, faults);
        if (faults.size() > before) {
            return null;
        }
        return new LoadEntry(row.number(), name, match.text(row, ListColumn.PART), match.text(row, ListColumn.PLACE), watts, amps,
                volts, count == null ? 1 : count, position, priority, match.text(row, ListColumn.NOTE));
    }

    private LoadEntry.Position position(ListRow row, List<RowFault> faults) {
        BigDecimal x = value(row, ListColumn.X, faults);
        BigDecimal y = value(row, ListColumn.Y, faults);
        BigDecimal z = value(row, ListColumn.Z, faults);
        return x == null || y == null || z == null ? null : new LoadEntry.Position(x, y, z);
    }

    private Integer whole(ListRow row, ListColumn column, int most, List<RowFault> faults) {
        BigDecimal value = value(row, column, faults);
        if (value == null) {
            return null;
        }
        if (value.scale() > 0 || value.signum() <= 0 || value.compareTo(BigDecimal.valueOf(most)) > 0) {
            fault(row, column, faults, most == Integer.MAX_VALUE ? "is not a whole number from 1"
                    : "is not a whole number from 1 to " + most);
            return null;
        }
        return value.intValueExact();
    }

    private BigDecimal positive(ListRow row, ListColumn column, List<RowFault> faults) {
        BigDecimal value = value(row, column, faults);
        if (value != null && value.signum() <= 0) {
            fault(row, column, faults, "is not above 0");
            return null;
        }
        return value;
    }

    private BigDecimal value(ListRow row, ListColumn column, List<RowFault> faults) {
        String text = match.text(row, column);
        if (text.isEmpty()) {
            return null;
        }
        try {
            return numbers.value(text, column.quantity(), match.headFactor(sheet, column));
        } catch (IllegalArgumentException wrong) {
            fault(row, column, faults, wrong.getMessage());
            return null;
        }
    }

    private void fault(ListRow row, ListColumn column, List<RowFault> faults, String text) {
        faults.add(new RowFault(row.number(), column, match.text(row, column), text));
    }
}
