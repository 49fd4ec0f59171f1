// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.PrintWriter;

/** Writes running text in lines of a readable length. */
public final class WrappedText {
    private static final int WIDTH = 110;

    private WrappedText() {
    }

    /**
     * Writes a paragraph.
     *
     * @param indent what every line begins with
     * @param lead   what follows on the first line; later lines are moved in as far
     */
    public static void write(PrintWriter out, String indent, String lead, String text) {
        String begin = lead;
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            boolean full = indent.length() + lead.length() + line.length() + 1 + word.length() > WIDTH;
            if (line.length() > 0 && full) {
                out.println(indent + begin + line);
                line.setLength(0);
                begin = " ".repeat(lead.length());
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        out.println(indent + begin + line);
    }
}
