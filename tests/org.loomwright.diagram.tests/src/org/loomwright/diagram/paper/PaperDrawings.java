// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.time.LocalDate;
import org.loomwright.diagram.paint.Type;

/** What drawings on paper have in common in these tests. */
final class PaperDrawings {
    static final Type TYPE = Type.load();

    private PaperDrawings() {
    }

    static TitleData title(String vehicle) {
        return new TitleData("Survey truck " + vehicle, "Plan, seen from above", vehicle, "spread, adopted", "night",
                LocalDate.of(2026, 5, 4), vehicle + ".vehicle, SHA-256 0f1e2d3c4b5a", "Loomwright 0.1.0", "", "",
                "Isolate the batteries before working, protect every supply conductor at its source, and have the work checked. "
                        + "Local codes, the makers' instructions and licensed practice come first.");
    }
}
