// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.LoadLaw;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Vehicle;

/** Parts of a vehicle's libraries by what lists call them. */
final class LoadParts {
    private final Map<String, DevicePart> byWord = new HashMap<>();
    private final List<DevicePart> standIns = new ArrayList<>();

    LoadParts(Vehicle vehicle) {
        Set<PartsLibrary> libraries = new LinkedHashSet<>();
        vehicle.getLibraries().forEach(library -> collect(library, libraries));
        for (PartsLibrary library : libraries) {
            for (DevicePart part : library.getDevices()) {
                if (!part.getDemands().isEmpty()) {
                    add(part.getOrderCode(), part);
                    add(part.getName(), part);
                    add(part.getLabel(), part);
                }
                if (isStandIn(part)) {
                    standIns.add(part);
                }
            }
        }
    }

    private static void collect(PartsLibrary library, Set<PartsLibrary> all) {
        if (!library.eIsProxy() && all.add(library)) {
            library.getUses().forEach(used -> collect(used, all));
        }
    }

    private void add(String word, DevicePart part) {
        if (word != null && !word.isBlank()) {
            byWord.putIfAbsent(HeaderCell.plain(word), part);
        }
    }

    /** The part that a list calls so; null when there is none. */
    DevicePart called(String word) {
        return word.isBlank() ? null : byWord.get(HeaderCell.plain(word));
    }

    /** The part that stands in for any load of a voltage; null when the libraries have none. */
    DevicePart standIn(BigDecimal volts) {
        return standIns.stream().filter(part -> part.getDemands().get(0).getRefV().compareTo(volts) == 0).findFirst().orElse(null);
    }

    /** A load that nobody sells: it has no order code, and one demand of constant power. */
    private static boolean isStandIn(DevicePart part) {
        if (part.getKind() != DeviceKind.LOAD || part.getOrderCode() != null || part.getDemands().size() != 1) {
            return false;
        }
        Demand only = part.getDemands().get(0);
        return only.getLaw() == LoadLaw.POWER && only.getRefV() != null;
    }
}
