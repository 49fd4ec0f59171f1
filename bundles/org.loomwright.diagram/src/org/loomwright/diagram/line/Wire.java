// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.math.BigDecimal;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;

/**
 * A core of a cable between two attachments.
 *
 * @param key     unique name of the core
 * @param cableId id of the cable
 * @param cable   the cable
 * @param core    the core
 * @param a       attachment at one end: {@code unit.terminal}, or the id of an earth point
 * @param b       attachment at the other end
 */
record Wire(String key, String cableId, Cable cable, Core core, String a, String b) {
    /** Section, mm2; null when not chosen yet. */
    BigDecimal sectionMm2() {
        return core.getSectionMm2() != null ? core.getSectionMm2() : cable.getSectionMm2();
    }

    String designation() {
        return "-" + cable.getName();
    }

    String other(String end) {
        return a.equals(end) ? b : a;
    }
}
