// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Lists as text: cells apart by semicolons, tabs or commas, quoted as in RFC 4180. UTF-8 and UTF-16 are told by their mark or their
 * bytes; what is neither is taken for Windows-1252, which office programs of western Europe write.
 */
final class TextList {
    private static final char[] SEPARATORS = {';', '\t', ','};
    private static final int ROWS_LOOKED_AT = 20;

    private TextList() {
    }

    static ListSheet read(byte[] content) {
        String text = decode(content);
        if (text.indexOf('\0') >= 0) {
            throw new UnreadableListException("this is neither text nor a spreadsheet");
        }
        char separator = separator(text);
        return ListSheet.of(rows(text, separator, Integer.MAX_VALUE), separator == ';');
    }

    private static String decode(byte[] content) {
        if (begins(content, 0xEF, 0xBB, 0xBF)) {
            return new String(content, 3, content.length - 3, StandardCharsets.UTF_8);
        }
        if (begins(content, 0xFF, 0xFE)) {
            return new String(content, 2, content.length - 2, StandardCharsets.UTF_16LE);
        }
        if (begins(content, 0xFE, 0xFF)) {
            return new String(content, 2, content.length - 2, StandardCharsets.UTF_16BE);
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(content, Charset.forName("windows-1252"));
        }
    }

    private static boolean begins(byte[] content, int... mark) {
        return content.length >= mark.length
                && Arrays.equals(Arrays.copyOf(content, mark.length), bytes(mark));
    }

    private static byte[] bytes(int[] values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    /** The separator that cuts most of the first rows into equally many cells; among equals the one that cuts more. */
    private static char separator(String text) {
        char best = SEPARATORS[0];
        long bestScore = -1;
        for (char each : SEPARATORS) {
            long score = score(text, each);
            if (score > bestScore) {
                best = each;
                bestScore = score;
            }
        }
        return best;
    }

    private static long score(String text, char separator) {
        List<ListRow> rows;
        try {
            rows = rows(text, separator, ROWS_LOOKED_AT).stream().filter(row -> !row.isBlank()).toList();
        } catch (UnreadableListException notThis) {
            return -1;
        }
        if (rows.isEmpty()) {
            return text.indexOf(separator) >= 0 ? 1000 : 0;
        }
        int width = rows.get(0).cells().size();
        long alike = width < 2 ? 0 : rows.stream().filter(row -> row.cells().size() == width).count();
        return alike * 1000 + width;
    }

    private static List<ListRow> rows(String text, char separator, int most) {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreSurroundingSpaces(true).setTrim(true)
                .setIgnoreEmptyLines(false).setLenientEof(true).get();
        List<ListRow> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
            for (CSVRecord each : parser) {
                if (rows.size() == most) {
                    break;
                }
                rows.add(new ListRow((int) each.getRecordNumber(), each.toList()));
            }
        } catch (CSVException | UncheckedIOException malformed) {
            throw new UnreadableListException("row " + (rows.size() + 1) + ": a quote does not end where the cell ends", malformed);
        } catch (IOException problem) {
            throw new UnreadableListException("the list cannot be read", problem);
        }
        return rows;
    }
}
