// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

/**
 * Why a row of a list makes no load.
 *
 * @param row    row in the file, from 1
 * @param column the column it is about; null for the row as a whole
 * @param value  what stands there
 * @param text   what is wrong with it
 */
public record RowFault(int row, ListColumn column, String value, String text) {
    /** The fault in one sentence, for example: row 7, power: "12 Ah" has the unit Ah, where W belongs. */
    public String sentence() {
        return "row " + row + (column == null ? "" : ", " + ColumnWords.of(column)) + ": "
                + (value.isEmpty() ? "" : "\"" + value + "\" ") + text;
    }
}
