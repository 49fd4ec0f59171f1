// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.palette;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.loomwright.diagram.symbol.DeviceSymbols;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A part that can be placed.
 *
 * @param part   {@code library/part}
 * @param label  what it is called
 * @param group  what it is for
 * @param symbol its symbol
 */
public record PartOffer(String part, String label, Group group, SymbolKind symbol) {
    /** What parts are for, in the order in which a system is built. */
    public enum Group {
        /** Batteries, generators, chargers. */
        SOURCES,
        /** Boxes, bars, holders, joints. */
        DISTRIBUTION,
        /** What switches and controls. */
        SWITCHING,
        /** What changes one voltage into another. */
        CONVERSION,
        /** Lamps. */
        LIGHT,
        /** Heaters and coolers. */
        HEAT,
        /** Motors. */
        DRIVES,
        /** Sensors, shunts, displays. */
        MEASURING,
        /** Radios, sockets, and loads of other kinds. */
        OTHER;

        static Group of(DeviceKind kind) {
            return switch (kind) {
                case BATTERY, ALTERNATOR, SOLAR_PANEL, CHARGER -> SOURCES;
                case BOX, BUSBAR, SPLICE, CONNECTOR -> DISTRIBUTION;
                case RELAY, SWITCH, ISOLATOR, CUT_OUT, SPLIT_CHARGE, CONTROLLER -> SWITCHING;
                case CONVERTER, INVERTER -> CONVERSION;
                case LAMP -> LIGHT;
                case HEATER, COOLER -> HEAT;
                case STARTER, MOTOR -> DRIVES;
                case SENSOR, SHUNT, SCREEN, MONITOR -> MEASURING;
                case RADIO, SOCKET, LOAD -> OTHER;
            };
        }
    }

    /** Parts of the libraries that a vehicle uses, by what they are for; groups without parts are left out. */
    public static Map<Group, List<PartOffer>> of(Vehicle vehicle) {
        Set<PartsLibrary> libraries = new LinkedHashSet<>();
        vehicle.getLibraries().forEach(library -> collect(library, libraries));
        Map<Group, List<PartOffer>> offers = new EnumMap<>(Group.class);
        for (PartsLibrary library : libraries) {
            for (DevicePart part : library.getDevices()) {
                PartOffer offer = offer(library, part);
                offers.computeIfAbsent(offer.group(), group -> new ArrayList<>()).add(offer);
            }
        }
        return offers;
    }

    private static void collect(PartsLibrary library, Set<PartsLibrary> all) {
        if (!library.eIsProxy() && all.add(library)) {
            library.getUses().forEach(used -> collect(used, all));
        }
    }

    private static PartOffer offer(PartsLibrary library, DevicePart part) {
        String label = part.getLabel() == null || part.getLabel().isBlank() ? part.getName() : part.getLabel();
        return new PartOffer(library.getName() + "/" + part.getName(), label,
                part.isSetKind() ? Group.of(part.getKind()) : Group.OTHER, DeviceSymbols.of(part));
    }

    /** True when each word that is sought is in its name or label. */
    public boolean fits(String sought) {
        String text = (part + " " + label).toLowerCase(Locale.ROOT);
        for (String word : sought.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
