// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.engine.result.Designations;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Cables and ways that belong to all arrangements of a vehicle although only some were sized. */
final class SharedElements {
    private final Vehicle vehicle;
    private final List<SizedVehicle> sized;

    SharedElements(Vehicle vehicle, List<SizedVehicle> sized) {
        this.vehicle = vehicle;
        this.sized = sized;
    }

    /** A sentence about them; empty where all arrangements were sized, or nothing is shared. */
    Optional<String> told() {
        Set<String> done = sized.stream().map(each -> each.plan().arrangement()).collect(Collectors.toSet());
        List<String> others = vehicle.getArrangements().stream().map(Arrangement::getName).filter(name -> !done.contains(name))
                .toList();
        Set<String> shared = new TreeSet<>();
        for (SizedVehicle each : sized) {
            String own = each.plan().arrangement() + "/";
            Stream.concat(each.result().cables().stream().map(cable -> cable.id()),
                    each.result().protectors().stream().map(protector -> protector.way()))
                    .filter(id -> !id.startsWith(own)).forEach(shared::add);
        }
        if (others.isEmpty() || shared.isEmpty()) {
            return Optional.empty();
        }
        Designations shown = new Designations("");
        return Optional.of("loomwright: " + shared.size() + " of them also belong to " + String.join(", ", others)
                + ", which was not sized, from " + shown.shown(shared.iterator().next())
                + " on; 'loomwright size FILE all' suits all");
    }
}
