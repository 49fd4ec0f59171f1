// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Terminal;

/** The terminals of all devices in a row, then the earth points; finds them by model object. */
final class TerminalTable {
    private final List<Plan.Terminal> terminals = new ArrayList<>();
    private final List<Integer> firstOfDevice = new ArrayList<>();
    private final List<DevicePart> partOfDevice = new ArrayList<>();
    private final Map<DevicePart, PartTerminals> ofPart = new IdentityHashMap<>();
    private final Map<Device, Integer> devices = new IdentityHashMap<>();
    private final Map<EarthPoint, Integer> earthPoints = new IdentityHashMap<>();

    /** Where the terminals of a part lie, counted from the first. */
    private record PartTerminals(Map<TerminalSpec, Integer> bySpec, Map<String, Integer> byName) {
        static PartTerminals of(DevicePart part) {
            Map<TerminalSpec, Integer> bySpec = new IdentityHashMap<>();
            Map<String, Integer> byName = new HashMap<>();
            for (TerminalSpec spec : part.getTerminals()) {
                byName.putIfAbsent(spec.getName(), bySpec.size());
                bySpec.put(spec, bySpec.size());
            }
            return new PartTerminals(bySpec, byName);
        }
    }

    /** All terminals, in order. */
    List<Plan.Terminal> all() {
        return terminals;
    }

    /** Adds the terminals of the next device; a device without part has none. */
    void add(Device device, String id, DevicePart part) {
        int number = firstOfDevice.size();
        devices.put(device, number);
        firstOfDevice.add(terminals.size());
        partOfDevice.add(part);
        if (part == null) {
            return;
        }
        ofPart.computeIfAbsent(part, PartTerminals::of);
        for (TerminalSpec spec : part.getTerminals()) {
            terminals.add(new Plan.Terminal(id + "." + spec.getName(), spec.getName(), number, -1,
                    spec.isSetRole() ? spec.getRole().getLiteral() : "plus",
                    spec.isSetForm() ? spec.getForm().getLiteral() : null, Decimals.of(spec.getStudMm()),
                    Decimals.of(spec.getSectionMinMm2()), Decimals.of(spec.getSectionMaxMm2()),
                    Decimals.of(spec.getCurrentMaxA()), spec.getLugsMax() == null ? 0 : spec.getLugsMax(), spec.getBar(), -1,
                    0));
        }
    }

    /** Adds an earth point. */
    void add(EarthPoint point, int body, int place, double contactOhm) {
        earthPoints.put(point, terminals.size());
        terminals.add(new Plan.Terminal(ModelIds.of(point), point.getName(), -1, body, "earth", "stud",
                Decimals.of(point.getStudMm()), Double.NaN, Double.NaN, Double.NaN, 0, null, place, contactOhm));
    }

    /** Index of a device; -1 for null and for a device that is not part of the plan. */
    int device(Device device) {
        return device == null ? -1 : devices.getOrDefault(device, -1);
    }

    /** Index of a terminal of a device by its specification in the part; -1 for null and for one of another part. */
    int of(int device, TerminalSpec spec) {
        if (spec == null) {
            return -1;
        }
        Integer at = ofPart.get(partOfDevice.get(device)).bySpec().get(spec);
        return at == null ? -1 : firstOfDevice.get(device) + at;
    }

    /** Index of what a core or a domain is attached to; -1 when it is not part of the plan. */
    int of(Attachment attachment) {
        if (attachment instanceof EarthPoint point) {
            return earthPoints.getOrDefault(point, -1);
        }
        if (attachment instanceof Terminal terminal && terminal.eContainer() instanceof Device owner) {
            int device = device(owner);
            if (device >= 0 && partOfDevice.get(device) != null) {
                Integer at = ofPart.get(partOfDevice.get(device)).byName().get(terminal.getName());
                return at == null ? -1 : firstOfDevice.get(device) + at;
            }
        }
        return -1;
    }

    /** Why {@link #of(Attachment)} finds nothing, one clause with what was expected. */
    String whyUnknown(Attachment attachment) {
        if (attachment instanceof Terminal terminal && terminal.eContainer() instanceof Device owner) {
            int device = device(owner);
            if (device < 0) {
                return ModelIds.of(owner) + " is not part of this arrangement";
            }
            DevicePart part = partOfDevice.get(device);
            if (part == null) {
                return ModelIds.of(owner) + " has no part";
            }
            return "part " + part.getName() + " of " + ModelIds.of(owner) + " has no terminal " + terminal.getName()
                    + "; expected one of " + String.join(", ", names(part));
        }
        return "what it is attached to is not known; expected a terminal or an earth point";
    }

    private static List<String> names(DevicePart part) {
        return part.getTerminals().stream().map(TerminalSpec::getName).toList();
    }
}
