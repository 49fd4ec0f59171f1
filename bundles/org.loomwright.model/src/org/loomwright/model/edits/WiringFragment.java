// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A copy of devices and cables, with the cables that lie wholly between the devices, to be added to the same or another vehicle
 * or
 * arrangement, any number of times; see {@link Pasting}. Later changes of what was copied do not show in it.
 */
public final class WiringFragment {
    private final List<Device> devices = new ArrayList<>();
    private final List<Cable> cables = new ArrayList<>();
    private final Map<Device, Spot> spots = new LinkedHashMap<>();
    private final Set<EObject> shared = new LinkedHashSet<>();

    private WiringFragment() {
    }

    /**
     * Copies devices and cables; other elements are left out.
     *
     * @param arrangement the arrangement looked at; null for what all arrangements share
     * @throws IllegalArgumentException when there is no device and no cable among them
     */
    public static WiringFragment of(Vehicle vehicle, Arrangement arrangement, Collection<? extends EObject> elements) {
        List<Device> chosen = elements.stream().filter(Device.class::isInstance).map(Device.class::cast).distinct().toList();
        Set<Cable> between = new LinkedHashSet<>();
        Stream<Cable> own = arrangement == null ? Stream.of() : arrangement.getCables().stream();
        Stream.concat(vehicle.getCables().stream(), own)
                .filter(cable -> elements.contains(cable) || within(cable, chosen)).forEach(between::add);
        if (chosen.isEmpty() && between.isEmpty()) {
            throw new IllegalArgumentException("devices and cables can be copied; there is none among what is selected");
        }
        WiringFragment fragment = new WiringFragment();
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        copier.copyAll(chosen);
        copier.copyAll(between);
        copier.copyReferences();
        for (Device device : chosen) {
            Device copy = (Device) copier.get(device);
            fragment.devices.add(copy);
            fragment.spots.put(copy, Spot.of(device, arrangement));
            if (Scopes.arrangement(device) == null) {
                fragment.shared.add(copy);
            }
        }
        for (Cable cable : between) {
            Cable copy = (Cable) copier.get(cable);
            fragment.cables.add(copy);
            if (Scopes.arrangement(cable) == null) {
                fragment.shared.add(copy);
            }
        }
        return fragment;
    }

    private static boolean within(Cable cable, Collection<Device> devices) {
        boolean joined = false;
        for (Core core : cable.getCores()) {
            for (CoreEnd end : CoreEnd.values()) {
                WireEnd at = WireEnd.of(end.of(core));
                if (at != null && !(at instanceof WireEnd.Pin pin && devices.contains(pin.device()))) {
                    return false;
                }
                joined |= at != null;
            }
        }
        return joined;
    }

    List<Device> devices() {
        return devices;
    }

    List<Cable> cables() {
        return cables;
    }

    /** Where a copied device was. */
    Spot spot(Device copy) {
        return spots.get(copy);
    }

    /** True for a copy of what all arrangements share. */
    boolean shared(EObject copy) {
        return shared.contains(copy);
    }

    /** Names of the devices and cables, one a line, with their parts: for a clipboard of plain text. */
    public String text() {
        List<String> lines = new ArrayList<>();
        devices.forEach(device -> lines.add("-" + device.getName() + part(device.getPart())
                + (device.getLabel() == null ? "" : "\t" + device.getLabel())));
        cables.forEach(cable -> lines.add("-" + cable.getName() + part(cable.getPart())));
        return String.join("\n", lines);
    }

    private static String part(org.loomwright.model.parts.Part part) {
        return part == null || part.getName() == null ? "" : "\t" + part.getName();
    }
}
