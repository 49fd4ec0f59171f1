// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text is made to be read: columns line up, decimal points too. */
class TextTableTest {
    private static final List<Column> COLUMNS = List.of(Column.text("name", "name"), Column.number("lengthM", "length", "m"),
            Column.text("note", "note"));

    private static List<Object> row(String name, String number, String note) {
        return Arrays.asList(name, number == null ? null : new BigDecimal(number), note);
    }

    private static TextTable text(List<List<Object>> rows, List<Object> totals) {
        return new TextTable(new Table("Lengths", COLUMNS, rows, totals), "");
    }

    @Test
    void decimalPointsStandInOneColumn() {
        TextTable text = text(List.of(row("a", "1.5", "x"), row("bcd", "120", "y"), row("e", "0.125", "z"), row("f", null, "w"),
                row("g", "-3.25", "v")), row("sum", "118.375", ""));
        assertEquals(List.of(
                "name   length  note",
                "            m",
                "a       1.5    x",
                "bcd   120      y",
                "e       0.125  z",
                "f              w",
                "g      -3.25   v",
                "sum   118.375"), text.all());
        List<String> numbers = Stream.concat(text.body().stream(), text.totals().stream()).filter(line -> line.contains("."))
                .toList();
        assertEquals(1, numbers.stream().map(line -> line.indexOf('.')).collect(Collectors.toSet()).size());
    }

    @Test
    void unitLineOnlyWhereAColumnHasAUnit() {
        Table plain = new Table("Names", List.of(Column.text("a", "first"), Column.text("b", "second")),
                List.of(List.of("one", "two")), null);
        assertEquals(List.of("> first  second", "> one    two"), new TextTable(plain, "> ").all());
    }

    @Test
    void emptyTableIsItsHeading() {
        assertEquals(List.of("name  length  note", "           m"), text(List.of(), null).all());
    }

    @Test
    void lettersOfAnyScriptKeepTheColumns() {
        List<String> lines = text(List.of(row("K\u00fchlbox", "1", "x"), row("Ku\u0308hlbox", "1", "x"),
                row("\u51b0\u7bb1", "1", "x"), row("\ud83d\udd0b", "1", "x")), null).body();
        assertEquals(List.of("K\u00fchlbox       1  x", "Ku\u0308hlbox       1  x", "\u51b0\u7bb1          1  x",
                "\ud83d\udd0b            1  x"), lines);
    }

    @Test
    void lineBreaksAndControlCharactersBecomeBlanks() {
        List<String> lines = text(List.of(row("a\r\nb\tc\u009bd\u2028e", "1", "x")), null).body();
        assertEquals(List.of("a  b c d e       1  x"), lines);
    }

    @Test
    void verySmallAndLargeNumbersArePlain() {
        List<String> lines = text(List.of(row("a", "1E+3", "x"), row("b", "1E-7", "x")), null).body();
        assertTrue(lines.get(0).contains("1000 ") && lines.get(1).contains("0.0000001"), lines.toString());
    }

    @ParameterizedTest
    @CsvSource({"abc,3", "\u00e9,1", "e\u0301,1", "\u4e8c,2", "\uff71,1", "\u30a2,2", "\ud55c,2"})
    void widthCountsWhatASingleLetterTakes(String text, int columns) {
        assertEquals(columns, TextWidth.of(text));
    }

    @Test
    void rowsMustFitTheColumns() {
        assertThrows(IllegalArgumentException.class, () -> text(List.of(List.of("a")), null));
        assertThrows(IllegalArgumentException.class, () -> text(List.of(Arrays.asList("a", 5, "x")), null));
        assertThrows(IllegalArgumentException.class,
                () -> text(List.of(Arrays.asList(BigDecimal.ONE, BigDecimal.ONE, "x")), null));
        assertThrows(IllegalArgumentException.class, () -> text(List.of(), List.of("sum")));
    }
}
