// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.List;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Place;

/**
 * What becomes of an entry.
 *
 * @param entry    the entry
 * @param part     part of the load; null when it is not made
 * @param watts    power set on the device, W; null where its part states it
 * @param place    place it goes to; null for a new place or none
 * @param newPlace name of the place that is made; null where none is
 * @param told     what the person should know about it, in words
 */
public record PlannedLoad(LoadEntry entry, DevicePart part, BigDecimal watts, Place place, String newPlace, List<String> told) {
    /** Copies the list. */
    public PlannedLoad {
        told = List.copyOf(told);
    }

    /** True when a load is made of it. */
    public boolean isMade() {
        return part != null;
    }
}
