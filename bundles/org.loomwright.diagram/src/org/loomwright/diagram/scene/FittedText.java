// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** Texts shortened to the room there is, with an ellipsis. */
public final class FittedText {
    private FittedText() {
    }

    /**
     * The text, cut at its end where it is too long.
     *
     * @param sizePx size of the type, px
     * @param roomPx room there is, px
     */
    public static String of(TextMeasure type, String text, double sizePx, boolean bold, double roomPx) {
        String fitted = text;
        while (fitted.length() > 1 && type.widthPx(fitted, sizePx, bold) > roomPx) {
            fitted = fitted.substring(0, fitted.length() - (fitted.endsWith("\u2026") ? 2 : 1)).stripTrailing() + "\u2026";
        }
        return fitted;
    }
}
