// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.scene.WrappedText;
import org.loomwright.diagram.services.LostStrap;
import org.loomwright.diagram.symbol.Badge;

/** What a lost strap comes to, in words below the drawing. */
final class EarthLoss {
    private static final double HEAD_PX = 72;
    private static final double LINE_PX = 17;
    private static final double TEXT_PX = 34;
    private static final int MOST = 9;

    private final LostStrap loss;
    private final List<String> lines = new ArrayList<>();
    private final double widthPx;

    private EarthLoss(LostStrap loss, double widthPx) {
        this.loss = loss;
        this.widthPx = widthPx;
    }

    static EarthLoss of(EarthState state, TextMeasure type, double widthPx) {
        EarthLoss made = new EarthLoss(state.loss(), widthPx);
        if (state.loss() != null) {
            List<String> told = state.loss().told();
            told.stream().limit(MOST).forEach(each -> made.lines.addAll(WrappedText.of(type, each, 12, false, widthPx - TEXT_PX)));
            if (told.size() > MOST) {
                made.lines.add("and " + (told.size() - MOST) + " more");
            }
        }
        return made;
    }

    double heightPx() {
        return loss == null ? 0 : HEAD_PX + LINE_PX * lines.size();
    }

    void paint(SceneBuilder scene, double x, double top) {
        if (loss == null) {
            return;
        }
        double y = top + 42;
        scene.group(null, "lost strap");
        scene.text(x, y, "With " + loss.shown() + " lost", 13, true, Anchor.START, Role.INK);
        scene.line(Stroke.solid(Role.HAIR, 1), new Point(x, y + 9), new Point(x + widthPx, y + 9));
        y += 30;
        scene.group(Kind.LABEL, loss.id(), "with " + loss.shown() + " lost");
        scene.marks((loss.harmful() ? Badge.ERROR : Badge.NOTE).marks(x + 12, y - 4));
        for (int i = 0; i < lines.size(); i++) {
            scene.text(x + TEXT_PX, y + i * LINE_PX, lines.get(i), 12, i == 0, Anchor.START, i == 0 ? Role.INK : Role.INK2);
        }
    }
}
