// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

/** What sizing makes as small as it can. What is left equal is decided by the mass of copper, then by the smaller sections. */
public enum SizingObjective {
    /** Mass of the copper in the cables, kg. */
    COPPER("copper", "kg"),
    /** Price of cables and protectors in the library's prices. */
    PRICE("price", "money"),
    /** Number of different sections, those that stay counted in; then the mass of copper. */
    SECTIONS("sections", "1"),
    /** Price of the cable that has to be bought beside what lies in the store. */
    STOCK("stock", "money");

    private final String word;
    private final String unit;

    SizingObjective(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    /** The word for it on a command line. */
    public String word() {
        return word;
    }

    /** Unit of its figure; {@code money} stands for the currency of the library, {@code 1} for a number. */
    public String unit() {
        return unit;
    }
}
