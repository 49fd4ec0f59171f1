// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** The first sheet of a spreadsheet in Office Open XML (ISO/IEC 29500). */
final class SpreadsheetList {
    private SpreadsheetList() {
    }

    static ListSheet read(byte[] content) {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(content));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            return ListSheet.of(rows.map(SpreadsheetList::row).toList(), false);
        } catch (UnreadableListException told) {
            throw told;
        } catch (IOException | RuntimeException malformed) {
            // the reader throws what it happens to stumble over when the file is no workbook
            throw new UnreadableListException("this is not a spreadsheet that can be read (.xlsx)", malformed);
        }
    }

    private static ListRow row(Row row) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < row.getCellCount(); column++) {
            cells.add(row.getOptionalCell(column).map(SpreadsheetList::text).orElse(""));
        }
        return new ListRow(row.getRowNum(), cells);
    }

    private static String text(Cell cell) {
        if (cell.getType() == CellType.NUMBER) {
            BigDecimal plain = cell.asNumber().stripTrailingZeros();
            return plain.scale() < 0 ? plain.toBigInteger().toString() : plain.toPlainString();
        }
        if (cell.getType() == CellType.FORMULA && cell.getValue() instanceof BigDecimal computed) {
            return computed.stripTrailingZeros().toPlainString();
        }
        String text = cell.getText();
        return text == null ? "" : text.strip();
    }
}
