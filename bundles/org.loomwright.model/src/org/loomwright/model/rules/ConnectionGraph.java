// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Diode;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.Joint;
import org.loomwright.model.parts.Protector;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.Shunt;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/**
 * What current can reach from where in one arrangement, with every contact able to close. Nodes are terminals (by device and
 * name; terminals of one bar are one node), earth points and bodies. Diodes are passed from a to b only. Loads, coils and
 * sources are not passed.
 */
public final class ConnectionGraph {
    private record Pin(Device device, String terminal) {
    }

    /** The way to another node; contact tells the element where a relay's contact has to be passed. */
    private record Edge(Object to, Device device, Contact contact) {
    }

    private final Map<Object, List<Edge>> edges = new HashMap<>();

    /**
     * The graph of a vehicle.
     *
     * @param arrangement null for what all arrangements share
     */
    public ConnectionGraph(Vehicle vehicle, Arrangement arrangement) {
        vehicle.getDevices().forEach(this::device);
        vehicle.getCables().forEach(this::cable);
        if (arrangement != null) {
            arrangement.getDevices().forEach(this::device);
            arrangement.getCables().forEach(this::cable);
        }
        for (EarthPoint point : vehicle.getEarthPoints()) {
            join(point, point.getBody(), null, null);
        }
        for (Bond bond : vehicle.getBonds()) {
            join(bond.getA(), bond.getB(), null, null);
        }
        for (BodyLink link : vehicle.getBodyLinks()) {
            join(link.getA(), link.getB(), null, null);
        }
    }

    /** The node of a device's terminal. */
    public Object node(Device device, TerminalSpec terminal) {
        return new Pin(device, terminal.getBar() == null ? terminal.getName() : "bar " + terminal.getBar());
    }

    /** All nodes reached from the given ones, not passing the make contacts that {@code coil} of {@code device} drives. */
    Set<Object> reached(Collection<Object> from, Device device, Coil coil) {
        Set<Object> seen = new HashSet<>(from);
        Deque<Object> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            for (Edge edge : edges.getOrDefault(open.remove(), List.of())) {
                boolean barred = edge.contact() != null && edge.device() == device && coil != null
                        && edge.contact().getCoil() == coil && edge.contact().isSetDriver()
                        && edge.contact().getDriver() == Driver.COIL
                        && !(edge.contact().isSetRest() && edge.contact().getRest() == RestState.CLOSED);
                if (!barred && seen.add(edge.to())) {
                    open.add(edge.to());
                }
            }
        }
        return seen;
    }

    /**
     * What each node is nearest to: reached over the fewest connections; of equally near starts the first counts.
     *
     * @param starts nodes with what they stand for, in order
     */
    public <T> Map<Object, T> nearest(Map<Object, T> starts) {
        Map<Object, T> found = new HashMap<>(starts);
        Deque<Object> open = new ArrayDeque<>(starts.keySet());
        while (!open.isEmpty()) {
            Object at = open.remove();
            for (Edge edge : edges.getOrDefault(at, List.of())) {
                if (found.putIfAbsent(edge.to(), found.get(at)) == null) {
                    open.add(edge.to());
                }
            }
        }
        return found;
    }

    private void device(Device device) {
        DevicePart part = device.getPart();
        if (part == null || part.eIsProxy()) {
            return;
        }
        for (Joint joint : part.getJoints()) {
            inside(device, joint.getA(), joint.getB(), null);
        }
        for (Shunt shunt : part.getShunts()) {
            inside(device, shunt.getA(), shunt.getB(), null);
        }
        for (Protector protector : part.getProtectors()) {
            inside(device, protector.getA(), protector.getB(), null);
        }
        for (Contact contact : part.getContacts()) {
            inside(device, contact.getA(), contact.getB(), contact);
        }
        for (Diode diode : part.getDiodes()) {
            if (diode.getA() != null && diode.getB() != null) {
                edge(node(device, diode.getA()), node(device, diode.getB()), null, null);
            }
        }
        for (TerminalSpec terminal : part.getTerminals()) {
            Body body = device.getBody();
            if (body != null && terminal.isSetRole() && terminal.getRole() == TerminalRole.CASE) {
                join(node(device, terminal), body, null, null);
            }
        }
        ways(device, part);
    }

    private void ways(Device device, DevicePart part) {
        for (Way way : device.getWays()) {
            if (way.getProtector() == null) {
                continue;
            }
            for (WaySpec spec : part.getWays()) {
                if (spec.getName() != null && spec.getName().equals(way.getName())) {
                    inside(device, spec.getFrom(), spec.getOut(), null);
                }
            }
        }
    }

    private void inside(Device device, TerminalSpec a, TerminalSpec b, Contact contact) {
        if (a != null && b != null) {
            join(node(device, a), node(device, b), device, contact);
        }
    }

    private void cable(Cable cable) {
        for (Core core : cable.getCores()) {
            Object a = node(core.getA());
            Object b = node(core.getB());
            join(a, b, null, null);
        }
    }

    private Object node(Attachment end) {
        if (end instanceof Terminal terminal && terminal.eContainer() instanceof Device device && device.getPart() != null) {
            return device.getPart().getTerminals().stream().filter(spec -> terminal.getName().equals(spec.getName()))
                    .findFirst().map(spec -> node(device, spec)).orElse(null);
        }
        return end instanceof EarthPoint ? end : null;
    }

    private void join(Object a, Object b, Device device, Contact contact) {
        if (a != null && b != null) {
            edge(a, b, device, contact);
            edge(b, a, device, contact);
        }
    }

    private void edge(Object from, Object to, Device device, Contact contact) {
        edges.computeIfAbsent(from, key -> new ArrayList<>()).add(new Edge(to, device, contact));
    }
}
