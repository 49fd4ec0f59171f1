// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import org.loomwright.model.parts.ConsumablePart;
import org.loomwright.model.parts.Part;

/**
 * What makes two needs one line: the same part in the same section and colour.
 *
 * @param group      position of the group in the list, and its name
 * @param part       the part
 * @param sectionMm2 section, or null
 * @param colour     colours in the order of the alphabet, divided by a blank, or empty
 */
record BomItem(Group group, Part part, BigDecimal sectionMm2, String colour) {
    /** Unit of things that are counted. */
    static final String PIECES = "pcs";
    /** Unit of things that are cut to length. */
    static final String METRES = "m";

    /** Groups in the order of the list. */
    enum Group {
        DEVICE("device"), PROTECTOR("fuse or breaker"), CABLE("cable"), END("cable end"), DUCT("duct"), PASSAGE("passage"),
        STRAP("strap"), CONSUMABLE("consumable");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }
    }

    /** Unit of the quantities: {@code pcs}, {@code m}, or the word of a consumable's part. */
    String unit() {
        if (part instanceof ConsumablePart consumable) {
            String unit = consumable.getUnit();
            return unit == null || unit.isBlank() || "piece".equals(unit) ? PIECES : unit.strip();
        }
        return group == Group.CABLE || group == Group.DUCT ? METRES : PIECES;
    }
}
