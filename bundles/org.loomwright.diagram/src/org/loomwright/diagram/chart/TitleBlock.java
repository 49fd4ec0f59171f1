// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.List;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;

/** The title block in the lower right corner of a sheet. */
final class TitleBlock {
    private static final double HEIGHT = 42;
    private static final double MARGIN = 20;
    private static final double PAD = 8;
    private final SceneBuilder scene;
    private final Type type;

    TitleBlock(SceneBuilder scene, Type type) {
        this.scene = scene;
        this.type = type;
    }

    void write(List<TimeCurrentChart.Field> fields, double sheetWidth, double sheetHeight) {
        scene.group(null, "title block");
        double x = sheetWidth - MARGIN;
        double y = sheetHeight - MARGIN - HEIGHT;
        for (int i = fields.size() - 1; i >= 0; i--) {
            TimeCurrentChart.Field field = fields.get(i);
            double width = StrictMath.max(80, 2 * PAD + StrictMath.max(type.widthPx(field.name(), 12, false),
                    type.widthPx(field.value(), 12, true)));
            x -= width;
            scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1), x, y, width, HEIGHT);
            scene.text(x + PAD, y + 17, field.name(), 12, false, Mark.Anchor.START, Role.INK2);
            scene.text(x + PAD, y + 33, field.value(), 12, true, Mark.Anchor.START, Role.INK);
        }
    }
}
