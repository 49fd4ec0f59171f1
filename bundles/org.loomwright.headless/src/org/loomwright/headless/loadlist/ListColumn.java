// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.util.List;

/**
 * What a column of a list of loads may hold, with words that stand for it in headers, English and German; the words are written
 * without accents and in lower case.
 */
public enum ListColumn {
    /** What the load is called. */
    NAME(null, "name", "load", "device", "consumer", "equipment", "item", "appliance", "verbraucher", "gerat", "bezeichnung",
            "benennung", "beschreibung", "description", "designation"),
    /** Order code or name of a part of the library. */
    PART(null, "part", "part number", "part no", "order code", "article", "teil", "artikel", "artikelnummer", "bestellnummer"),
    /** Name of the place. */
    PLACE(null, "place", "location", "position", "where", "ort", "einbauort", "platz", "lage"),
    /** Power at the voltage of the load's domain, or at the voltage of its own column. */
    POWER(Quantity.POWER, "power", "watt", "watts", "w", "leistung", "nennleistung", "leistungsaufnahme", "p"),
    /** Current at the same voltage. */
    CURRENT(Quantity.CURRENT, "current", "amp", "amps", "ampere", "a", "strom", "nennstrom", "stromaufnahme", "i"),
    /** Voltage the load is made for. */
    VOLTAGE(Quantity.VOLTAGE, "voltage", "volt", "volts", "v", "spannung", "nennspannung", "u"),
    /** How many of them. */
    COUNT(Quantity.NUMBER, "count", "number", "quantity", "qty", "pieces", "pcs", "no", "anzahl", "menge", "stuck"),
    /** Millimetres forward from the rearmost point, for a new place. */
    X(Quantity.LENGTH, "x", "forward", "from rear", "langs"),
    /** Millimetres to the left of the centre line, for a new place. */
    Y(Quantity.LENGTH, "y", "left", "across", "quer"),
    /** Millimetres up from the ground, for a new place. */
    Z(Quantity.LENGTH, "z", "up", "height", "hohe"),
    /** What is last to be switched off comes first, 1 to 4. */
    PRIORITY(Quantity.NUMBER, "priority", "prioritat", "wichtigkeit"),
    /** Kept as the note of the device. */
    NOTE(null, "note", "notes", "remark", "remarks", "comment", "bemerkung", "bemerkungen", "notiz", "kommentar");

    private final Quantity quantity;
    private final List<String> words;

    ListColumn(Quantity quantity, String... words) {
        this.quantity = quantity;
        this.words = List.of(words);
    }

    /** What its numbers are; null for text. */
    Quantity quantity() {
        return quantity;
    }

    /** The unit its numbers are kept in; empty for plain numbers and for text. */
    public String unit() {
        return quantity == null ? "" : quantity.unit();
    }

    /** Words for it in headers. */
    List<String> words() {
        return words;
    }
}
