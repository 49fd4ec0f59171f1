// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;

/** Length and width of the vehicle with dimension lines, the front named, and the scale bar. */
final class PlanDimensions {
    private static final double ASIDE_PX = 46;
    private static final double ARROW_LONG = 7;
    private static final double ARROW_HALF = 2.4;
    private static final double FRONT_PX = 62;
    private static final double[] BARS_MM = {100, 200, 500, 1000, 2000, 5000, 10000};
    private static final double BAR_PX = 240;
    private static final Stroke FINE = Stroke.solid(Role.INK2, 0.75);
    private static final Stroke HELP = Stroke.solid(Role.INK3, 0.5);
    private final SceneBuilder scene;
    private final TextMeasure type;

    PlanDimensions(SceneBuilder scene, TextMeasure type) {
        this.scene = scene;
        this.type = type;
    }

    /** Ground that dimensions and the word FRONT take. */
    static List<Bounds> ground(PlanContent content, Projection to, PlanSheet sheet) {
        Outline v = content.vehicle();
        double left = to.x(v.rear());
        double right = to.x(v.front());
        double top = to.y(v.high());
        double bottom = to.y(v.low());
        double above = sheet.field().top() + 8;
        double middle = (top + bottom) / 2;
        return List.of(new Bounds(left - 2, above - 10, right + 2, above + 10),
                new Bounds(left - ASIDE_PX - 24, top - 2, left - ASIDE_PX + 10, bottom + 2),
                new Bounds(right + 18, middle - 28, right + 18 + FRONT_PX, middle + 10));
    }

    void paint(PlanContent content, Projection to, PlanSheet sheet) {
        Outline v = content.vehicle();
        double left = to.x(v.rear());
        double right = to.x(v.front());
        double top = to.y(v.high());
        double bottom = to.y(v.low());
        double above = sheet.field().top() + 8;
        scene.group(null, "dimensions");
        scene.line(FINE, new Point(left, above), new Point(right, above));
        scene.line(HELP, new Point(left, above - 6), new Point(left, above + 10));
        scene.line(HELP, new Point(right, above - 6), new Point(right, above + 10));
        arrow(left, above, 1, 0);
        arrow(right, above, -1, 0);
        scene.platedText((left + right) / 2, above + 4, mm(v.front() - v.rear()), 12, false, Anchor.MIDDLE, Role.INK);
        double x = left - ASIDE_PX;
        scene.line(FINE, new Point(x, top), new Point(x, bottom));
        scene.line(HELP, new Point(x - 6, top), new Point(x + 10, top));
        scene.line(HELP, new Point(x - 6, bottom), new Point(x + 10, bottom));
        arrow(x, top, 0, 1);
        arrow(x, bottom, 0, -1);
        double width = type.widthPx(mm(v.high() - v.low()), 12, false);
        scene.platedText(StrictMath.max(sheet.left() + width / 2, x), (top + bottom) / 2 + 4, mm(v.high() - v.low()), 12, false,
                Anchor.MIDDLE, Role.INK);
        front(right, (top + bottom) / 2);
    }

    private void front(double right, double middle) {
        double x = right + 18;
        scene.group(null, "front of the vehicle");
        scene.text(x, middle - 12, "FRONT", 13, true, Anchor.START, Role.INK);
        scene.line(Stroke.solid(Role.INK, 1.5), new Point(x, middle), new Point(x + 42, middle));
        scene.area(Fill.solid(Role.INK), null,
                List.of(new Point(x + 52, middle), new Point(x + 41, middle - 4), new Point(x + 41, middle + 4)));
    }

    /** The scale bar, its left end at x, its figures' base line at y. */
    void scaleBar(double x, double y, double pxPerMm) {
        double lengthMm = BARS_MM[0];
        for (double bar : BARS_MM) {
            lengthMm = bar * pxPerMm <= BAR_PX ? bar : lengthMm;
        }
        double half = lengthMm * pxPerMm / 2;
        scene.group(null, "scale bar");
        scene.rectangle(Fill.solid(Role.INK), Stroke.solid(Role.INK, 1), x, y - 22, half, 6);
        scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1), x + half, y - 22, half, 6);
        scene.text(x, y, "0", 12, false, Anchor.MIDDLE, Role.INK2);
        scene.text(x + 2 * half, y, lengthMm >= 1000 ? mm(lengthMm / 1000) + " m" : mm(lengthMm) + " mm", 12, false,
                Anchor.MIDDLE, Role.INK2);
    }

    private void arrow(double x, double y, int dx, int dy) {
        scene.area(Fill.solid(Role.INK2), null, List.of(new Point(x, y),
                new Point(x + dx * ARROW_LONG - dy * ARROW_HALF, y + dy * ARROW_LONG - dx * ARROW_HALF),
                new Point(x + dx * ARROW_LONG + dy * ARROW_HALF, y + dy * ARROW_LONG + dx * ARROW_HALF)));
    }

    private static String mm(double value) {
        return Long.toString(StrictMath.round(value));
    }
}
