// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.edits.DeviceEdits;
import org.loomwright.model.edits.StructureEdits;
import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** What an import of a list makes of a vehicle; nothing is changed until it is carried out. */
public final class LoadListPlan {
    private final List<PlannedLoad> rows;
    private final Map<String, LoadEntry.Position> newPlaces;

    private LoadListPlan(List<PlannedLoad> rows, Map<String, LoadEntry.Position> newPlaces) {
        this.rows = List.copyOf(rows);
        this.newPlaces = Map.copyOf(newPlaces);
    }

    /** Plans the loads of a list for a vehicle. */
    public static LoadListPlan of(Vehicle vehicle, LoadList list) {
        LoadParts parts = new LoadParts(vehicle);
        Map<String, Place> places = new HashMap<>();
        vehicle.getPlaces().forEach(place -> {
            places.putIfAbsent(HeaderCell.plain(place.getName()), place);
            if (place.getLabel() != null) {
                places.putIfAbsent(HeaderCell.plain(place.getLabel()), place);
            }
        });
        Set<String> there = new HashSet<>();
        vehicle.getDevices().forEach(device -> there.add(known(device.getLabel(), device.getPlace())));
        Map<String, LoadEntry.Position> coming = new HashMap<>();
        List<PlannedLoad> rows = new ArrayList<>();
        for (LoadEntry entry : list.entries()) {
            rows.add(planned(vehicle, entry, parts, places, there, coming));
        }
        return new LoadListPlan(rows, coming);
    }

    private static PlannedLoad planned(Vehicle vehicle, LoadEntry entry, LoadParts parts, Map<String, Place> places,
            Set<String> there, Map<String, LoadEntry.Position> coming) {
        List<String> told = new ArrayList<>();
        Place place = places.get(HeaderCell.plain(entry.place()));
        String newPlace = newPlace(entry, place, coming, told);
        if (there.contains(known(label(entry, 1), place)) && newPlace == null) {
            return new PlannedLoad(entry, null, null, place, null, List.of("is in the vehicle already"));
        }
        DevicePart part = entry.part().isEmpty() ? parts.called(entry.name()) : parts.called(entry.part());
        if (part == null && !entry.part().isEmpty()) {
            told.add("no library that the vehicle uses has the part " + entry.part());
        }
        BigDecimal volts = entry.volts() == null ? nominal(vehicle) : entry.volts();
        BigDecimal watts = watts(entry, volts);
        if (part == null) {
            return standIn(entry, parts, volts, watts, place, newPlace, told);
        }
        toldOfPower(part, watts, told);
        return new PlannedLoad(entry, part, null, place, newPlace, told);
    }

    private static PlannedLoad standIn(LoadEntry entry, LoadParts parts, BigDecimal volts, BigDecimal watts, Place place,
            String newPlace, List<String> told) {
        DevicePart part = volts == null ? null : parts.standIn(volts);
        if (watts == null) {
            told.add("neither a part of a library nor power or current says what it takes");
        } else if (volts == null) {
            told.add("the vehicle has no domain, so the voltage has to be in the list");
        } else if (part == null) {
            told.add("no library that the vehicle uses has a load of any power for " + volts.toPlainString() + " V");
        }
        return watts == null || part == null ? new PlannedLoad(entry, null, null, place, null, told)
                : new PlannedLoad(entry, part, watts, place, newPlace, told);
    }

    private static String newPlace(LoadEntry entry, Place place, Map<String, LoadEntry.Position> coming, List<String> told) {
        String word = HeaderCell.plain(entry.place());
        if (place != null || word.isEmpty()) {
            return null;
        }
        if (coming.containsKey(word)) {
            return entry.place();
        }
        if (entry.position() == null) {
            told.add("the vehicle has no place " + entry.place() + ", and the list does not say where it is (x, y, z)");
            return null;
        }
        coming.put(word, entry.position());
        return entry.place();
    }

    private static void toldOfPower(DevicePart part, BigDecimal watts, List<String> told) {
        Demand demand = part.getDemands().get(0);
        if (watts != null && demand.getWatts() != null && demand.getWatts().compareTo(watts) != 0) {
            told.add("the part takes " + demand.getWatts().toPlainString() + " W, not " + watts.toPlainString()
                    + " W as in the list");
        }
    }

    private static BigDecimal watts(LoadEntry entry, BigDecimal volts) {
        if (entry.watts() != null || entry.amps() == null || volts == null) {
            return entry.watts();
        }
        BigDecimal watts = entry.amps().multiply(volts).stripTrailingZeros();
        return watts.scale() < 0 ? watts.setScale(0) : watts;
    }

    private static BigDecimal nominal(Vehicle vehicle) {
        return vehicle.getDomains().isEmpty() ? null : vehicle.getDomains().get(0).getNominalV();
    }

    private static String known(String label, Place place) {
        return HeaderCell.plain(label == null ? "" : label) + "@" + (place == null ? "" : place.getName());
    }

    private static String label(LoadEntry entry, int number) {
        return entry.count() == 1 ? entry.name() : entry.name() + " " + number;
    }

    /** What becomes of each entry, in the order of the list. */
    public List<PlannedLoad> rows() {
        return rows;
    }

    /** Number of loads that are made. */
    public int loads() {
        return rows.stream().filter(PlannedLoad::isMade).mapToInt(row -> row.entry().count()).sum();
    }

    /** Makes the loads, and the places that they need, in the vehicle that was planned for; returns the loads. */
    public List<Device> carryOut(Vehicle vehicle) {
        Map<String, Place> made = new HashMap<>();
        List<Device> devices = new ArrayList<>();
        for (PlannedLoad row : rows) {
            if (row.isMade()) {
                Place place = row.newPlace() == null ? row.place() : made.computeIfAbsent(HeaderCell.plain(row.newPlace()),
                        word -> place(vehicle, row.newPlace(), newPlaces.get(word)));
                for (int number = 1; number <= row.entry().count(); number++) {
                    devices.add(device(vehicle, row, place, number));
                }
            }
        }
        return devices;
    }

    private static Place place(Vehicle vehicle, String label, LoadEntry.Position at) {
        Place place = StructureEdits.addPlace(vehicle, null, at.xMm(), at.yMm(), at.zMm(), null);
        place.setLabel(label);
        return place;
    }

    private static Device device(Vehicle vehicle, PlannedLoad row, Place place, int number) {
        Device device = place == null ? DeviceEdits.addUnplaced(vehicle, row.part())
                : DeviceEdits.add(vehicle, row.part(), place);
        device.setLabel(label(row.entry(), number));
        if (row.entry().priority() != null) {
            device.setPriority(row.entry().priority());
        }
        if (!row.entry().note().isEmpty()) {
            device.setNote(row.entry().note());
        }
        if (row.watts() != null) {
            Setting power = VehicleFactory.eINSTANCE.createSetting();
            power.setElement(row.part().getDemands().get(0).getName());
            power.setQuantity("watts");
            power.setValue(row.watts());
            device.getSettings().add(power);
        }
        return device;
    }
}
