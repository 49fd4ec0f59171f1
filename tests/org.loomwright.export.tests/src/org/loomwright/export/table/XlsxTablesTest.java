// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Workbooks, unpacked and read back as XML. */
class XlsxTablesTest {
    private static final List<Column> COLUMNS = List.of(Column.text("name", "name"), Column.number("lengthM", "length", "m"));
    @TempDir
    Path folder;

    private Path book(List<Table> tables) throws Exception {
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            XlsxTables.write(tables, "0.1", out);
        }
        return file;
    }

    private static Table table(String title, List<List<Object>> rows, List<Object> totals) {
        return new Table(title, COLUMNS, rows, totals);
    }

    private static Document part(Path file, String name) throws Exception {
        try (ZipFile book = new ZipFile(file.toFile()); InputStream in = book.getInputStream(book.getEntry(name))) {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
        }
    }

    private static List<Element> elements(Document document, String tag) {
        NodeList found = document.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    /** {@code A1 text:name}, {@code B2 number:1.50}, row by row. */
    private static List<String> cells(Path file, int sheet) throws Exception {
        List<String> texts = elements(part(file, "xl/sharedStrings.xml"), "t").stream().map(Element::getTextContent).toList();
        Document document = part(file, "xl/worksheets/sheet" + sheet + ".xml");
        assertEquals(List.of(), elements(document, "f"), "formulas");
        List<String> cells = new ArrayList<>();
        for (Element cell : elements(document, "c")) {
            if (cell.getElementsByTagName("v").getLength() > 0) {
                String value = cell.getElementsByTagName("v").item(0).getTextContent();
                boolean text = cell.getAttribute("t").equals("s");
                assertTrue(text || cell.getAttribute("t").equals("n"), cell.getAttribute("t"));
                cells.add(cell.getAttribute("r") + (text ? " text:" + texts.get(Integer.parseInt(value)) : " number:" + value));
            }
        }
        return cells;
    }

    private String storedText(String text) throws Exception {
        String cell = cells(book(List.of(table("Lengths", List.of(Arrays.asList(text, null)), null))), 1).get(2);
        assertTrue(cell.startsWith("A2 text:"), cell);
        return cell.substring("A2 text:".length());
    }

    @Test
    void stringsStayStringsAndNumbersNumbers() throws Exception {
        assertEquals(List.of("A1 text:name", "B1 text:length, m", "A2 text:W1", "B2 number:1.50", "A3 text:12", "B3 number:-3",
                "A4 text:sum", "B4 number:-1.5"), cells(book(List.of(table("Lengths",
                List.of(Arrays.asList("W1", new BigDecimal("1.50")), Arrays.asList("12", new BigDecimal("-3"))),
                Arrays.asList("sum", new BigDecimal("-1.5"))))), 1));
    }

    @Test
    void cellsWithoutValueAreNotThere() throws Exception {
        assertEquals(List.of("A1 text:name", "B1 text:length, m", "B2 number:7"), cells(book(List.of(table("Lengths",
                List.of(Arrays.asList(null, new BigDecimal("7"))), null))), 1));
    }

    @Test
    void noTextIsAFormula() throws Exception {
        for (String text : List.of("=1+1", "+1", "-W12", "@SUM(A1)", "\t=1", "=HYPERLINK(\"x\",\"y\")", "{=1}")) {
            assertEquals(text, storedText(text));
        }
    }

    @Test
    void markupAndLettersOfAnyScriptSurvive() throws Exception {
        for (String text : List.of("<f>1+1</f>", "a & b", "]]>", "K\u00fchlbox", "\u51b0\u7bb1", "\ud83d\udd0b", " blanks ",
                "two\nlines")) {
            assertEquals(text, storedText(text));
        }
    }

    /** Readers take {@code _x0041_} for the letter A; {@code _x005F_} is the underscore itself. */
    @Test
    void codedCharactersInATextAreNoCodes() throws Exception {
        assertEquals("_x005F_x0041_", storedText("_x0041_"));
        assertEquals("_x004", storedText("_x004"));
        assertEquals("a_xyz_", storedText("a_xyz_"));
    }

    @Test
    void textTooLongForACellEndsInDots() throws Exception {
        String stored = storedText("x".repeat(40_000));
        assertEquals("x".repeat(32_763) + " ...", stored);
        assertEquals("x".repeat(32_767), storedText("x".repeat(32_767)));
        assertEquals("x".repeat(32_762) + " ...", storedText("x".repeat(32_762) + "\ud83d\udd0b".repeat(10)));
    }

    @Test
    void emptyTableIsItsHeading() throws Exception {
        assertEquals(List.of("A1 text:name", "B1 text:length, m"), cells(book(List.of(table("Lengths", List.of(), null))), 1));
    }

    @Test
    void oneSheetATable() throws Exception {
        Path file = book(List.of(table("First", List.of(), null), table("Second", List.of(Arrays.asList("z", null)), null)));
        assertEquals(List.of("First", "Second"), elements(part(file, "xl/workbook.xml"), "sheet").stream()
                .map(sheet -> sheet.getAttribute("name")).toList());
        assertEquals("A2 text:z", cells(file, 2).get(2));
        try (ZipFile book = new ZipFile(file.toFile())) {
            assertNull(book.getEntry("xl/worksheets/sheet3.xml"));
            assertNull(book.getEntry("xl/vbaProject.bin"));
        }
    }

    @Test
    void streamIsLeftOpenForTheCaller() throws Exception {
        Path file = folder.resolve("open.xlsx");
        boolean[] closed = new boolean[1];
        try (OutputStream out = Files.newOutputStream(file)) {
            XlsxTables.write(List.of(table("Lengths", List.of(), null)), "0.1", new java.io.FilterOutputStream(out) {
                @Override
                public void close() {
                    closed[0] = true;
                }
            });
        }
        assertEquals(false, closed[0]);
    }
}
