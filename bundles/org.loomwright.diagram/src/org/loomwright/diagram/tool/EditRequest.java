// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.LinkedHashSet;
import java.util.Collections;
import java.util.Set;

/** A change of the model that a tool asks for; whoever owns the model makes it, as one step that can be undone. */
public sealed interface EditRequest {
    /**
     * Moves elements.
     *
     * @param elements ids
     * @param dxPx     to the right, px of the sheet
     * @param dyPx     downwards, px of the sheet
     */
    record Move(Set<String> elements, double dxPx, double dyPx) implements EditRequest {
        public Move {
            elements = Collections.unmodifiableSet(new LinkedHashSet<>(elements));
        }
    }
}
