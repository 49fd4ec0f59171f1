// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Comma-separated values after RFC 4180, harmless to spreadsheets. */
class CsvTableTest {
    private static final List<Column> COLUMNS = List.of(Column.text("name", "Name"), Column.number("lengthM", "length", "m"));

    private static String csv(List<List<Object>> rows, List<Object> totals) throws IOException {
        StringWriter out = new StringWriter();
        CsvTable.write(new Table("Lengths", COLUMNS, rows, totals), out);
        return out.toString();
    }

    private static String cell(String text) throws IOException {
        String csv = csv(List.of(Arrays.asList(text, null)), null);
        assertTrue(csv.startsWith("name,lengthM\r\n") && csv.endsWith(",\r\n"), csv);
        return csv.substring("name,lengthM\r\n".length(), csv.length() - ",\r\n".length());
    }

    /** RFC 4180 section 2, read by this test on its own. */
    private static List<List<String>> parsed(String csv) {
        List<List<String>> records = new ArrayList<>();
        List<String> fields = new ArrayList<>();
        int at = 0;
        while (at < csv.length()) {
            StringBuilder field = new StringBuilder();
            if (csv.charAt(at) == '"') {
                at++;
                while (csv.charAt(at) != '"' || at + 1 < csv.length() && csv.charAt(at + 1) == '"') {
                    field.append(csv.charAt(at));
                    at += csv.charAt(at) == '"' ? 2 : 1;
                }
                at++;
            } else {
                while (",\r\n\"".indexOf(csv.charAt(at)) < 0) {
                    field.append(csv.charAt(at++));
                }
            }
            fields.add(field.toString());
            if (csv.charAt(at) == ',') {
                at++;
            } else {
                assertEquals("\r\n", csv.substring(at, at + 2));
                at += 2;
                records.add(fields);
                fields = new ArrayList<>();
            }
        }
        return records;
    }

    @Test
    void headingOfKeysThenRowsWithCrLf() throws IOException {
        assertEquals("name,lengthM\r\nW1,1.50\r\nW2,\r\n", csv(List.of(Arrays.asList("W1", new BigDecimal("1.50")),
                Arrays.asList("W2", null)), null));
    }

    @Test
    void emptyTableIsItsHeading() throws IOException {
        assertEquals("name,lengthM\r\n", csv(List.of(), null));
    }

    @Test
    void totalsAreLeftOut() throws IOException {
        assertEquals("name,lengthM\r\n", csv(List.of(), Arrays.asList("sum", BigDecimal.ONE)));
    }

    @Test
    void numbersArePlainAndNegativeOnesStayNumbers() throws IOException {
        assertEquals("name,lengthM\r\na,1000\r\nb,-2.5\r\n", csv(List.of(Arrays.asList("a", new BigDecimal("1E+3")),
                Arrays.asList("b", new BigDecimal("-2.5"))), null));
    }

    @Test
    void quotesCommasAndLineBreaksAreQuoted() throws IOException {
        assertEquals("\"a,b\"", cell("a,b"));
        assertEquals("\"say \"\"no\"\"\"", cell("say \"no\""));
        assertEquals("\"a\nb\"", cell("a\nb"));
        assertEquals("\"a\r\nb\"", cell("a\r\nb"));
        assertEquals(" a ", cell(" a "));
        assertEquals("a;b", cell("a;b"));
    }

    @Test
    void everyTextIsReadBackAsWritten() throws IOException {
        List<String> texts = List.of("plain", "a,b", "\"", "\"\"", "a\"b\"c", "line\nbreak", "line\r\nbreak", "", "K\u00fchlbox",
                "\u51b0\u7bb1", "\ud83d\udd0b", ",", "\n", "x,\"y\",\r\nz");
        List<List<Object>> rows = new ArrayList<>();
        texts.forEach(text -> rows.add(Arrays.asList(text, BigDecimal.TEN)));
        List<List<String>> read = parsed(csv(rows, null));
        assertEquals(List.of("name", "lengthM"), read.get(0));
        for (int i = 0; i < texts.size(); i++) {
            String expected = texts.get(i).startsWith("\n") ? "'" + texts.get(i) : texts.get(i);
            assertEquals(List.of(expected, "10"), read.get(i + 1));
        }
        assertEquals(texts.size() + 1, read.size());
    }

    /** The starts that the Open Worldwide Application Security Project lists for CSV injection (recalled), full width too. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-W12", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "\uff1d1", "\uff0b1", "\uff0d1", "\uff201"})
    void textThatASpreadsheetWouldCalculateIsLedInByAnApostrophe(String text) throws IOException {
        List<List<String>> read = parsed(csv(List.of(Arrays.asList(text, null)), null));
        assertEquals("'" + text, read.get(1).get(0));
    }

    @Test
    void harmIsTakenOutInsideQuotesToo() throws IOException {
        assertEquals("\"'=HYPERLINK(\"\"http://example.org\"\",\"\"x\"\")\"", cell("=HYPERLINK(\"http://example.org\",\"x\")"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a=b", "5-core", "1+1", "me@home", "'quoted"})
    void signsFurtherInAreLeftAlone(String text) throws IOException {
        assertEquals(text, cell(text));
    }

    @Test
    void textInAColumnOfNumbersIsMadeHarmlessToo() throws IOException {
        assertEquals("name,lengthM\r\na,'=1\r\n", csv(List.of(Arrays.asList("a", "=1")), null));
    }
}
