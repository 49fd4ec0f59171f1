// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * One ending of an element as it is offered to the pointer, below the element.
 *
 * @param ending what it stands for
 * @param room   where it is, px of the window
 */
record Chip(Advice.Ending ending, Bounds room) {
    private static final double HIGH_PX = 20;
    private static final double LEAST_PX = 24;
    private static final double GAP_PX = 3;
    private static final int IN_A_ROW = 8;

    /** The chips of an element in rows; none where there is no choice. */
    static List<Chip> of(String element, ToolContext context) {
        List<Chip> chips = new ArrayList<>();
        Bounds shape = element == null ? null : context.hits().shape(element);
        if (shape == null) {
            return chips;
        }
        List<Advice.Ending> endings = context.advice().endings(element);
        if (endings.size() < 2) {
            return chips;
        }
        double cell = LEAST_PX;
        for (Advice.Ending ending : endings) {
            cell = StrictMath.max(cell, context.hits().measure().widthPx(ending.label(), 12, true) + 8);
        }
        Bounds room = context.viewport().toScreen(shape);
        int columns = StrictMath.min(IN_A_ROW, endings.size());
        int rows = (endings.size() + columns - 1) / columns;
        double width = columns * (cell + GAP_PX) - GAP_PX;
        double left = StrictMath.max(2, StrictMath.min(room.centre().x() - width / 2, context.viewport().widthPx() - width - 2));
        double height = rows * (HIGH_PX + GAP_PX);
        boolean above = room.bottom() + height + GAP_PX > context.viewport().heightPx();
        double top = above ? StrictMath.max(2, room.top() - height) : room.bottom() + GAP_PX;
        for (int i = 0; i < endings.size(); i++) {
            double x = left + i % columns * (cell + GAP_PX);
            double y = top + i / columns * (HIGH_PX + GAP_PX);
            chips.add(new Chip(endings.get(i), new Bounds(x, y, x + cell, y + HIGH_PX)));
        }
        return chips;
    }

    /** The ending under a point of the window; null for none. */
    static String under(List<Chip> chips, Point screen) {
        return chips.stream().filter(chip -> chip.room().grown(GAP_PX / 2).holds(screen)).map(chip -> chip.ending().id())
                .findFirst().orElse(null);
    }
}
