// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import org.loomwright.model.parts.Part;

/**
 * What makes two needs one line: the same part in the same section and colour.
 *
 * @param group      position of the group in the list, and its name
 * @param part       the part
 * @param sectionMm2 section, or null
 * @param colour     colour, or empty
 */
record BomItem(Group group, Part part, BigDecimal sectionMm2, String colour) {

    /** Groups in the order of the list. */
    enum Group {
        DEVICE("device"), PROTECTOR("fuse or breaker"), CABLE("cable"), END("cable end"), DUCT("duct"), PASSAGE("passage"),
        STRAP("strap");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }
    }
}
