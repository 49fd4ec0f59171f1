// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.loomwright.model.edits.CoreEnd;
import org.loomwright.model.edits.VehicleEdits;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/**
 * A bus with 200 devices at 60 places and 400 cables, made up of parts of the demo library; 20 devices share one cupboard.
 * Made to be drawn: what is connected to what makes no sense to a study.
 */
final class LargeVehicle {
    static final int DEVICES = 200;
    static final int CABLES = 400;
    private static final int COLUMNS = 15;
    private static final int ROWS = 4;
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");
    private final Random random = new Random(20);
    private final Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
    private final Arrangement arrangement = VehicleFactory.eINSTANCE.createArrangement();
    private final List<PartsLibrary> libraries;

    private LargeVehicle() {
        libraries = new VehicleFiles().openVehicle(FLEET.resolve("heron.vehicle")).root().getLibraries();
    }

    static Vehicle make() {
        return new LargeVehicle().made();
    }

    private Vehicle made() {
        vehicle.setName("bus");
        vehicle.setFormat("1.0");
        vehicle.getLibraries().addAll(libraries);
        vehicle.setOutline("0,-1250 0,1250 11800,1250 12000,900 12000,-900 11800,-1250");
        vehicle.setSideOutline("0,400 0,3100 11800,3100 12000,1500 12000,400");
        vehicle.getArrangements().add(arrangement);
        arrangement.setName("all");
        vehicle.setAdopted(arrangement);
        for (int c = 0; c < COLUMNS; c++) {
            for (int r = 0; r < ROWS; r++) {
                place(c, r);
            }
        }
        for (int i = 0; i < DEVICES; i++) {
            device(i);
        }
        List<Device> boxes = arrangement.getDevices().stream().filter(device -> device.getName().startsWith("X")).toList();
        List<Device> loads = arrangement.getDevices().stream().filter(device -> device.getName().startsWith("E")).toList();
        for (int i = 0; i < CABLES; i++) {
            Device load = loads.get(i / 2 % loads.size());
            Device box = boxes.get((i / 2 + i / 2 / loads.size()) % boxes.size());
            cable(i, box, i % 2 == 0 ? "30" : "1", load, i % 2 == 0 ? "L+" : "L-");
        }
        return vehicle;
    }

    private void place(int column, int row) {
        Place place = VehicleFactory.eINSTANCE.createPlace();
        place.setName("place-" + column + "-" + row);
        place.setXMm(new BigDecimal(400 + column * 800 + random.nextInt(200)));
        place.setYMm(new BigDecimal(-1100 + row * 733 + random.nextInt(60)));
        place.setZMm(new BigDecimal(600 + row * 500 + random.nextInt(300)));
        vehicle.getPlaces().add(place);
        if (row > 0) {
            run(column * ROWS + row - 1, column * ROWS + row);
        }
        if (column > 0 && (row == 0 || row == ROWS - 1)) {
            run((column - 1) * ROWS + row, column * ROWS + row);
        }
    }

    private void run(int from, int to) {
        Run run = VehicleFactory.eINSTANCE.createRun();
        run.setName("R" + (vehicle.getRuns().size() + 1));
        run.setFrom(vehicle.getPlaces().get(from));
        run.setTo(vehicle.getPlaces().get(to));
        vehicle.getRuns().add(run);
    }

    private void device(int i) {
        Device device = VehicleFactory.eINSTANCE.createDevice();
        boolean box = i % 10 == 0;
        device.setName((box ? "X" : "E") + (i + 1));
        device.setLabel(box ? "Box " + i / 10 : "Lamp over seat " + i);
        device.setPart(box ? part("box-8") : part("load"));
        device.setPlace(vehicle.getPlaces().get(i < 20 ? 7 : i * 7 % vehicle.getPlaces().size()));
        arrangement.getDevices().add(device);
    }

    private void cable(int i, Device box, String out, Device load, String in) {
        Cable cable = VehicleFactory.eINSTANCE.createCable();
        cable.setName("W" + (i + 1));
        cable.setPart(cablePart());
        cable.setSectionMm2(cablePart().getRows().get(0).getSectionMm2());
        Core core = VehicleFactory.eINSTANCE.createCore();
        cable.getCores().add(core);
        arrangement.getCables().add(cable);
        VehicleEdits.connect(core, CoreEnd.A, box, out);
        VehicleEdits.connect(core, CoreEnd.B, load, in);
    }

    private DevicePart part(String name) {
        return libraries.stream().flatMap(library -> library.getDevices().stream())
                .filter(part -> name.equals("load") ? part.getTerminals().stream().anyMatch(t -> "L+".equals(t.getName()))
                        && part.getTerminals().stream().anyMatch(t -> "L-".equals(t.getName())) : name.equals(part.getName()))
                .findFirst().orElseThrow();
    }

    private CablePart cablePart() {
        return libraries.stream().flatMap(library -> library.getCables().stream()).findFirst().orElseThrow();
    }
}
