// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import org.loomwright.diagram.scene.Point;

/** A point of the sheet that keys move on the grid. */
final class Caret {
    /** How many steps shift makes at once. */
    static final int STRIDE = 10;

    private Caret() {
    }

    /** In the middle of what is selected, else of what is seen, on the grid. */
    static Point begin(ToolContext context) {
        var room = context.hits().bounds(context.selection());
        return context.snapped(room == null ? context.viewport().seen().centre() : room.centre(), false);
    }

    /** Moved by an arrow. */
    static Point moved(Point from, KeyEvent event, ToolContext context) {
        Point by = step(event, context);
        return from.moved(by.x(), by.y());
    }

    /** The way of an arrow, px of the sheet. */
    static Point step(KeyEvent event, ToolContext context) {
        double step = (context.gridPx() > 0 ? context.gridPx() : 1) * (event.shift() ? STRIDE : 1);
        return switch (event.key()) {
            case LEFT -> new Point(-step, 0);
            case RIGHT -> new Point(step, 0);
            case UP -> new Point(0, -step);
            case DOWN -> new Point(0, step);
            default -> new Point(0, 0);
        };
    }
}
