// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The text of a file, with lines and columns. */
final class SourceText {
    private final String text;
    private final boolean byteOrderMark;
    private final int firstBadByte;
    private int[] lineStarts;

    private SourceText(String text, boolean byteOrderMark, int firstBadByte) {
        this.text = text;
        this.byteOrderMark = byteOrderMark;
        this.firstBadByte = firstBadByte;
    }

    /** Decodes UTF-8; bytes that are none end the text. */
    static SourceText decode(byte[] bytes) {
        boolean mark = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
        int skip = mark ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CharBuffer out = CharBuffer.allocate(bytes.length - skip);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        return new SourceText(out.flip().toString(), mark, result.isError() ? in.position() : -1);
    }

    String text() {
        return text;
    }

    boolean hasByteOrderMark() {
        return byteOrderMark;
    }

    /** True when all bytes were UTF-8. */
    boolean isUtf8() {
        return firstBadByte < 0;
    }

    /** The line end of the first line; a line feed when there is only one line. */
    String lineEnd() {
        int feed = text.indexOf('\n');
        if (feed < 0) {
            return text.indexOf('\r') >= 0 ? "\r" : "\n";
        }
        return feed > 0 && text.charAt(feed - 1) == '\r' ? "\r\n" : "\n";
    }

    /** Line and column of a place in the text. */
    Location location(int offset) {
        int line = Arrays.binarySearch(lineStarts(), offset);
        if (line < 0) {
            line = -line - 2;
        }
        return new Location(line + 1, offset - lineStarts[line] + 1);
    }

    /** The place of a line and column, as near as the text has one. */
    int offset(int line, int column) {
        int index = Math.max(0, Math.min(line, lineStarts().length) - 1);
        return Math.max(0, Math.min(text.length(), lineStarts[index] + Math.max(0, column - 1)));
    }

    private int[] lineStarts() {
        if (lineStarts == null) {
            int[] starts = new int[64];
            int count = 1;
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                    if (count == starts.length) {
                        starts = Arrays.copyOf(starts, count * 2);
                    }
                    starts[count++] = i + 1;
                }
            }
            lineStarts = Arrays.copyOf(starts, count);
        }
        return lineStarts;
    }
}
