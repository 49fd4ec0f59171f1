// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;

/** Badges of findings: on the plate of a device, beside a duct with the designation of a cable or the name of a run. */
final class BadgePainter {
    /** Size on plates, where there is little room, px. */
    private static final double SMALL_PX = 16;
    private static final double TEXT_PX = 12;
    private static final double ROW_PX = 22;
    private static final double[] SHARES = {0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.05, 0.95};
    private static final double[] ASIDE_PX = {0, 24, 48, 80, 120};
    private final PlanLayout layout;
    private final PlanFindings findings;
    private final SceneBuilder scene;
    private final TextMeasure type;

    BadgePainter(PlanLayout layout, PlanFindings findings, SceneBuilder scene, TextMeasure type) {
        this.layout = layout;
        this.findings = findings;
        this.scene = scene;
        this.type = type;
    }

    /** On the plate of a device, or in its cell. */
    void device(String id, SeatForm.Cell cell, boolean several) {
        PlanFindings.Marked marked = findings.badges().get(id);
        if (marked == null) {
            return;
        }
        double x = cell.ground().right() - SMALL_PX / 2 - 3;
        double y = several ? cell.ground().top() + SMALL_PX / 2 + 4 : cell.ground().bottom() - SMALL_PX / 2 - 4;
        badge(id, marked, x, y, SMALL_PX);
    }

    /** Beside the line of a cable or run, with its name. */
    void along(String id, String name, List<Point> line) {
        PlanFindings.Marked marked = findings.badges().get(id);
        if (marked == null || line.isEmpty()) {
            return;
        }
        String words = name + (marked.count() > 1 ? " \u00D7" + marked.count() : "");
        double width = SMALL_PX + 6 + type.widthPx(words, TEXT_PX, true);
        double half = layout.ductPx() / 2 + 3;
        for (double aside : ASIDE_PX) {
            for (double share : SHARES) {
                Point at = PlanLayout.along(line, share);
                for (Point left : List.of(at.moved(half + aside, 0), at.moved(-half - width - aside, 0),
                        at.moved(-width / 2, -half - ROW_PX / 2 - aside), at.moved(-width / 2, half + ROW_PX / 2 + aside))) {
                    Bounds ground = new Bounds(left.x(), left.y() - ROW_PX / 2, left.x() + width, left.y() + ROW_PX / 2);
                    if (layout.room().free(ground.grown(1), List.of()) && (aside == 0 || clear(at, ground))) {
                        beside(id, words, marked, at, ground, aside > 0);
                        return;
                    }
                }
            }
        }
    }

    private boolean clear(Point at, Bounds ground) {
        return layout.room().clear(at, nearest(at, ground));
    }

    private void beside(String id, String words, PlanFindings.Marked marked, Point at, Bounds ground, boolean leader) {
        layout.room().take(ground.grown(1));
        if (leader) {
            Point end = nearest(at, ground);
            scene.group(Group.Kind.OVERLAY, id, "leader");
            scene.line(Stroke.solid(Role.INK2, 0.75), at, end);
            layout.room().takeLeader(at, end);
        }
        badge(id, new PlanFindings.Marked(marked.badge(), 1), ground.left() + SMALL_PX / 2, ground.centre().y(), SMALL_PX);
        scene.group(Group.Kind.LABEL, id, words);
        scene.mark(new Mark.Text(new Point(ground.left() + SMALL_PX + 6, ground.centre().y() + 4), words, TEXT_PX, true,
                Anchor.START, Role.INK, layout.room().edgesCovered(ground) > 0));
    }

    private static Point nearest(Point at, Bounds ground) {
        return new Point(StrictMath.min(ground.right(), StrictMath.max(ground.left(), at.x())),
                StrictMath.min(ground.bottom(), StrictMath.max(ground.top(), at.y())));
    }

    private void badge(String id, PlanFindings.Marked marked, double x, double y, double sizePx) {
        scene.group(Group.Kind.BADGE, id, words(marked));
        scene.marks(marked.badge().marks(x, y, sizePx));
    }

    private static String words(PlanFindings.Marked marked) {
        String what = switch (marked.badge()) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
            case ACCEPTED -> "accepted finding";
            case CAUSE_ERROR -> "causes an error elsewhere";
            case CAUSE_WARNING -> "causes a warning elsewhere";
        };
        return marked.count() > 1 ? what + ", " + marked.count() + " findings" : what;
    }
}
