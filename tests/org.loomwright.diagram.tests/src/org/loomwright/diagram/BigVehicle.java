// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.loomwright.model.edits.CoreEnd;
import org.loomwright.model.edits.VehicleEdits;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Way;

/**
 * A mobile workshop with 200 devices and 400 cables that is wired as one would wire it: a battery, a first distribution point,
 * nineteen boxes with negative bars, relays with their switches, and loads that return by conductors of their own. Every second
 * load has a screen or earth wire as a second return.
 */
public final class BigVehicle {
    /** Devices of the vehicle. */
    public static final int DEVICES = 200;
    /** Cables of the vehicle. */
    public static final int CABLES = 400;
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");
    private static final int BOXES = 19;
    private static final int RELAYS = 12;
    private static final List<String> LOADS = List.of("work-light-led-50", "water-pump-60", "fridge-24-60", "radio-vhf-25",
            "socket-12-10", "diesel-heater-4", "sonar-rack", "screen-10");
    private final Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
    private final Arrangement arrangement = VehicleFactory.eINSTANCE.createArrangement();
    private final List<PartsLibrary> libraries;

    private BigVehicle() {
        libraries = new VehicleFiles().openVehicle(FLEET.resolve("heron.vehicle")).root().getLibraries();
    }

    /** A new one, always the same. */
    public static Vehicle make() {
        BigVehicle made = new BigVehicle();
        made.build();
        return made.vehicle;
    }

    private void build() {
        vehicle.setName("workshop");
        vehicle.setLabel("Mobile workshop");
        vehicle.setFormat("1.0");
        vehicle.getLibraries().addAll(libraries);
        vehicle.getArrangements().add(arrangement);
        arrangement.setName("boxes");
        vehicle.setAdopted(arrangement);
        Device battery = device("G1", "House battery", "battery-lfp-12-300");
        Device bar = device("X100", "Main plus", "bar-plus-6");
        Device minus = device("X101", "Main minus", "bar-neg-12");
        cable("120", battery, "30", bar, "P1");
        cable("120", battery, "31", minus, "31");
        Device[] boxes = new Device[BOXES];
        for (int i = 0; i < BOXES; i++) {
            boxes[i] = device("X" + (i + 1), "Box " + (i + 1), "box-12-neg");
            cable("35", i < 5 ? bar : boxes[i - 5], i < 5 ? "P" + (i + 2) : "12", boxes[i], "30");
            cable("35", boxes[i], "31", i < 5 ? minus : boxes[i - 5], "N" + (i < 5 ? i + 1 : 12));
            for (int way = 1; way <= 12; way++) {
                if (way <= 9 || way == 12 && i + 5 < BOXES) {
                    fuse(boxes[i], way);
                }
            }
        }
        relays(boxes);
        int loads = DEVICES - arrangement.getDevices().size();
        for (int i = 0; i < loads; i++) {
            Device box = boxes[i % BOXES];
            int way = 1 + i / BOXES;
            Device load = device("E" + (i + 1), "Consumer no. " + (i + 1), LOADS.get(i % LOADS.size()));
            cable(i % 3 == 0 ? "4" : "2.5", box, Integer.toString(way), load, "L+");
            cable(i % 3 == 0 ? "4" : "2.5", load, "L-", box, "N" + way);
        }
        for (int i = 0; arrangement.getCables().size() < CABLES; i++) {
            Device load = arrangement.getDevices().get(DEVICES - 1 - i);
            cable("2.5", load, "L-", boxes[(DEVICES - 1 - i) % BOXES], "N11");
        }
    }

    /** Relays in a way of their own, with a switch for the coil, feeding one lamp. */
    private void relays(Device[] boxes) {
        for (int i = 0; i < RELAYS; i++) {
            Device relay = device("K" + (i + 1), "Relay " + (i + 1), "relay-30");
            Device hand = device("S" + (i + 1), "Switch " + (i + 1), "switch-10");
            Device lamp = device("E" + (500 + i), "Lamp behind relay " + (i + 1), "work-light-led-50");
            fuse(boxes[i], 10);
            fuse(boxes[i], 11);
            cable("4", boxes[i], "10", relay, "30");
            cable("1.5", boxes[i], "11", hand, "1");
            cable("1.5", hand, "2", relay, "86");
            cable("1.5", relay, "85", boxes[i], "N10");
            cable("4", relay, "87", lamp, "L+");
            cable("4", lamp, "L-", boxes[i], "N10");
        }
    }

    private Device device(String name, String label, String part) {
        Device device = VehicleFactory.eINSTANCE.createDevice();
        device.setName(name);
        device.setLabel(label);
        device.setPart(part(part));
        arrangement.getDevices().add(device);
        return device;
    }

    private void fuse(Device box, int number) {
        Way way = VehicleFactory.eINSTANCE.createWay();
        way.setName(Integer.toString(number));
        way.setProtector(libraries.stream().flatMap(library -> library.getProtectors().stream())
                .filter(each -> "blade-std-15".equals(each.getName())).findFirst().map(ProtectorPart.class::cast).orElseThrow());
        box.getWays().add(way);
    }

    private void cable(String sectionMm2, Device from, String a, Device to, String b) {
        Cable cable = VehicleFactory.eINSTANCE.createCable();
        cable.setName("W" + (arrangement.getCables().size() + 1));
        cable.setPart(cablePart());
        cable.setSectionMm2(new BigDecimal(sectionMm2));
        cable.setLengthMm(new BigDecimal(500 + 37 * (arrangement.getCables().size() % 60)));
        Core core = VehicleFactory.eINSTANCE.createCore();
        core.setColour(a.startsWith("N") || a.equals("31") || a.equals("L-") ? "BK" : "RD");
        cable.getCores().add(core);
        arrangement.getCables().add(cable);
        VehicleEdits.connect(core, CoreEnd.A, from, a);
        VehicleEdits.connect(core, CoreEnd.B, to, b);
    }

    private DevicePart part(String name) {
        return libraries.stream().flatMap(library -> library.getDevices().stream()).filter(part -> name.equals(part.getName()))
                .findFirst().or(() -> libraries.stream().flatMap(library -> library.getUses().stream())
                        .flatMap(library -> library.getDevices().stream()).filter(part -> name.equals(part.getName()))
                        .findFirst())
                .orElseThrow(() -> new IllegalArgumentException(name));
    }

    private CablePart cablePart() {
        return libraries.stream().flatMap(library -> library.getCables().stream()).findFirst().orElseThrow();
    }
}
