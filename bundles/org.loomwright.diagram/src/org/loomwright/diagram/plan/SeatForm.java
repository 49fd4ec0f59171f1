// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;

/**
 * How devices of one seat are drawn, around the middle of their plate at 0, 0.
 *
 * @param all   ground with texts
 * @param plate the plate on which the devices lie
 * @param cells where each device is on it
 * @param texts designations and names
 * @param cost  what makes this form less wanted, px
 */
record SeatForm(Bounds all, Bounds plate, List<Cell> cells, List<Text> texts, double cost) {
    SeatForm {
        cells = List.copyOf(cells);
        texts = List.copyOf(texts);
    }

    /**
     * A device on the plate.
     *
     * @param device index in the plan's list
     * @param symbol middle of its symbol
     * @param ground the ground that is its own
     */
    record Cell(int device, Point symbol, Bounds ground) {
        Cell moved(double dx, double dy) {
            return new Cell(device, symbol.moved(dx, dy), ground.moved(dx, dy));
        }
    }

    /** A text; device is an index in the plan's list, or -1 for the place's name. */
    record Text(int device, Mark.Text mark) {
    }

    SeatForm moved(double dx, double dy) {
        return new SeatForm(all.moved(dx, dy), plate.moved(dx, dy), cells.stream().map(cell -> cell.moved(dx, dy)).toList(),
                texts.stream().map(text -> new Text(text.device(), text.mark().moved(dx, dy))).toList(), cost);
    }
}
