// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.math.BigDecimal;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.ConductorMaterial;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** A small sound vehicle: battery, relay and switch at one place, to be spoilt by tests. */
final class Sketch {
    final Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
    final Arrangement arrangement = VehicleFactory.eINSTANCE.createArrangement();
    final Place place = VehicleFactory.eINSTANCE.createPlace();
    final CablePart wire = PartsFactory.eINSTANCE.createCablePart();
    final DevicePart batteryPart = part("battery", DeviceKind.BATTERY);
    final DevicePart relayPart = part("relay", DeviceKind.RELAY);
    final DevicePart switchPart = part("switch", DeviceKind.SWITCH);
    final Device battery;
    final Device relay;
    final Device button;

    Sketch() {
        vehicle.setName("kite");
        vehicle.setFormat("1.0");
        arrangement.setName("plain");
        vehicle.getArrangements().add(arrangement);
        place.setName("bay");
        place.setXMm(BigDecimal.ZERO);
        place.setYMm(BigDecimal.ZERO);
        place.setZMm(BigDecimal.ZERO);
        vehicle.getPlaces().add(place);
        wire();
        parts();
        battery = device("G1", batteryPart);
        relay = device("K1", relayPart);
        button = device("S1", switchPart);
        Domain domain = VehicleFactory.eINSTANCE.createDomain();
        domain.setName("main");
        domain.setNominalV(BigDecimal.valueOf(12));
        domain.setSource(terminal(battery, "30"));
        vehicle.getDomains().add(domain);
    }

    private void wire() {
        wire.setName("wire");
        wire.setCores(1);
        wire.setMaxC(BigDecimal.valueOf(85));
        wire.setConductor(ConductorMaterial.COPPER);
        var row = PartsFactory.eINSTANCE.createCableRow();
        row.setSectionMm2(new BigDecimal("2.5"));
        row.setR20MaxMilliohmPerM(new BigDecimal("7.6"));
        wire.getRows().add(row);
    }

    private void parts() {
        TerminalSpec plus = terminal(batteryPart, "30", TerminalRole.PLUS);
        TerminalSpec minus = terminal(batteryPart, "31", TerminalRole.MINUS);
        var cell = PartsFactory.eINSTANCE.createCell();
        cell.setA(plus);
        cell.setB(minus);
        batteryPart.getCells().add(cell);
        TerminalSpec feed = terminal(relayPart, "30", TerminalRole.PLUS);
        TerminalSpec out = terminal(relayPart, "87", TerminalRole.PLUS);
        Coil coil = PartsFactory.eINSTANCE.createCoil();
        coil.setName("coil");
        coil.setA(terminal(relayPart, "86", TerminalRole.CONTROL));
        coil.setB(terminal(relayPart, "85", TerminalRole.CONTROL));
        coil.setOhm(BigDecimal.valueOf(90));
        coil.setPickUpV(BigDecimal.valueOf(8));
        coil.setDropOutV(BigDecimal.valueOf(3));
        relayPart.getCoils().add(coil);
        Contact make = contact(feed, out, Driver.COIL);
        make.setCoil(coil);
        relayPart.getContacts().add(make);
        switchPart.getContacts().add(contact(terminal(switchPart, "1", TerminalRole.PLUS),
                terminal(switchPart, "2", TerminalRole.PLUS), Driver.HAND));
    }

    private static Contact contact(TerminalSpec a, TerminalSpec b, Driver driver) {
        Contact contact = PartsFactory.eINSTANCE.createContact();
        contact.setName("contact");
        contact.setA(a);
        contact.setB(b);
        contact.setDriver(driver);
        contact.setRest(RestState.OPEN);
        return contact;
    }

    private static DevicePart part(String name, DeviceKind kind) {
        DevicePart part = PartsFactory.eINSTANCE.createDevicePart();
        part.setName(name);
        part.setKind(kind);
        return part;
    }

    private static TerminalSpec terminal(DevicePart part, String name, TerminalRole role) {
        TerminalSpec terminal = PartsFactory.eINSTANCE.createTerminalSpec();
        terminal.setName(name);
        terminal.setRole(role);
        part.getTerminals().add(terminal);
        return terminal;
    }

    Device device(String name, DevicePart part) {
        Device device = VehicleFactory.eINSTANCE.createDevice();
        device.setName(name);
        device.setPart(part);
        device.setPlace(place);
        arrangement.getDevices().add(device);
        return device;
    }

    static Terminal terminal(Device device, String name) {
        for (Terminal terminal : device.getTerminals()) {
            if (terminal.getName().equals(name)) {
                return terminal;
            }
        }
        Terminal terminal = VehicleFactory.eINSTANCE.createTerminal();
        terminal.setName(name);
        device.getTerminals().add(terminal);
        return terminal;
    }

    Cable cable(String name, Attachment a, Attachment b) {
        Cable cable = VehicleFactory.eINSTANCE.createCable();
        cable.setName(name);
        cable.setPart(wire);
        cable.setSectionMm2(new BigDecimal("2.5"));
        Core core = VehicleFactory.eINSTANCE.createCore();
        core.setA(a);
        core.setB(b);
        cable.getCores().add(core);
        arrangement.getCables().add(cable);
        return cable;
    }

    /** Sets a feature by name, for table-like tests. */
    static void set(EObject object, String feature, Object value) {
        EStructuralFeature found = object.eClass().getEStructuralFeature(feature);
        object.eSet(found, value instanceof String text && !(found.getEType().getInstanceClass() == String.class)
                ? EcoreUtil.createFromString((org.eclipse.emf.ecore.EDataType) found.getEType(), text) : value);
    }
}
