// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Way;
import org.loomwright.model.vehicle.Zone;

/** Builds small vehicles of the model, with parts of {@link TestParts}; names as in vehicle files. */
final class TestVehicle {
    private static final VehicleFactory MAKE = VehicleFactory.eINSTANCE;

    final TestParts parts;
    final Vehicle vehicle = MAKE.createVehicle();
    private Arrangement into;

    TestVehicle() {
        this(new TestParts());
    }

    TestVehicle(TestParts parts) {
        this.parts = parts;
        vehicle.setName("van");
        vehicle.getLibraries().add(parts.library);
    }

    /** A vehicle with a battery at the front, a lamp at the rear, two runs between, and a return of its own. */
    static TestVehicle simple() {
        TestVehicle van = new TestVehicle();
        van.zone("bay", "-20", "80");
        van.zone("cabin", "-10", "45");
        van.place("front", "4000 0 800", "bay");
        van.place("middle", "3000 0 800", "cabin");
        van.place("rear", "0 0 800", "cabin");
        van.run("R1", "front", "middle", "1000");
        van.run("R2", "middle", "rear", null);
        van.device("G1", "battery", "front");
        van.device("F1", "box", "front");
        van.way("F1", "1", "f10");
        van.device("E1", "lamp", "rear");
        van.cable("W1", "16", "G1.30", "F1.30");
        van.cable("W2", "2.5", "F1.1", "E1.L+");
        van.cable("W3", "2.5", "E1.L-", "G1.31");
        van.domain("12V", "12", "G1.30");
        return van;
    }

    AssemblyResult assembled() {
        return Assembly.assemble(vehicle, into, null);
    }

    Plan plan() {
        AssemblyResult result = assembled();
        if (!result.problems().isEmpty()) {
            throw new AssertionError("unexpected problems: " + result.problems());
        }
        return result.plan();
    }

    /** What follows goes into an arrangement of that name. */
    TestVehicle arrangement(String name) {
        into = MAKE.createArrangement();
        into.setName(name);
        vehicle.getArrangements().add(into);
        return this;
    }

    Arrangement arrangement() {
        return into;
    }

    Domain domain(String name, String nominalV, String source) {
        Domain domain = named(MAKE.createDomain(), name, vehicle.getDomains());
        domain.setNominalV(TestParts.number(nominalV));
        domain.setSource(source == null ? null : attachment(source));
        return domain;
    }

    Zone zone(String name, String minC, String maxC) {
        Zone zone = named(MAKE.createZone(), name, vehicle.getZones());
        zone.setAmbientMinC(TestParts.number(minC));
        zone.setAmbientMaxC(TestParts.number(maxC));
        return zone;
    }

    Place place(String name, String xyz, String zone) {
        Place place = named(MAKE.createPlace(), name, vehicle.getPlaces());
        if (xyz != null) {
            String[] at = xyz.split(" ");
            place.setXMm(TestParts.number(at[0]));
            place.setYMm(TestParts.number(at[1]));
            place.setZMm(TestParts.number(at[2]));
        }
        place.setZone(zone == null ? null : find(vehicle.getZones(), zone));
        return place;
    }

    Run run(String name, String from, String to, String lengthMm) {
        Run run = named(MAKE.createRun(), name, vehicle.getRuns());
        run.setFrom(find(vehicle.getPlaces(), from));
        run.setTo(find(vehicle.getPlaces(), to));
        run.setLengthMm(TestParts.number(lengthMm));
        return run;
    }

    Body body(String name) {
        return named(MAKE.createBody(), name, vehicle.getBodies());
    }

    EarthPoint earthPoint(String name, String body, String place) {
        EarthPoint point = named(MAKE.createEarthPoint(), name, vehicle.getEarthPoints());
        point.setBody(find(vehicle.getBodies(), body));
        point.setPlace(place == null ? null : find(vehicle.getPlaces(), place));
        return point;
    }

    Bond bond(String name, String a, String b) {
        Bond bond = named(MAKE.createBond(), name, vehicle.getBonds());
        bond.setA(find(vehicle.getEarthPoints(), a));
        bond.setB(find(vehicle.getEarthPoints(), b));
        return bond;
    }

    Device device(String name, String part, String place) {
        Device device = named(MAKE.createDevice(), name, into == null ? vehicle.getDevices() : into.getDevices());
        device.setPart(part == null ? null : parts.devicePart(part));
        device.setPlace(place == null ? null : find(vehicle.getPlaces(), place));
        return device;
    }

    Way way(String device, String name, String protector) {
        Way way = named(MAKE.createWay(), name, device(device).getWays());
        way.setProtector(protector == null ? null : parts.protectorPart(protector));
        return way;
    }

    Setting setting(String device, String element, String quantity, String value) {
        Setting setting = MAKE.createSetting();
        setting.setElement(element);
        setting.setQuantity(quantity);
        setting.setValue(TestParts.number(value));
        device(device).getSettings().add(setting);
        return setting;
    }

    Cable cable(String name, String sectionMm2, String... ends) {
        Cable cable = named(MAKE.createCable(), name, into == null ? vehicle.getCables() : into.getCables());
        cable.setPart(parts.cablePart(ends.length > 2 ? "twin" : "single"));
        cable.setSectionMm2(TestParts.number(sectionMm2));
        for (int i = 0; i < ends.length; i += 2) {
            Core core = MAKE.createCore();
            core.setA(ends[i] == null ? null : attachment(ends[i]));
            core.setB(ends[i + 1] == null ? null : attachment(ends[i + 1]));
            cable.getCores().add(core);
        }
        return cable;
    }

    Cable path(String cable, String... runs) {
        Cable of = find(into == null ? vehicle.getCables() : into.getCables(), cable);
        of.getPath().clear();
        for (String run : runs) {
            of.getPath().add(find(vehicle.getRuns(), run));
        }
        return of;
    }

    Case state(String name) {
        return named(MAKE.createCase(), name, vehicle.getCases());
    }

    DemandState on(Case state, String device, String factor) {
        DemandState on = MAKE.createDemandState();
        on.setDevice(device(device));
        on.setFactor(TestParts.number(factor));
        state.getDemands().add(on);
        return on;
    }

    Device device(String name) {
        if (into != null) {
            for (Device device : into.getDevices()) {
                if (device.getName().equals(name)) {
                    return device;
                }
            }
        }
        return find(vehicle.getDevices(), name);
    }

    Cable cable(String name) {
        return find(vehicle.getCables(), name);
    }

    Attachment attachment(String text) {
        int dot = text.indexOf('.');
        if (dot < 0) {
            return find(vehicle.getEarthPoints(), text);
        }
        Device device = device(text.substring(0, dot));
        String name = text.substring(dot + 1);
        for (Terminal terminal : device.getTerminals()) {
            if (terminal.getName().equals(name)) {
                return terminal;
            }
        }
        return named(MAKE.createTerminal(), name, device.getTerminals());
    }

    static <T extends Named> T find(List<T> all, String name) {
        return all.stream().filter(one -> name.equals(one.getName())).findFirst().orElseThrow();
    }

    private static <T extends Named> T named(T made, String name, List<? super T> into) {
        made.setName(name);
        into.add(made);
        return made;
    }
}
