// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** Measures text with the metrics of the one typeface. */
@FunctionalInterface
public interface TextMeasure {
    /** Width of a text, px. */
    double widthPx(String text, double sizePx, boolean bold);

    /** Height above the base line as a share of the size. */
    double ASCENT = 0.76;
    /** Depth below the base line as a share of the size. */
    double DESCENT = 0.22;

    /** The room a text takes. */
    default Bounds bounds(Mark.Text text) {
        double width = widthPx(text.text(), text.sizePx(), text.bold());
        double left = text.at().x() - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        return new Bounds(left, text.at().y() - ASCENT * text.sizePx(), left + width, text.at().y() + DESCENT * text.sizePx());
    }

    /** The room a mark takes, half the width of its stroke included. */
    default Bounds bounds(Mark mark) {
        if (mark instanceof Mark.Text text) {
            return bounds(text);
        }
        return mark.outline();
    }

    /** The room a group takes with its texts; null for one without marks. */
    default Bounds bounds(Group group) {
        Bounds all = null;
        for (Mark mark : group.marks()) {
            all = bounds(mark).with(all);
        }
        return all;
    }
}
