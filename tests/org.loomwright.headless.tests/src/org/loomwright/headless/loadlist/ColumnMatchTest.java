// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which column holds what: by the words of heads in two languages, by units, set by hand. */
class ColumnMatchTest {
    private static ListSheet sheet(String... heads) {
        return new ListSheet(new ListRow(1, List.of(heads)), List.of(), false);
    }

    private static Map<ListColumn, Integer> guess(String... heads) {
        return ColumnMatch.guess(sheet(heads)).columns();
    }

    @Test
    void englishHeadsAreKnown() {
        assertEquals(Map.of(ListColumn.NAME, 0, ListColumn.POWER, 1, ListColumn.PLACE, 2, ListColumn.COUNT, 3, ListColumn.NOTE, 4),
                guess("Load", "Power (W)", "Location", "Qty", "Remarks"));
    }

    @Test
    void germanHeadsAreKnown() {
        assertEquals(Map.of(ListColumn.NAME, 0, ListColumn.POWER, 1, ListColumn.CURRENT, 2, ListColumn.PLACE, 3, ListColumn.COUNT, 4),
                guess("Ger\u00E4t", "Leistung in W", "Strom [A]", "Einbauort", "St\u00FCck"));
    }

    @Test
    void aUnitOfSomethingElseForbidsTheColumn() {
        assertFalse(guess("name", "power (Ah)").containsKey(ListColumn.POWER));
        assertEquals(1, guess("name", "current / mA").get(ListColumn.CURRENT));
    }

    @Test
    void aHeadThatIsTheWordComesBeforeOneThatHasItInside() {
        assertEquals(1, guess("name of the supplier", "name").get(ListColumn.NAME));
    }

    @Test
    void singleLettersCountAloneOnly() {
        assertEquals(1, guess("name", "W").get(ListColumn.POWER));
        assertFalse(guess("name", "size w").containsKey(ListColumn.POWER));
    }

    @Test
    void theUnitOfTheHeadScalesItsNumbers() {
        ListSheet sheet = sheet("name", "x (cm)", "Leistung/kW");
        ColumnMatch match = ColumnMatch.guess(sheet);
        assertEquals("10", match.headFactor(sheet, ListColumn.X).toPlainString());
        assertEquals("1000", match.headFactor(sheet, ListColumn.POWER).toPlainString());
    }

    @Test
    void aColumnSetByHandIsFreedFromWhatItHeld() {
        ColumnMatch match = ColumnMatch.guess(sheet("name", "power")).with(ListColumn.CURRENT, 1);
        assertEquals(Map.of(ListColumn.NAME, 0, ListColumn.CURRENT, 1), match.columns());
        assertEquals(Map.of(ListColumn.NAME, 0), match.with(ListColumn.CURRENT, null).columns());
    }
}
