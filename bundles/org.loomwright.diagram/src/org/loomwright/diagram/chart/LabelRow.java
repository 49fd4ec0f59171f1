// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;

/** Labels above marks on one line, moved apart into further lines above where they would meet. */
final class LabelRow {
    private static final double GAP = 10;

    private record Label(String text, double x, double halfPx) {
    }

    private final List<Label> labels = new ArrayList<>();
    private final Type type;
    private final double left;
    private final double right;

    LabelRow(Type type, double left, double right) {
        this.type = type;
        this.left = left;
        this.right = right;
    }

    void add(String text, double x) {
        double half = type.widthPx(text, 12, false) / 2;
        double inside = StrictMath.max(left + half, StrictMath.min(right - half, x));
        labels.add(new Label(text, inside, half));
    }

    void write(SceneBuilder scene, double baseline, double pitchPx) {
        List<Double> freeFrom = new ArrayList<>();
        for (Label label : labels.stream().sorted(Comparator.comparingDouble(Label::x)).toList()) {
            int row = 0;
            while (row < freeFrom.size() && label.x() - label.halfPx() < freeFrom.get(row)) {
                row++;
            }
            if (row == freeFrom.size()) {
                freeFrom.add(0.0);
            }
            freeFrom.set(row, label.x() + label.halfPx() + GAP);
            scene.text(label.x(), baseline - row * pitchPx, label.text(), 12, false, Mark.Anchor.MIDDLE, Role.INK);
        }
    }
}
