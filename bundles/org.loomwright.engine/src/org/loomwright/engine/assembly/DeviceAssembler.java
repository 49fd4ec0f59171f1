// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.RunGraph.Spot;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Return;
import org.loomwright.model.vehicle.Vehicle;

/** Assembles the devices of the vehicle and of the arrangement, where they sit, and their terminals and elements. */
final class DeviceAssembler {
    private final AssemblyScope scope;
    private final StructureAssembler structure;
    private final TerminalTable terminals = new TerminalTable();
    private final ElementAssembler elements;
    private final List<Device> sources = new ArrayList<>();
    private final List<Plan.Device> devices = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private final Map<Device, Place> placed = new IdentityHashMap<>();
    private final Map<Device, String> returns = new IdentityHashMap<>();

    DeviceAssembler(Vehicle vehicle, Arrangement arrangement, StructureAssembler structure, AssemblyScope scope) {
        this.scope = scope;
        this.structure = structure;
        elements = new ElementAssembler(terminals, scope);
        sources.addAll(vehicle.getDevices());
        if (arrangement != null) {
            sources.addAll(arrangement.getDevices());
            for (Placement placement : arrangement.getPlacements()) {
                placed.put(placement.getDevice(), placement.getPlace());
            }
            for (Return choice : arrangement.getReturns()) {
                if (choice.isSetBy()) {
                    returns.put(choice.getDevice(), choice.getBy().getLiteral());
                }
            }
        }
        List<String> ids = sources.stream().map(ModelIds::of).toList();
        for (int i = 0; i < ids.size(); i++) {
            terminals.add(sources.get(i), ids.get(i), partOf(sources.get(i), ids.get(i)));
        }
        vehicle.getEarthPoints().forEach(this::add);
        for (int i = 0; i < ids.size(); i++) {
            add(i, ids.get(i), sources.get(i));
        }
    }

    List<Plan.Device> devices() {
        return devices;
    }

    TerminalTable terminals() {
        return terminals;
    }

    List<Plan.Element> elements() {
        return elements.all();
    }

    /** Ways of all devices in which nothing is fitted, connected or not. */
    List<EmptyWay> emptyWays() {
        return elements.emptyWays();
    }

    /** Where a terminal of the plan is; {@link Spot#NOWHERE} when nobody says. */
    Spot spotOf(int terminal) {
        Plan.Terminal of = terminals.all().get(terminal);
        return of.device() >= 0 ? spots.get(of.device()) : of.place() >= 0 ? Spot.at(of.place()) : Spot.NOWHERE;
    }

    /** True when both terminals belong to one device, or to devices of which one is mounted in the other or both in a third. */
    boolean together(int terminalA, int terminalB) {
        int a = terminals.all().get(terminalA).device();
        int b = terminals.all().get(terminalB).device();
        if (a < 0 || b < 0) {
            return false;
        }
        int hostA = devices.get(a).mountedIn();
        int hostB = devices.get(b).mountedIn();
        return a == b || hostA == b || hostB == a || hostA >= 0 && hostA == hostB && spots.get(a).equals(spots.get(b));
    }

    private DevicePart partOf(Device device, String id) {
        DevicePart part = device.getPart();
        if (part == null || part.eIsProxy()) {
            scope.problems().add(id, "the device has no part; it is left out");
            return null;
        }
        return part;
    }

    private void add(EarthPoint point) {
        int body = structure.indexOf(point.getBody());
        if (body < 0) {
            scope.problems().add(ModelIds.of(point), "the earth point names no body; expected a body of the vehicle");
            return;
        }
        double ohm = Decimals.thousandth(point.getMilliohm());
        terminals.add(point, body, structure.indexOf(point.getPlace()), ohm > 0 ? ohm : scope.ohms("joint.earth-point-max"));
    }

    private void add(int number, String id, Device device) {
        DevicePart part = device.getPart() == null || device.getPart().eIsProxy() ? null : device.getPart();
        Device sits = seat(device, id);
        Spot spot = spotOf(sits, id);
        int zone = spot.place() >= 0 ? structure.places().get(spot.place()).zone()
                : spot.run() >= 0 ? structure.runs().get(spot.run()).zone() : -1;
        spots.add(spot);
        devices.add(new Plan.Device(id, device.getName(), device.getLabel(),
                part != null && part.isSetKind() ? part.getKind().getLiteral() : "device", part == null ? null : part.getName(),
                part == null ? null : part.getSource(), spot.place(), spot.run(), spot.run() < 0 ? Double.NaN : spot.atMm(),
                zone, structure.indexOf(device.getBody()), terminals.device(device.getMountedIn()),
                Decimals.yes(device.getExisting()), device.getPriority() == null ? 0 : device.getPriority(),
                Decimals.yes(device.getMustStayLive()), part == null ? null : part.getIngress(),
                part == null ? Double.NaN : Decimals.of(part.getAmbientMinC()),
                part == null ? Double.NaN : Decimals.of(part.getAmbientMaxC()),
                part == null ? Double.NaN : Decimals.of(part.getDissipationMaxW()),
                part == null ? Double.NaN : Decimals.of(part.getBarMaxA()), returns.get(device)));
        if (part != null) {
            elements.add(number, id, device, part);
        }
    }

    /** The device that says where this one sits: itself, or the one it is mounted in, or the one that one is mounted in ... */
    private Device seat(Device device, String id) {
        Set<Device> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Device at = device;
        while (place(at) == null && at.getRun() == null && at.getMountedIn() != null) {
            if (!seen.add(at)) {
                scope.problems().add(id, "the device is mounted in itself; expected a place, or a device that has one");
                return device;
            }
            at = at.getMountedIn();
        }
        return at;
    }

    private Place place(Device device) {
        Place moved = placed.get(device);
        return moved != null ? moved : device.getPlace();
    }

    private Spot spotOf(Device device, String id) {
        int place = structure.indexOf(place(device));
        if (place >= 0) {
            return Spot.at(place);
        }
        int run = structure.indexOf(device.getRun());
        if (run < 0) {
            return Spot.NOWHERE;
        }
        double lengthMm = structure.runs().get(run).lengthMm();
        double atMm = Decimals.of(device.getAtMm());
        if (!(atMm >= 0 && atMm <= lengthMm)) {
            scope.problems().add(id, "atMm on run " + structure.runs().get(run).id() + " is "
                    + (Double.isNaN(atMm) ? "not stated" : device.getAtMm().toPlainString()) + "; expected 0 to "
                    + Decimals.text(lengthMm) + " mm. The run's nearer end stands in");
            atMm = atMm > lengthMm ? lengthMm : 0;
        }
        return Spot.on(run, atMm);
    }
}
