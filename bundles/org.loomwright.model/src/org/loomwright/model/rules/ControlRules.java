// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.loomwright.model.parts.Cell;
import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.Converter;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.Regulated;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A relay must not be the only feed of its own control circuit: it would never pull in. A coil end that is reached from a
 * source through the relay's own make contact, and in no other way, is reported. A latching circuit with a start button is
 * reached through the button and therefore passes.
 */
final class ControlRules {
    private final ConnectionGraph graph;
    private final List<Device> devices = new ArrayList<>();

    private ControlRules(Vehicle vehicle, Arrangement arrangement) {
        graph = new ConnectionGraph(vehicle, arrangement);
        devices.addAll(vehicle.getDevices());
        if (arrangement != null) {
            devices.addAll(arrangement.getDevices());
        }
    }

    static void check(Vehicle vehicle, Arrangement arrangement, Consumer<Violation> found) {
        new ControlRules(vehicle, arrangement).check(found);
    }

    private void check(Consumer<Violation> found) {
        List<Object> sources = sources();
        Set<Object> reached = graph.reached(sources, null, null);
        for (Device device : devices) {
            DevicePart part = device.getPart();
            if (part == null || part.eIsProxy()) {
                continue;
            }
            for (Coil coil : part.getCoils()) {
                if (makeContacts(part, coil) && fedOnlyThroughItself(device, coil, sources, reached)) {
                    found.accept(Violation.blocking("control-loop", device, null,
                            "the coil of " + device.getName() + " is fed only through its own contact and can never pull in",
                            "a feed of the coil that does not pass the relay's contact"));
                }
            }
        }
    }

    private static boolean makeContacts(DevicePart part, Coil coil) {
        return part.getContacts().stream().anyMatch(contact -> drivenBy(contact, coil));
    }

    private static boolean drivenBy(Contact contact, Coil coil) {
        return contact.isSetDriver() && contact.getDriver() == Driver.COIL && contact.getCoil() == coil
                && !(contact.isSetRest() && contact.getRest() == RestState.CLOSED);
    }

    private boolean fedOnlyThroughItself(Device device, Coil coil, List<Object> sources, Set<Object> with) {
        if (coil.getA() == null || coil.getB() == null) {
            return false;
        }
        Set<Object> without = graph.reached(sources, device, coil);
        Object a = graph.node(device, coil.getA());
        Object b = graph.node(device, coil.getB());
        return with.contains(a) && !without.contains(a) || with.contains(b) && !without.contains(b);
    }

    private List<Object> sources() {
        List<Object> nodes = new ArrayList<>();
        for (Device device : devices) {
            DevicePart part = device.getPart();
            if (part == null || part.eIsProxy()) {
                continue;
            }
            for (Cell cell : part.getCells()) {
                add(nodes, device, cell.getA());
                add(nodes, device, cell.getB());
            }
            for (Regulated source : part.getRegulators()) {
                add(nodes, device, source.getA());
                add(nodes, device, source.getB());
            }
            for (Converter converter : part.getConverters()) {
                add(nodes, device, converter.getOutPlus());
                add(nodes, device, converter.getOutMinus());
            }
        }
        return nodes;
    }

    private void add(List<Object> nodes, Device device, TerminalSpec terminal) {
        if (terminal != null) {
            nodes.add(graph.node(device, terminal));
        }
    }
}
