// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;

/**
 * Which id stands for an element in findings, and how people read it. A load goes by its device, with the name of the demand
 * where the device has several; a core goes by its cable where that has one core connected; other elements of
 * a device go by the device where it has one of that kind.
 */
public final class ElementNames {
    private final Plan plan;
    private final Designations designations;
    private final String[] elementIds;
    private final String[] conductorIds;

    private ElementNames(Plan plan) {
        this.plan = plan;
        designations = new Designations(plan.arrangement());
        elementIds = elementIds(plan);
        conductorIds = conductorIds(plan);
    }

    /** The names of a plan. */
    public static ElementNames of(Plan plan) {
        return new ElementNames(plan);
    }

    /** Id under which findings name an element of a device (index in the plan). */
    public String element(int element) {
        return elementIds[element];
    }

    /** Id under which findings name a conductor (index in the plan). */
    public String conductor(int conductor) {
        return conductorIds[conductor];
    }

    /** Id as people read it, for example {@code -W12}. */
    public String shown(String id) {
        return designations.shown(id);
    }

    /** An element of a device as people read it, with the device's label: for example {@code -E4 (work light)}. */
    public String shownElement(int element) {
        Plan.Device device = plan.devices().get(plan.elements().get(element).device());
        String shown = shown(element(element));
        return device.label() == null || device.label().isEmpty() ? shown : shown + " (" + device.label() + ")";
    }

    /** A conductor as people read it. */
    public String shownConductor(int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        String cable = shown(plan.cables().get(core.cable()).id());
        boolean named = conductor(conductor).equals(plan.cables().get(core.cable()).id());
        return named || core.colour() == null ? cable : cable + " " + core.colour();
    }

    private static String[] elementIds(Plan plan) {
        List<List<Integer>> ofDevice = new ArrayList<>();
        plan.devices().forEach(device -> ofDevice.add(new ArrayList<>()));
        for (int e = 0; e < plan.elements().size(); e++) {
            ofDevice.get(plan.elements().get(e).device()).add(e);
        }
        String[] ids = new String[plan.elements().size()];
        for (int d = 0; d < ofDevice.size(); d++) {
            for (int e : ofDevice.get(d)) {
                Plan.Element element = plan.elements().get(e);
                long alike = ofDevice.get(d).stream()
                        .filter(other -> plan.elements().get(other).getClass() == element.getClass()).count();
                ids[e] = element instanceof Plan.Protector p && p.way() != null ? p.way()
                        : alike == 1 ? plan.devices().get(d).id() : element.id();
            }
        }
        return ids;
    }

    private static String[] conductorIds(Plan plan) {
        int[] cores = new int[plan.cables().size()];
        plan.conductors().forEach(core -> cores[core.cable()]++);
        String[] ids = new String[plan.conductors().size()];
        for (int c = 0; c < ids.length; c++) {
            Plan.Conductor core = plan.conductors().get(c);
            ids[c] = cores[core.cable()] == 1 ? plan.cables().get(core.cable()).id() : core.id();
        }
        return ids;
    }
}
