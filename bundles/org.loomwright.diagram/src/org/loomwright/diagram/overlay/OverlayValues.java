// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.overlay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What an overlay shows.
 *
 * @param scale  its scale
 * @param values values by id of the element, in the unit of the scale's kind
 */
public record OverlayValues(OverlayScale scale, Map<String, Double> values) {
    public OverlayValues {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
}
