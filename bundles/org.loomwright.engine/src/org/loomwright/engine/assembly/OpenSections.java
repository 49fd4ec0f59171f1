// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Vehicle;

/** Cables whose section nobody has chosen yet; a plan counts with the smallest of their part meanwhile. */
public final class OpenSections {
    private OpenSections() {
    }

    /** Ids of the cables, those of the vehicle first; the arrangement may be null. */
    public static Set<String> of(Vehicle vehicle, Arrangement arrangement) {
        Set<String> open = new LinkedHashSet<>();
        add(vehicle.getCables(), open);
        if (arrangement != null) {
            add(arrangement.getCables(), open);
        }
        return open;
    }

    /** True when neither the cable nor all of its cores state a section. */
    static boolean isOpen(Cable cable) {
        return cable.getSectionMm2() == null && (cable.getCores().isEmpty()
                || cable.getCores().stream().anyMatch(core -> core.getSectionMm2() == null));
    }

    private static void add(List<Cable> cables, Set<String> open) {
        cables.stream().filter(OpenSections::isOpen).forEach(cable -> open.add(ModelIds.of(cable)));
    }
}
