// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;

/** The elements of each device, by index in the plan. */
final class DeviceElements {
    private final List<Plan.Element> elements;
    private final List<List<Integer>> ofDevice = new ArrayList<>();

    DeviceElements(Plan plan) {
        elements = plan.elements();
        plan.devices().forEach(device -> ofDevice.add(new ArrayList<>(2)));
        for (int e = 0; e < elements.size(); e++) {
            ofDevice.get(elements.get(e).device()).add(e);
        }
    }

    /** Loads of a device; only that of a name when one is given. */
    List<Integer> demands(int device, String name) {
        return ofDevice.get(device).stream()
                .filter(e -> elements.get(e) instanceof Plan.Demand d && (name == null || name.equals(d.name()))).toList();
    }

    /** Hand contacts of a device; only that of a name when one is given. */
    List<Integer> handContacts(int device, String name) {
        return ofDevice.get(device).stream().filter(e -> elements.get(e) instanceof Plan.Contact c
                && "hand".equals(c.driver()) && (name == null || name.equals(c.name()))).toList();
    }

    /** Cells of a device. */
    List<Integer> cells(int device) {
        return ofDevice.get(device).stream().filter(e -> elements.get(e) instanceof Plan.Cell).toList();
    }
}
