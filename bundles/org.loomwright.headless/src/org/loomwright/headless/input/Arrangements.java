// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.headless.BadInputException;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Which arrangements of a vehicle a command looks at. */
public final class Arrangements {
    /** The word for every arrangement. */
    public static final String ALL = "all";

    private Arrangements() {
    }

    /**
     * The arrangements wanted; a null in the list stands for a vehicle without any.
     *
     * @param wanted names, or {@link #ALL}; empty for the adopted one, and every one where none is adopted
     * @throws BadInputException when the vehicle has no arrangement of a name wanted
     */
    public static List<Arrangement> of(Vehicle vehicle, List<String> wanted) {
        List<Arrangement> all = vehicle.getArrangements();
        if (all.isEmpty()) {
            return Collections.singletonList(null);
        }
        if (wanted.isEmpty()) {
            return vehicle.getAdopted() != null ? List.of(vehicle.getAdopted()) : List.copyOf(all);
        }
        if (wanted.contains(ALL)) {
            return List.copyOf(all);
        }
        List<Arrangement> chosen = new ArrayList<>();
        for (String name : wanted) {
            chosen.add(all.stream().filter(each -> each.getName().equals(name)).findFirst()
                    .orElseThrow(() -> new BadInputException("vehicle " + vehicle.getName() + " has no arrangement " + name
                            + "; it has " + all.stream().map(Arrangement::getName).collect(Collectors.joining(", ")))));
        }
        return chosen;
    }
}
