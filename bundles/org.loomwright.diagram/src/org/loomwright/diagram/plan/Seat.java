// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Point;

/**
 * Devices at one spot, drawn.
 *
 * @param anchor the spot
 * @param form   how they are drawn, where they are drawn
 * @param leader line from the spot to the plate; empty when the plate lies on the spot
 */
record Seat(Point anchor, SeatForm form, List<Point> leader) {
    Seat {
        leader = List.copyOf(leader);
    }
}
