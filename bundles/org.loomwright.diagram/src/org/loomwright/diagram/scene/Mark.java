// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/** One drawn thing. */
public sealed interface Mark permits Mark.Line, Mark.Area, Mark.Disc, Mark.Text {

    /** A line over two points or more. */
    record Line(List<Point> points, Stroke stroke) implements Mark {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** A closed area; fill and stroke may be null. */
    record Area(List<Point> points, Fill fill, Stroke stroke) implements Mark {
        public Area {
            points = List.copyOf(points);
        }
    }

    /** A circle; fill and stroke may be null. */
    record Disc(Point centre, double radiusPx, Fill fill, Stroke stroke) implements Mark {
    }

    /** Where a text's point lies. */
    enum Anchor { START, MIDDLE, END }

    /**
     * A line of text.
     *
     * @param at     point on the base line
     * @param sizePx size of the type, px; 12 at the least
     */
    record Text(Point at, String text, double sizePx, boolean bold, Anchor anchor, Role role) implements Mark {
        public Text {
            if (sizePx < 12) {
                throw new IllegalArgumentException("text below 12 px is not legible");
            }
        }
    }
}
