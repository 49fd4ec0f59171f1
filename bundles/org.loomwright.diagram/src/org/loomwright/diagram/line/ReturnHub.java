// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of metal that gathers returns: a bar, a post, a battery's minus, one end of a measuring resistor.
 *
 * @param id        first terminal's key
 * @param unit      device
 * @param terminals terminals of the piece
 */
record ReturnHub(String id, Unit unit, List<String> terminals) {
    ReturnHub(String id, Unit unit) {
        this(id, unit, new ArrayList<>(List.of(LineContent.terminalName(id))));
    }

    /** Designation with the bar's terminal, or the device alone when all its terminals are one. */
    String shown() {
        return terminals.size() == 1 ? BackText.shown(id) : unit.designation();
    }
}
