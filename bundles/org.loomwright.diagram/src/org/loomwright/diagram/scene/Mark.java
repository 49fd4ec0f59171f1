// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/** One drawn thing. */
public sealed interface Mark permits Mark.Line, Mark.Area, Mark.Disc, Mark.Text {
    /** Smallest type that is legible, px. */
    double LEAST_TEXT_PX = 12;

    /** The room it takes, half the width of its stroke included; of a text only its point. */
    Bounds outline();

    /** The same mark elsewhere. */
    Mark moved(double dx, double dy);

    /** A line over two points or more. */
    record Line(List<Point> points, Stroke stroke) implements Mark {
        public Line {
            points = List.copyOf(points);
        }

        @Override
        public Bounds outline() {
            return Bounds.of(points).grown(stroke.widthPx() / 2);
        }

        @Override
        public Line moved(double dx, double dy) {
            return new Line(Mark.moved(points, dx, dy), stroke);
        }
    }

    /** A closed area; fill and stroke may be null. */
    record Area(List<Point> points, Fill fill, Stroke stroke) implements Mark {
        public Area {
            points = List.copyOf(points);
        }

        @Override
        public Bounds outline() {
            return Bounds.of(points).grown(stroke == null ? 0 : stroke.widthPx() / 2);
        }

        @Override
        public Area moved(double dx, double dy) {
            return new Area(Mark.moved(points, dx, dy), fill, stroke);
        }
    }

    /** A circle; fill and stroke may be null. */
    record Disc(Point centre, double radiusPx, Fill fill, Stroke stroke) implements Mark {
        @Override
        public Bounds outline() {
            return Bounds.around(centre, radiusPx + (stroke == null ? 0 : stroke.widthPx() / 2));
        }

        @Override
        public Disc moved(double dx, double dy) {
            return new Disc(centre.moved(dx, dy), radiusPx, fill, stroke);
        }
    }

    /** Where a text's point lies. */
    enum Anchor { START, MIDDLE, END }

    /**
     * A line of text.
     *
     * @param at     point on the base line
     * @param sizePx size of the type, px; 12 at the least
     * @param tone   colour
     * @param plated lies on a plate of paper, so that what lies below does not run through it
     */
    record Text(Point at, String text, double sizePx, boolean bold, Anchor anchor, Tone tone, boolean plated) implements Mark {
        public Text {
            if (sizePx < LEAST_TEXT_PX) {
                throw new IllegalArgumentException("text below 12 px is not legible");
            }
        }

        /** A text without a plate. */
        public Text(Point at, String text, double sizePx, boolean bold, Anchor anchor, Tone tone) {
            this(at, text, sizePx, bold, anchor, tone, false);
        }

        @Override
        public Bounds outline() {
            return Bounds.around(at, 0);
        }

        @Override
        public Text moved(double dx, double dy) {
            return new Text(at.moved(dx, dy), text, sizePx, bold, anchor, tone, plated);
        }
    }

    private static List<Point> moved(List<Point> points, double dx, double dy) {
        return points.stream().map(point -> point.moved(dx, dy)).toList();
    }
}
