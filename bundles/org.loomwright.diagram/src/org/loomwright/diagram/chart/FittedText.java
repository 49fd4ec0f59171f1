// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import org.loomwright.diagram.paint.Type;

/** Texts shortened to the room there is, with an ellipsis. */
final class FittedText {
    private FittedText() {
    }

    static String of(Type type, String text, boolean bold, double roomPx) {
        String fitted = text;
        while (fitted.length() > 1 && type.widthPx(fitted, 12, bold) > roomPx) {
            fitted = fitted.substring(0, fitted.length() - (fitted.endsWith("\u2026") ? 2 : 1)).stripTrailing() + "\u2026";
        }
        return fitted;
    }
}
