// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads lists of loads: text with separators, or the first sheet of a spreadsheet (Office Open XML). */
public final class ListFile {
    /** Files beyond this are refused, bytes: a list of loads has at most a few thousand rows. */
    static final long MOST_BYTES = 20_000_000;

    private ListFile() {
    }

    /**
     * Reads a list; what it is follows from its first bytes, not from its name.
     *
     * @throws UnreadableListException when it cannot be read, is too large, empty or no list
     */
    public static ListSheet read(Path file) {
        byte[] content;
        try {
            if (Files.isDirectory(file)) {
                throw new UnreadableListException("this is a folder");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new UnreadableListException("the list is larger than " + MOST_BYTES / 1_000_000 + " MB");
            }
            content = Files.readAllBytes(file);
        } catch (IOException problem) {
            throw new UnreadableListException("the list cannot be read", problem);
        }
        return of(content);
    }

    /** The list in the content of a file. */
    static ListSheet of(byte[] content) {
        if (startsWith(content, 'P', 'K', 3, 4)) {
            return SpreadsheetList.read(content);
        }
        if (startsWith(content, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new UnreadableListException("this is a spreadsheet in the old binary format; save it as .xlsx or .csv");
        }
        return TextList.read(content);
    }

    private static boolean startsWith(byte[] content, int... first) {
        if (content.length < first.length) {
            return false;
        }
        for (int i = 0; i < first.length; i++) {
            if ((content[i] & 0xFF) != first[i]) {
                return false;
            }
        }
        return true;
    }
}
