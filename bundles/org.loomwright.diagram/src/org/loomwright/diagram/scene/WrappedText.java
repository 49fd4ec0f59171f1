// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.ArrayList;
import java.util.List;

/** Texts broken between words into lines. */
public final class WrappedText {
    private WrappedText() {
    }

    /**
     * The lines; a word that is wider than the room has a line of its own.
     *
     * @param sizePx size of the type, px
     * @param roomPx width of a line, px
     */
    public static List<String> of(TextMeasure type, String text, double sizePx, boolean bold, double roomPx) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && type.widthPx(line + " " + word, sizePx, bold) > roomPx) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
