// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.TextMeasure;

/** Names of runs with the fill of their ducts, and of bodies and zones, on ground that is left. */
final class RunLabels {
    private static final double TEXT_PX = 12;
    private static final double ASIDE_PX = 5;
    private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};
    private static final int GRID = 14;
    private final PlanContent content;
    private final PlanLayout layout;
    private final TextMeasure type;
    private final SceneBuilder scene;

    RunLabels(PlanContent content, PlanLayout layout, TextMeasure type, SceneBuilder scene) {
        this.content = content;
        this.layout = layout;
        this.type = type;
        this.scene = scene;
    }

    /** Labels of ducts first, they tell something; an open run is named where there is room. */
    void runs(DuctFill fill) {
        for (int pass = 0; pass < 2; pass++) {
            for (int r = 0; r < content.runs().size(); r++) {
                DuctFill.Filled filled = fill.byRun().get(r);
                if (filled != null == (pass == 0)) {
                    String id = content.runs().get(r).id();
                    run(r, id, filled == null ? id : id + " " + filled.words(), filled != null);
                }
            }
        }
    }

    private void run(int r, String id, String words, boolean must) {
        List<Point> line = layout.runs().get(r);
        for (double share : SHARES) {
            Point at = PlanLayout.along(line, share);
            for (Mark.Text text : around(at, words)) {
                if (put(id, text, Role.INK2)) {
                    return;
                }
            }
        }
        if (must) {
            Point middle = PlanLayout.along(line, 0.5);
            put(id, new Mark.Text(middle.moved(0, 4), words, TEXT_PX, false, Anchor.MIDDLE, Role.INK2, true));
        }
    }

    private List<Mark.Text> around(Point at, String words) {
        double half = layout.ductPx() / 2 + ASIDE_PX;
        return List.of(text(at.moved(0, -half - 1), words, Anchor.MIDDLE), text(at.moved(0, half + 10), words, Anchor.MIDDLE),
                text(at.moved(half, 4), words, Anchor.START), text(at.moved(-half, 4), words, Anchor.END));
    }

    private static Mark.Text text(Point at, String words, Anchor anchor) {
        return new Mark.Text(at, words, TEXT_PX, false, anchor, Role.INK2);
    }

    /** Names of the bodies, in capitals, inside their outlines. */
    void bodies() {
        for (PlanContent.Body body : content.bodies()) {
            inside(body.id(), body.outline(), body.name().toUpperCase(Locale.ROOT), Role.INK2);
        }
    }

    /** Names of the zones whose ground is seen, inside their outlines. */
    void zones(Predicate<PlanContent.Zone> tinted) {
        for (PlanContent.Zone zone : content.zones()) {
            if (tinted.test(zone)) {
                inside(zone.id(), zone.outline(), zone.label(), Role.INK2);
            }
        }
    }

    private void inside(String id, Outline outline, String words, Role tone) {
        List<Spot> grid = new ArrayList<>();
        for (int j = 1; j < GRID; j++) {
            for (int i = 1; i < GRID; i++) {
                grid.add(new Spot(outline.rear() + i * (outline.front() - outline.rear()) / GRID,
                        outline.low() + j * (outline.high() - outline.low()) / GRID));
            }
        }
        double halfMm = type.widthPx(words, TEXT_PX, false) / 2 / layout.to().pxPerMm();
        double upMm = TEXT_PX / layout.to().pxPerMm();
        for (Spot spot : grid) {
            boolean within = outline.holds(new Spot(spot.alongMm() - halfMm, spot.upMm()))
                    && outline.holds(new Spot(spot.alongMm() + halfMm, spot.upMm() + upMm));
            if (within && put(id, text(layout.to().at(spot), words, Anchor.MIDDLE), tone)) {
                return;
            }
        }
    }

    private boolean put(String id, Mark.Text text, Role tone) {
        Bounds ground = type.bounds(text).grown(2);
        if (!layout.room().free(ground, List.of()) || layout.room().edgesCovered(ground) > 0) {
            return false;
        }
        put(id, new Mark.Text(text.at(), text.text(), text.sizePx(), text.bold(), text.anchor(), tone, text.plated()));
        return true;
    }

    private void put(String id, Mark.Text text) {
        layout.room().take(type.bounds(text).grown(2));
        scene.group(Group.Kind.LABEL, id, text.text());
        scene.mark(text);
    }
}
