// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of loads as files: separators, quotes, encodings, spreadsheets, and what is none. */
class ListFileTest {
    private static final String COLD_BOX = "K\u00FChlbox, hinten";

    private static ListSheet of(String text) {
        return ListFile.of(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t", ","})
    void theSeparatorIsFound(String separator) {
        ListSheet sheet = of(String.join("\n", "name;W;place", "lamp;10;roof", "pump;40;tank").replace(";", separator));
        assertEquals(List.of("name", "W", "place"), sheet.header().cells());
        assertEquals(List.of("pump", "40", "tank"), sheet.rows().get(1).cells());
    }

    @Test
    void decimalCommasDoNotCutCellsOfASemicolonList() {
        ListSheet sheet = of("name;power\nlamp;4,5\npump;40,25\nfan;2,5\n");
        assertEquals(List.of("lamp", "4,5"), sheet.rows().get(0).cells());
        assertTrue(sheet.decimalComma());
    }

    @Test
    void quotedCellsKeepSeparatorsQuotesAndLineEnds() {
        ListSheet sheet = of("name,note\n\"lamp, left\",\"12\"\" bracket\nabove\"\npump,\n");
        assertEquals(List.of("lamp, left", "12\" bracket\nabove"), sheet.rows().get(0).cells());
        assertEquals("", sheet.rows().get(1).cell(1));
    }

    @Test
    void rowsKeepTheirNumbersPastBlankOnes() {
        ListSheet sheet = of("\nname;W\n\nlamp;10\n ; \npump;5\n");
        assertEquals(2, sheet.header().number());
        assertEquals(List.of(4, 6), sheet.rows().stream().map(ListRow::number).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "windows-1252", "mark UTF-8", "mark UTF-16LE", "mark UTF-16BE"})
    void umlautsSurviveEachEncoding(String encoding) {
        boolean marked = encoding.startsWith("mark ");
        String text = (marked ? "\uFEFF" : "") + "Name;W\n" + COLD_BOX + ";45\n";
        ListSheet sheet = ListFile.of(text.getBytes(Charset.forName(encoding.replace("mark ", ""))));
        assertEquals("Name", sheet.header().cell(0));
        assertEquals(COLD_BOX, sheet.rows().get(0).cell(0));
    }

    @Test
    void theFirstSheetOfAWorkbookIsRead() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "test", "1.0")) {
            Worksheet sheet = book.newWorksheet("loads");
            sheet.value(0, 0, "name");
            sheet.value(0, 1, "power");
            sheet.value(2, 0, COLD_BOX);
            sheet.value(2, 1, 45.5);
            sheet.value(3, 0, "pump");
            sheet.value(3, 1, 1200);
            book.newWorksheet("other").value(0, 0, "not this");
        }
        ListSheet sheet = ListFile.of(out.toByteArray());
        assertEquals(List.of("name", "power"), sheet.header().cells());
        assertEquals(List.of(COLD_BOX, "45.5"), sheet.rows().get(0).cells());
        assertEquals(3, sheet.rows().get(0).number());
        assertEquals("1200", sheet.rows().get(1).cell(1));
        assertFalse(sheet.decimalComma());
    }

    @Test
    void whatIsNoListIsRefusedInWords(@TempDir Path folder) throws IOException {
        refused("the list is empty", "");
        refused("the list is empty", "\n ; \n");
        refused("not a spreadsheet", "PK\u0003\u0004 but nothing else");
        refused("neither text nor", "na\u0000me");
        assertTrue(assertThrows(UnreadableListException.class,
                () -> ListFile.of(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0})).getMessage().contains(".xlsx"));
        assertThrows(UnreadableListException.class, () -> ListFile.read(folder));
        assertThrows(UnreadableListException.class, () -> ListFile.read(folder.resolve("missing.csv")));
        Path cut = folder.resolve("cut.xlsx");
        Files.write(cut, workbookCut());
        assertThrows(UnreadableListException.class, () -> ListFile.read(cut));
    }

    private static byte[] workbookCut() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "test", "1.0")) {
            book.newWorksheet("loads").value(0, 0, "name");
        }
        return Arrays.copyOf(out.toByteArray(), out.size() / 2);
    }

    private static void refused(String expected, String text) {
        UnreadableListException refused = assertThrows(UnreadableListException.class, () -> of(text));
        assertTrue(refused.getMessage().contains(expected), refused.getMessage());
    }

    @Test
    void bytesByChanceAreReadOrRefusedButNeverFail() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            byte[] content = new byte[random.nextInt(200)];
            random.nextBytes(content);
            if (i % 3 == 0 && content.length > 4) {
                System.arraycopy(new byte[] {'P', 'K', 3, 4}, 0, content, 0, 4);
            }
            try {
                ListFile.of(content);
            } catch (UnreadableListException told) {
                assertFalse(told.getMessage().isBlank());
            }
        }
    }
}
