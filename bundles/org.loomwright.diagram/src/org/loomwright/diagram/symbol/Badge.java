// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;

/** Marks of findings: a shape for each severity, the same everywhere. */
public enum Badge {
    /** A limit is broken. */
    ERROR,
    /** A wish is missed. */
    WARNING,
    /** Something to know. */
    NOTE,
    /** A finding that was accepted. */
    ACCEPTED,
    /** The element causes an error elsewhere. */
    CAUSE_ERROR,
    /** The element causes a warning elsewhere. */
    CAUSE_WARNING;

    /** Size in diagrams, px. */
    public static final double SIZE_PX = 20;
    private static final double GAP_PX = 2;

    /** The badge around a centre in its usual size, 15 px for causes. */
    public List<Mark> marks(double x, double y) {
        return marks(x, y, this == CAUSE_ERROR || this == CAUSE_WARNING ? 15 : SIZE_PX);
    }

    /**
     * The badge around a centre.
     *
     * @param sizePx height and width, px; 12 at the least
     */
    public List<Mark> marks(double x, double y, double sizePx) {
        double r = sizePx / 2;
        Stroke outline = Stroke.solid(Role.INK, 1);
        List<Mark> marks = new ArrayList<>();
        switch (this) {
            case ERROR -> {
                shape(marks, diamond(x, y, r + GAP_PX), Role.PAPER, null);
                shape(marks, diamond(x, y, r), Role.ERROR, outline);
                double k = r * 0.32;
                sign(marks, Role.ON_ERROR, r, x - k, y - k, x + k, y + k);
                sign(marks, Role.ON_ERROR, r, x - k, y + k, x + k, y - k);
            }
            case WARNING -> {
                shape(marks, triangle(x, y, r + GAP_PX), Role.PAPER, null);
                shape(marks, triangle(x, y, r), Role.WARNING, outline);
                sign(marks, Role.ON_WARNING, r, x, y - r * 0.35, x, y + r * 0.3);
                sign(marks, Role.ON_WARNING, r, x, y + r * 0.48, x, y + r * 0.7);
            }
            case NOTE -> {
                marks.add(new Mark.Disc(new Point(x, y), r * 0.9 + GAP_PX, Fill.solid(Role.PAPER), null));
                marks.add(new Mark.Disc(new Point(x, y), r * 0.9, Fill.solid(Role.PLATE), outline));
                sign(marks, Role.INK, r, x, y - r * 0.2, x, y + r * 0.5);
                sign(marks, Role.INK, r, x, y - r * 0.55, x, y - r * 0.35);
            }
            case ACCEPTED -> {
                shape(marks, square(x, y, r * 0.85 + GAP_PX), Role.PAPER, null);
                shape(marks, square(x, y, r * 0.85), Role.PLATE, outline);
                sign(marks, Role.OK, r, x - r * 0.45, y, x - r * 0.1, y + r * 0.4, x + r * 0.5, y - r * 0.4);
            }
            case CAUSE_ERROR -> {
                shape(marks, diamond(x, y, r + GAP_PX), Role.PAPER, null);
                shape(marks, diamond(x, y, r - 1), Role.PLATE, Stroke.solid(Role.ERROR, 2));
            }
            case CAUSE_WARNING -> {
                shape(marks, triangle(x, y, r + GAP_PX), Role.PAPER, null);
                shape(marks, triangle(x, y, r - 1), Role.PLATE, Stroke.solid(Role.WARNING, 2));
            }
        }
        return marks;
    }

    private static void sign(List<Mark> marks, Role role, double r, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        marks.add(new Mark.Line(points, Stroke.solid(role, StrictMath.max(1.25, r * 0.2))));
    }

    private static void shape(List<Mark> marks, List<Point> points, Role fill, Stroke stroke) {
        marks.add(new Mark.Area(points, Fill.solid(fill), stroke));
    }

    private static List<Point> diamond(double x, double y, double r) {
        return List.of(new Point(x, y - r), new Point(x + r, y), new Point(x, y + r), new Point(x - r, y));
    }

    private static List<Point> triangle(double x, double y, double r) {
        return List.of(new Point(x, y - r * 0.95), new Point(x + r, y + r * 0.85), new Point(x - r, y + r * 0.85));
    }

    private static List<Point> square(double x, double y, double r) {
        return List.of(new Point(x - r, y - r), new Point(x + r, y - r), new Point(x + r, y + r), new Point(x - r, y + r));
    }
}
