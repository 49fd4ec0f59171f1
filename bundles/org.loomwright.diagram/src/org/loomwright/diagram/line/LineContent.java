// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;

/** What a line diagram shows, read from the model; whatever is incomplete is shown as far as it goes, never refused. */
final class LineContent {
    private final Map<String, Unit> units = new LinkedHashMap<>();
    private final Map<String, EarthPoint> earths = new LinkedHashMap<>();
    private final List<Wire> wires = new ArrayList<>();
    private final Map<String, List<Wire>> at = new LinkedHashMap<>();
    private final Map<String, Set<String>> used = new LinkedHashMap<>();

    private LineContent() {
    }

    /**
     * Reads one arrangement.
     *
     * @param arrangement null for what all arrangements share
     */
    static LineContent read(Vehicle vehicle, Arrangement arrangement) {
        LineContent content = new LineContent();
        vehicle.getEarthPoints().forEach(earth -> content.earths.put(Fragments.of(earth), earth));
        vehicle.getDevices().forEach(content::add);
        if (arrangement != null) {
            arrangement.getDevices().forEach(content::add);
        }
        vehicle.getCables().forEach(content::add);
        if (arrangement != null) {
            arrangement.getCables().forEach(content::add);
        }
        return content;
    }

    Map<String, Unit> units() {
        return units;
    }

    Map<String, EarthPoint> earths() {
        return earths;
    }

    List<Wire> wires() {
        return wires;
    }

    /** Wires at an attachment, in the order of the file. */
    List<Wire> at(String attachment) {
        return at.getOrDefault(attachment, List.of());
    }

    /** Terminals of a unit that the part states or a wire uses, in the order of the part. */
    Set<String> terminals(Unit unit) {
        return used.getOrDefault(unit.id(), Set.of());
    }

    /** The unit a terminal belongs to; null for an earth point. */
    Unit unitOf(String attachment) {
        return earths.containsKey(attachment) ? null : units.get(unitId(attachment));
    }

    /** Key of a unit's terminal. */
    static String key(Unit unit, String terminal) {
        return unit.id() + "." + terminal;
    }

    /** Name of the terminal: device names have no dot. */
    static String terminalName(String key) {
        return key.substring(key.indexOf('.', key.lastIndexOf('/') + 1) + 1);
    }

    private static String unitId(String key) {
        int dot = key.indexOf('.', key.lastIndexOf('/') + 1);
        return dot < 0 ? key : key.substring(0, dot);
    }

    private void add(Device device) {
        if (device.getName() != null) {
            String id = Fragments.of(device);
            units.put(id, Unit.of(id, device));
            Set<String> names = used.computeIfAbsent(id, none -> new LinkedHashSet<>());
            if (device.getPart() != null) {
                device.getPart().getTerminals().stream().map(spec -> spec.getName()).filter(Objects::nonNull).forEach(names::add);
            }
        }
    }

    private void add(Cable cable) {
        String id = Fragments.of(cable);
        int count = 0;
        for (Core core : cable.getCores()) {
            String a = attachment(core.getA());
            String b = attachment(core.getB());
            count++;
            if (a != null && b != null && !a.equals(b)) {
                Wire wire = new Wire(id + "#" + count, id, cable, core, a, b);
                wires.add(wire);
                at.computeIfAbsent(a, none -> new ArrayList<>()).add(wire);
                at.computeIfAbsent(b, none -> new ArrayList<>()).add(wire);
            }
        }
    }

    private String attachment(Attachment end) {
        if (end instanceof EarthPoint earth) {
            String id = Fragments.of(earth);
            return earths.containsKey(id) ? id : null;
        }
        if (end instanceof Terminal terminal && terminal.eContainer() instanceof Device device && terminal.getName() != null) {
            Unit unit = units.get(Fragments.of(device));
            if (unit == null) {
                return null;
            }
            used.get(unit.id()).add(terminal.getName());
            return key(unit, terminal.getName());
        }
        return null;
    }
}
