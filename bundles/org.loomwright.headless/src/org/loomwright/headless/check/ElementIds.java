// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;

/** Finds the element a person means: by its id, by its name without the arrangement, or as shown with minus and colon. */
public final class ElementIds {
    private static final int HINTS = 5;
    private static final int NEAR = 2;
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

    /** The elements of a plan. */
    public static ElementIds of(Plan plan) {
        return new ElementIds(plan);
    }

    /** The id meant, or null. */
    public String find(String written) {
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

    /** Elements that are called nearly so, for a message; empty when there are none. */
    static String hint(List<CheckedVehicle> checked, String written) {
        String meant = written.startsWith("-") ? written.substring(1) : written;
        Map<String, Integer> near = new LinkedHashMap<>();
        for (CheckedVehicle each : checked) {
            for (String id : of(each.plan()).ids) {
                String shown = each.designations().shown(id);
                String name = shown.startsWith("-") ? shown.substring(1) : shown;
                int distance = distance(meant, name);
                if (distance <= NEAR && distance < meant.length()) {
                    near.putIfAbsent(shown, distance);
                }
            }
        }
        List<String> nearest = near.entrySet().stream().sorted(Map.Entry.comparingByValue()).limit(HINTS).map(Map.Entry::getKey)
                .toList();
        return nearest.isEmpty() ? "" : "; similar: " + String.join(", ", nearest);
    }

    /** Letters inserted, removed or exchanged to make one name of the other; large and small letters are the same. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        Arrays.setAll(row, j -> j);
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                boolean same = Character.toLowerCase(a.charAt(i - 1)) == Character.toLowerCase(b.charAt(j - 1));
                int kept = diagonal + (same ? 0 : 1);
                diagonal = row[j];
                row[j] = StrictMath.min(kept, StrictMath.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
