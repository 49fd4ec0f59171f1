// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

/**
 * A column of a table.
 *
 * @param key   key in JSON and heading in CSV; with the unit where there is one, for example {@code lengthMm}
 * @param title heading for people
 * @param unit  unit shown in the heading; empty for none
 * @param kind  what the cells hold
 */
public record Column(String key, String title, String unit, Kind kind) {

    /** What the cells of a column hold. */
    public enum Kind { TEXT, NUMBER }

    /** A column of text. */
    public static Column text(String key, String title) {
        return new Column(key, title, "", Kind.TEXT);
    }

    /** A column of numbers in one unit. */
    public static Column number(String key, String title, String unit) {
        return new Column(key, title, unit, Kind.NUMBER);
    }
}
