// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.util.regex.Pattern;
import org.loomwright.model.files.ReadFault;

/** A fault as one line of a readable length: file, line, column, element, what is wrong, what was expected. */
public final class FaultLine {
    private static final int LONGEST = 100;
    private static final Pattern LONG_WORD = Pattern.compile("(\\S{" + (LONGEST - 10) + "})\\S{11,}");

    private FaultLine() {
    }

    /** The line; words of the file that are longer than a line are cut. */
    public static String of(ReadFault fault) {
        return new ReadFault(fault.file(), fault.line(), fault.column(), cut(fault.element()), cut(fault.message()),
                cut(fault.expected())).toString();
    }

    private static String cut(String text) {
        return text == null ? null : LONG_WORD.matcher(text).replaceAll("$1...");
    }
}
