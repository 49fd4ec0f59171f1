// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;

/** Frame and title block of the sheet. */
final class EarthFoot {
    private static final double FRAME_PX = 20;
    private static final double HIGH_PX = 42;
    private static final double PAD_PX = 8;
    private final SceneBuilder scene;
    private final TextMeasure type;
    private final double width;
    private final double height;

    EarthFoot(SceneBuilder scene, TextMeasure type, double width, double height) {
        this.scene = scene;
        this.type = type;
        this.width = width;
        this.height = height;
    }

    /** A field of the title block. */
    record Field(String name, String value) {
    }

    void frame() {
        scene.group(null, "frame");
        scene.rectangle(null, Stroke.solid(Role.INK2, 1), FRAME_PX, FRAME_PX, width - 2 * FRAME_PX, height - 2 * FRAME_PX);
    }

    void titleBlock(List<Field> fields) {
        scene.group(null, "title block");
        double x = width - FRAME_PX;
        double y = height - FRAME_PX - HIGH_PX;
        for (int i = fields.size() - 1; i >= 0; i--) {
            Field field = fields.get(i);
            double wide = StrictMath.max(90, 2 * PAD_PX + StrictMath.max(type.widthPx(field.name(), 12, false),
                    type.widthPx(field.value(), 12, true)));
            x -= wide;
            scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK2, 1), x, y, wide, HIGH_PX);
            scene.text(x + PAD_PX, y + 17, field.name(), 12, false, Anchor.START, Role.INK2);
            scene.text(x + PAD_PX, y + 33, field.value(), 12, true, Anchor.START, Role.INK);
        }
    }
}
