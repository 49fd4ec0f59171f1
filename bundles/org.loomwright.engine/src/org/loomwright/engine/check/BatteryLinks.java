// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loomwright.engine.assembly.Plan;

/**
 * Links between batteries: contacts and diodes of split-charge devices, and contacts of any relay or switch that lies between
 * the plus of one battery and that of another. Battery isolators are none.
 */
final class BatteryLinks {
    private final Plan plan;
    private final Wiring wiring;
    private final Map<Integer, List<Integer>> byDevice = new TreeMap<>();

    private BatteryLinks(Plan plan) {
        this.plan = plan;
        wiring = Wiring.of(plan);
        for (int e = 0; e < plan.elements().size(); e++) {
            Plan.Element element = plan.elements().get(e);
            boolean conducts = element instanceof Plan.Contact || element instanceof Plan.Diode;
            if (conducts && (isSplitCharge(element) || joinsBatteries(e))) {
                byDevice.computeIfAbsent(element.device(), device -> new ArrayList<>()).add(e);
            }
        }
    }

    /** The links of a plan. */
    static BatteryLinks of(Plan plan) {
        return new BatteryLinks(plan);
    }

    /** Contacts and diodes of each linking device, indexes in elements. */
    Map<Integer, List<Integer>> byDevice() {
        return byDevice;
    }

    /** True when an element is part of a link. */
    boolean contains(int element) {
        return byDevice.getOrDefault(plan.elements().get(element).device(), List.of()).contains(element);
    }

    /** Batteries at one terminal of a link, those in series below them included. */
    Set<Integer> cells(int terminal) {
        Set<Integer> found = new TreeSet<>();
        Set<Integer> starts = new TreeSet<>(Set.of(terminal));
        boolean more = true;
        while (more) {
            more = false;
            for (int start : List.copyOf(starts)) {
                Set<Integer> side = wiring.reach(start, step -> step.via() != Wiring.Via.STRUCTURE
                        && !(step.via() == Wiring.Via.ELEMENT && contains(step.index())));
                for (int e = 0; e < plan.elements().size(); e++) {
                    if (plan.elements().get(e) instanceof Plan.Cell cell && side.contains(cell.a()) && found.add(e)) {
                        more |= starts.add(cell.b());
                    }
                }
            }
        }
        return found;
    }

    private boolean isSplitCharge(Plan.Element element) {
        return "splitCharge".equals(plan.devices().get(element.device()).kind());
    }

    private boolean joinsBatteries(int e) {
        if (!(plan.elements().get(e) instanceof Plan.Contact contact)
                || "isolator".equals(plan.devices().get(contact.device()).kind())) {
            return false;
        }
        Set<Integer> sideA = reach(contact.a(), e);
        return !sideA.contains(contact.b()) && hasBattery(sideA) && hasBattery(reach(contact.b(), e));
    }

    private Set<Integer> reach(int terminal, int without) {
        return wiring.reach(terminal, step -> step.via() != Wiring.Via.STRUCTURE && !step.through(without));
    }

    private boolean hasBattery(Set<Integer> side) {
        return plan.elements().stream().anyMatch(element -> element instanceof Plan.Cell cell && side.contains(cell.a()));
    }
}
