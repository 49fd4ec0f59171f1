// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.Comparator;
import org.eclipse.emf.ecore.resource.Resource;

/**
 * Something wrong with a file, told to the person who wrote it.
 *
 * @param file     the file, as a path to show
 * @param line     line, counted from 1; 1 where the file as a whole is meant
 * @param column   column in characters, counted from 1
 * @param element  the element, for example {@code vehicle heron > arrangement central > cable W3}; null where there is none
 * @param message  what is wrong
 * @param expected what was expected; null where the message says it
 */
public record ReadFault(String file, int line, int column, String element, String message, String expected)
        implements Resource.Diagnostic {
    /** Order of appearance in a file. */
    public static final Comparator<ReadFault> BY_POSITION =
            Comparator.comparingInt(ReadFault::line).thenComparingInt(ReadFault::column);

    /** The same fault under another name of its file. */
    public ReadFault in(String otherFile) {
        return new ReadFault(otherFile, line, column, element, message, expected);
    }

    @Override
    public String getMessage() {
        return message + (expected == null ? "" : "; expected " + expected);
    }

    @Override
    public String getLocation() {
        return file;
    }

    @Override
    public int getLine() {
        return line;
    }

    @Override
    public int getColumn() {
        return column;
    }

    /** One line: file, line, column, element, message. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + (element == null ? "" : element + ": ") + getMessage();
    }
}
