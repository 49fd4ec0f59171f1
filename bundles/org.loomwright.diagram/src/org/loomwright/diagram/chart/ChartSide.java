// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;

/** The column beside a chart: what the lines are, then what holds. */
final class ChartSide {
    private static final double ROW = 26;
    private static final double KEY = 44;
    private final SceneBuilder scene;
    private final Type type;
    private final double left;
    private final double right;
    private double y;

    ChartSide(SceneBuilder scene, Type type, double left, double right) {
        this.scene = scene;
        this.type = type;
        this.left = left;
        this.right = right;
    }

    void write(TimeCurrentChart chart, double top) {
        y = top;
        head("Curves");
        for (int i = 0; i < chart.bands().size(); i++) {
            scene.rectangle(TimeCurrentScene.bandFill(i), TimeCurrentScene.bandStroke(i), left, y - 12, KEY, 15);
            named(chart.bands().get(i).name());
        }
        for (TimeCurrentChart.Limit limit : chart.limits()) {
            key(TimeCurrentScene.limitStroke());
            named(limit.name());
        }
        if (!chart.faults().isEmpty()) {
            key(TimeCurrentScene.faultStroke());
            named("fault currents");
        }
        for (TimeCurrentChart.Spot spot : chart.inrushes()) {
            scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.5), left + KEY / 2, y - 5, 9);
            scene.disc(Fill.solid(Role.INK), null, left + KEY / 2, y - 5, 4);
            named(spot.name());
        }
        if (!chart.verdicts().isEmpty()) {
            y += 20;
            head("Verdicts");
            chart.verdicts().forEach(this::verdict);
        }
    }

    private void head(String text) {
        scene.group(null, text);
        scene.text(left, y, text, 13, true, Mark.Anchor.START, Role.INK);
        scene.line(Stroke.solid(Role.HAIR, 1), new Point(left, y + 12), new Point(right, y + 12));
        y += 38;
    }

    private void key(Stroke stroke) {
        scene.line(stroke, new Point(left, y - 5), new Point(left + KEY, y - 5));
    }

    private void named(String name) {
        for (String line : wrapped(name, right - left - KEY - 12)) {
            scene.text(left + KEY + 12, y, line, 12, false, Mark.Anchor.START, Role.INK);
            y += 16;
        }
        y += ROW - 16;
    }

    private void verdict(TimeCurrentChart.Verdict verdict) {
        if (verdict.holds()) {
            scene.line(Stroke.solid(Role.OK, 2.5), new Point(left + 3, y - 5), new Point(left + 8, y),
                    new Point(left + 17, y - 10));
        } else {
            scene.area(Fill.solid(Role.ERROR), Stroke.solid(Role.INK, 1), List.of(new Point(left + 10, y - 15),
                    new Point(left + 20, y - 5), new Point(left + 10, y + 5), new Point(left, y - 5)));
            scene.line(Stroke.solid(Role.PLATE, 2), new Point(left + 6.5, y - 8.5), new Point(left + 13.5, y - 1.5));
            scene.line(Stroke.solid(Role.PLATE, 2), new Point(left + 13.5, y - 8.5), new Point(left + 6.5, y - 1.5));
        }
        scene.text(left + 34, y, verdict.name(), 12, true, Mark.Anchor.START, Role.INK);
        for (String line : wrapped(verdict.figures(), right - left - 34)) {
            y += 16;
            scene.text(left + 34, y, line, 12, false, Mark.Anchor.START, Role.INK2);
        }
        y += 22;
    }

    private List<String> wrapped(String text, double widthPx) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (line.length() > 0 && type.widthPx(longer, 12, false) > widthPx) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
