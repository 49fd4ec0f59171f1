// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;

/** Finds the element a person means: by its id, by its name without the arrangement, or as shown with minus and colon. */
final class ElementIds {
    private static final int HINTS = 5;
    private final Set<String> ids = new LinkedHashSet<>();
    private final String arrangement;

    private ElementIds(Plan plan) {
        arrangement = plan.arrangement();
        plan.devices().forEach(device -> ids.add(device.id()));
        plan.cables().forEach(cable -> ids.add(cable.id()));
        plan.conductors().forEach(conductor -> ids.add(conductor.id()));
        plan.elements().forEach(element -> ids.add(element.id()));
        plan.bonds().forEach(bond -> ids.add(bond.id()));
        plan.bodies().forEach(body -> ids.add(body.id()));
        plan.terminals().forEach(terminal -> ids.add(terminal.id()));
    }

    static ElementIds of(Plan plan) {
        return new ElementIds(plan);
    }

    /** The id meant, or null. */
    String find(String written) {
        if (ids.contains(written)) {
            return written;
        }
        String local = arrangement + "/" + written;
        if (ids.contains(local)) {
            return local;
        }
        Designations designations = new Designations(arrangement);
        return ids.stream().filter(id -> designations.shown(id).equals(written) || designations.shown(id).equals("-" + written))
                .findFirst().orElse(null);
    }

    /** Ids that begin like what was written, for a message; empty when there are none. */
    static String hint(List<CheckedVehicle> checked, String written) {
        String begin = written.substring(0, StrictMath.min(2, written.length()));
        String near = checked.stream().flatMap(each -> of(each.plan()).ids.stream())
                .filter(id -> id.substring(id.lastIndexOf('/') + 1).startsWith(begin)).distinct().limit(HINTS)
                .collect(Collectors.joining(", "));
        return near.isEmpty() ? "" : "; there are for example " + near;
    }
}
