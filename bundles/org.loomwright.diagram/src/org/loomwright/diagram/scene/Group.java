// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/**
 * Marks that belong together.
 *
 * @param element id of the plan's element they stand for, or null
 * @param name    what it is, for those who do not see it; may be null
 * @param marks   marks in the order of painting
 */
public record Group(String element, String name, List<Mark> marks) {
    public Group {
        marks = List.copyOf(marks);
    }
}
