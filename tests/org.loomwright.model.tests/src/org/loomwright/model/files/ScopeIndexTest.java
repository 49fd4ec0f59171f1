// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** The table of names agrees with the model after any sequence of changes. */
class ScopeIndexTest {
    private static final int NAMES = 25;

    @TempDir
    Path folder;

    private static List<EObject> searched(EObject container, String name) {
        List<EObject> found = new ArrayList<>();
        for (EObject child : container.eContents()) {
            if (child instanceof Named named && name.equals(named.getName())) {
                found.add(child);
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void randomChangesAreFollowed(long seed) {
        Random random = new Random(seed);
        Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
        new VehicleFiles().create(folder.resolve("x.vehicle"), vehicle);
        for (int step = 0; step < 3000; step++) {
            change(vehicle, random);
            String name = "n" + random.nextInt(NAMES);
            assertEquals(searched(vehicle, name), ScopeIndex.children(vehicle, name), "after step " + step);
        }
    }

    private static void change(Vehicle vehicle, Random random) {
        EList<Device> devices = vehicle.getDevices();
        EList<Place> places = vehicle.getPlaces();
        String name = "n" + random.nextInt(NAMES);
        switch (random.nextInt(10)) {
            case 0, 1, 2 -> {
                Device device = VehicleFactory.eINSTANCE.createDevice();
                device.setName(name);
                devices.add(random.nextInt(devices.size() + 1), device);
            }
            case 3 -> {
                Place place = VehicleFactory.eINSTANCE.createPlace();
                places.add(place);
                place.setName(name);
            }
            case 4 -> {
                if (!devices.isEmpty()) {
                    devices.remove(random.nextInt(devices.size()));
                }
            }
            case 5, 6 -> {
                if (!devices.isEmpty()) {
                    devices.get(random.nextInt(devices.size())).setName(random.nextInt(5) == 0 ? null : name);
                }
            }
            case 7 -> {
                if (!devices.isEmpty()) {
                    devices.move(random.nextInt(devices.size()), random.nextInt(devices.size()));
                }
            }
            case 8 -> {
                if (!devices.isEmpty() && random.nextInt(10) == 0) {
                    devices.removeAll(new ArrayList<>(devices.subList(0, devices.size() / 2)));
                }
            }
            default -> {
                if (!devices.isEmpty()) {
                    Device device = VehicleFactory.eINSTANCE.createDevice();
                    device.setName(name);
                    devices.set(random.nextInt(devices.size()), device);
                }
            }
        }
    }

    @Test
    void numberOfVisitsGrowsWithTheNumberOfCables() {
        int small = visits(2_000);
        int large = visits(8_000);
        assertEquals(4.0, (double) large / small, 0.5);
    }

    private int visits(int cables) {
        Fleet fleet = new Fleet(folder);
        fleet.write("heron.vehicle", ManyCables.vehicle(cables));
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        assertEquals(List.of(), opened.faults());
        assertEquals(cables, opened.root().getArrangements().get(0).getCables().size());
        opened.root().eAllContents().forEachRemaining(Fragments::of);
        return opened.resource().scopes().visits();
    }
}
