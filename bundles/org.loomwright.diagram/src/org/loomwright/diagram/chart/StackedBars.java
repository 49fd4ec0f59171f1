// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.List;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;

/** A panel of bars, one for each arrangement, divided into up to five kinds; told apart by grey, order and figures. */
final class StackedBars {
    /** Room that a bar takes with the gap below it, px. */
    static final double PITCH = 30;
    private static final double BAR = 22;
    private static final double TOTAL_ROOM = 60;
    private static final List<Role> GREYS = List.of(Role.PLATE, Role.HAIR, Role.FILL, Role.INK3, Role.INK2);
    private final SceneBuilder scene;
    private final Type type;
    private final double left;
    private final double right;

    /** A bar: its name and the figures of its kinds. */
    record Bar(String name, List<Double> figures) {
        double total() {
            return figures.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    StackedBars(SceneBuilder scene, Type type, double left, double right) {
        this.scene = scene;
        this.type = type;
        this.left = left;
        this.right = right;
    }

    /** Height of a panel with so many bars, px. */
    static double height(int bars) {
        return 27 + bars * PITCH + 40;
    }

    void write(String title, String unit, List<String> kinds, List<Bar> bars, double top) {
        scene.group(null, title);
        PanelHead.write(scene, title, unit, left, right, top);
        double names = bars.stream().mapToDouble(bar -> type.widthPx(bar.name(), 12, true)).max().orElse(0);
        double from = left + names + 10;
        double most = bars.stream().mapToDouble(Bar::total).max().orElse(0);
        double scale = most > 0 ? (right - TOTAL_ROOM - from) / most : 0;
        for (int i = 0; i < bars.size(); i++) {
            bar(bars.get(i), from, scale, top + 27 + i * PITCH);
        }
        legend(kinds, from, top + 27 + bars.size() * PITCH + 4);
    }

    private void bar(Bar bar, double from, double scale, double y) {
        scene.text(from - 10, y + 15.5, bar.name(), 12, true, Mark.Anchor.END, Role.INK);
        double x = from;
        for (int k = 0; k < bar.figures().size(); k++) {
            double width = bar.figures().get(k) * scale;
            if (width > 0) {
                scene.rectangle(Fill.solid(GREYS.get(k)), Stroke.solid(Role.INK, 1), x, y, width, BAR);
                String text = ChartNumber.of(bar.figures().get(k));
                if (type.widthPx(text, 12, false) + 8 < width) {
                    scene.text(x + width / 2, y + 15.5, text, 12, false, Mark.Anchor.MIDDLE, k < 3 ? Role.INK : Role.PAPER);
                }
            }
            x += width;
        }
        scene.text(x + 8, y + 15.5, ChartNumber.of(bar.total()), 12, true, Mark.Anchor.START, Role.INK);
    }

    private void legend(List<String> kinds, double from, double y) {
        double x = from;
        for (int k = 0; k < kinds.size(); k++) {
            scene.rectangle(Fill.solid(GREYS.get(k)), Stroke.solid(Role.INK, 1), x, y, 14, 10);
            scene.text(x + 20, y + 10, kinds.get(k), 12, false, Mark.Anchor.START, Role.INK2);
            x += 20 + type.widthPx(kinds.get(k), 12, false) + 14;
        }
    }

    /** Title, unit and rule above a panel. */
    static final class PanelHead {
        private PanelHead() {
        }

        static void write(SceneBuilder scene, String title, String unit, double left, double right, double top) {
            scene.text(left, top + 8, title, 14, true, Mark.Anchor.START, Role.INK);
            scene.text(right, top + 8, unit, 12, false, Mark.Anchor.END, Role.INK2);
            scene.line(Stroke.solid(Role.HAIR, 1), new Point(left, top + 16), new Point(right, top + 16));
        }
    }
}
