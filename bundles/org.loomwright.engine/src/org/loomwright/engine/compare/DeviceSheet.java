// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.model.edits.SectionEnds;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What the library states of a device beyond its electrical side; NaN where it states nothing.
 *
 * @param price   price, in the library's currency
 * @param massKg  mass, kg
 * @param areaCm2 length times width, cm2
 * @param ways    number of its ways
 */
public record DeviceSheet(double price, double massKg, double areaCm2, int ways) {
    private static final DeviceSheet UNKNOWN = new DeviceSheet(Double.NaN, Double.NaN, Double.NaN, 0);

    /**
     * Sheets of what is wired in an arrangement.
     *
     * @param devices by id of the device in the plan
     * @param ends    lugs, receptacles and so on that new cables name, by id of the cable
     */
    public record Sheets(Map<String, DeviceSheet> devices, Map<String, List<NamedEnd>> ends) {
        public Sheets {
            devices = Map.copyOf(devices);
            ends = Collections.unmodifiableMap(new TreeMap<>(ends));
        }

        /** Price of all ends, each in the size for its cable's section in a plan. */
        public Tally endsFor(Plan plan) {
            Tally sum = Tally.ZERO;
            for (Plan.Cable cable : plan.cables()) {
                for (NamedEnd end : ends.getOrDefault(cable.id(), List.of())) {
                    sum = sum.with(end.price(cable.sectionMm2()));
                }
            }
            return sum;
        }

        /** The sheet of a device; one without figures when its part is not known. */
        public DeviceSheet of(String device) {
            return devices.getOrDefault(device, UNKNOWN);
        }
    }

    /**
     * An end that a cable names, and the like it for other sections.
     *
     * @param sizes the one named first
     */
    public record NamedEnd(List<EndSize> sizes) {
        public NamedEnd {
            sizes = List.copyOf(sizes);
        }

        /** Price of the one for a section; of the one named where none is made for it. */
        double price(double sectionMm2) {
            return sizes.stream().filter(size -> sectionMm2 >= size.fromMm2() && sectionMm2 <= size.toMm2()).findFirst()
                    .orElse(sizes.get(0)).price();
        }
    }

    /** Sections that an end takes, mm2, and its price, NaN when not stated. */
    public record EndSize(double fromMm2, double toMm2, double price) {
    }

    /** The sheets for an arrangement; null for a vehicle without any. */
    public static Sheets of(Vehicle vehicle, Arrangement arrangement) {
        Map<String, DeviceSheet> sheets = new LinkedHashMap<>();
        vehicle.getDevices().forEach(device -> sheets.put(device.getName(), of(device)));
        List<Cable> cables = new ArrayList<>(vehicle.getCables());
        if (arrangement != null) {
            arrangement.getDevices().forEach(device -> sheets.put(arrangement.getName() + "/" + device.getName(), of(device)));
            cables.addAll(arrangement.getCables());
        }
        SectionEnds fitting = new SectionEnds(vehicle);
        Map<String, List<NamedEnd>> ends = new TreeMap<>();
        for (Cable cable : cables) {
            String id = cable.eContainer() == arrangement && arrangement != null ? arrangement.getName() + "/" + cable.getName()
                    : cable.getName();
            for (Core core : Boolean.TRUE.equals(cable.getExisting()) ? List.<Core>of() : cable.getCores()) {
                end(core.getAEnd(), fitting).ifPresent(ends.computeIfAbsent(id, i -> new ArrayList<>())::add);
                end(core.getBEnd(), fitting).ifPresent(ends.computeIfAbsent(id, i -> new ArrayList<>())::add);
            }
        }
        return new Sheets(sheets, ends);
    }

    private static Optional<NamedEnd> end(EndPart end, SectionEnds fitting) {
        if (end == null || end.eIsProxy()) {
            return Optional.empty();
        }
        List<EndSize> sizes = new ArrayList<>(List.of(size(end)));
        fitting.like(end).forEach(other -> sizes.add(size(other)));
        return Optional.of(new NamedEnd(sizes));
    }

    private static EndSize size(EndPart end) {
        return new EndSize(end.getSectionMinMm2() == null ? 0 : end.getSectionMinMm2().doubleValue(),
                end.getSectionMaxMm2() == null ? Double.POSITIVE_INFINITY : end.getSectionMaxMm2().doubleValue(),
                number(end.getPrice()));
    }

    private static DeviceSheet of(Device device) {
        DevicePart part = device.getPart();
        if (part == null || part.eIsProxy()) {
            return UNKNOWN;
        }
        return new DeviceSheet(number(part.getPrice()), number(part.getMassG()) / 1000,
                number(part.getLengthMm()) * number(part.getWidthMm()) / 100, part.getWays().size());
    }

    private static double number(BigDecimal value) {
        return value == null ? Double.NaN : value.doubleValue();
    }
}
