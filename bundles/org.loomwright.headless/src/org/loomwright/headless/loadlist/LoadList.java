// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.util.ArrayList;
import java.util.List;

/**
 * The rows of a list understood.
 *
 * @param entries rows that say enough, in the order of the file
 * @param faults  what is wrong with the others
 */
public record LoadList(List<LoadEntry> entries, List<RowFault> faults) {
    /** Copies the lists. */
    public LoadList {
        entries = List.copyOf(entries);
        faults = List.copyOf(faults);
    }

    /**
     * Understands the rows of a sheet. A row with a fault makes no entry; the others are not touched by it.
     *
     * @throws UnreadableListException when no column holds names
     */
    public static LoadList of(ListSheet sheet, ColumnMatch match) {
        if (!match.has(ListColumn.NAME)) {
            throw new UnreadableListException("no column of the list says what the loads are called");
        }
        RowReader reader = new RowReader(sheet, match, numbers(sheet, match));
        List<LoadEntry> entries = new ArrayList<>();
        List<RowFault> faults = new ArrayList<>();
        for (ListRow row : sheet.rows()) {
            LoadEntry entry = reader.read(row, faults);
            if (entry != null) {
                entries.add(entry);
            }
        }
        return new LoadList(entries, faults);
    }

    private static NumberForm numbers(ListSheet sheet, ColumnMatch match) {
        List<String> texts = new ArrayList<>();
        for (ListColumn each : ListColumn.values()) {
            if (each.quantity() != null && match.has(each)) {
                sheet.rows().forEach(row -> texts.add(match.text(row, each)));
            }
        }
        return NumberForm.of(texts, sheet.decimalComma());
    }
}
