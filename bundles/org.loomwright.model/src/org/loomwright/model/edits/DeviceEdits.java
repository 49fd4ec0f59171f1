// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Edits that add devices from the library. They are named by the class letter of their part and the first number that is free.
 * Each throws before it changes anything.
 */
public final class DeviceEdits {
    private DeviceEdits() {
    }

    /** The part of the vehicle's libraries that is written {@code part} or {@code library/part}. */
    public static DevicePart part(Vehicle vehicle, String written) {
        return new WrittenParts(vehicle).device(written);
    }

    /**
     * Where a new device of a part belongs: what distributes and switches to the arrangement looked at, for that is its way of
     * wiring; loads and sources to the vehicle, since all arrangements have them.
     *
     * @param arrangement null for what all arrangements share
     */
    public static EObject holder(Vehicle vehicle, Arrangement arrangement, DevicePart part) {
        if (arrangement == null || part == null || !part.isSetKind()) {
            return vehicle;
        }
        return switch (part.getKind()) {
            case BOX, BUSBAR, SPLICE, CONNECTOR, RELAY, SWITCH, ISOLATOR, CUT_OUT, SPLIT_CHARGE, SHUNT -> arrangement;
            default -> vehicle;
        };
    }

    /**
     * Adds a device at a place.
     *
     * @param holder the vehicle, or an arrangement for its own device
     */
    public static Device add(EObject holder, DevicePart part, Place place) {
        Scopes.require(place, "place");
        requireUsable(holder, part);
        return WiringEdits.addDevice(holder, name(holder, part), part, place);
    }

    /** Adds a device whose place is not known yet. */
    public static Device addUnplaced(EObject holder, DevicePart part) {
        requireUsable(holder, part);
        return WiringEdits.addDevice(holder, name(holder, part), part, null);
    }

    /**
     * Adds a device on a run.
     *
     * @param atMm distance from the run's first place, mm
     */
    public static Device addOnRun(EObject holder, DevicePart part, Run run, BigDecimal atMm) {
        requireUsable(holder, part);
        Scopes.requireVisible(holder, run);
        VehicleEdits.requireOnRun(run, atMm);
        Device device = WiringEdits.addDevice(holder, name(holder, part), part, null);
        VehicleEdits.placeOnRun(device, run, atMm);
        return device;
    }

    /** Adds a device inside another, for example a relay in its box. */
    public static Device addWithin(EObject holder, DevicePart part, Device box) {
        Scopes.require(box, "device");
        requireUsable(holder, part);
        Scopes.requireVisible(holder, box);
        Device device = WiringEdits.addDevice(holder, name(holder, part), part, null);
        device.setMountedIn(box);
        return device;
    }

    private static String name(EObject holder, DevicePart part) {
        return NewNames.unshadowed(holder, ClassLetters.of(part));
    }

    private static void requireUsable(EObject holder, DevicePart part) {
        Scopes.require(part, "part");
        if (!(holder instanceof Vehicle) && !(holder instanceof Arrangement)) {
            throw new IllegalArgumentException("devices and cables belong to a vehicle or an arrangement");
        }
        if (!new WrittenParts(Scopes.vehicle(holder)).has(part)) {
            throw new IllegalArgumentException("the " + ElementPath.of(part) + " is in no library that the "
                    + ElementPath.of(Scopes.vehicle(holder)) + " uses");
        }
    }
}
