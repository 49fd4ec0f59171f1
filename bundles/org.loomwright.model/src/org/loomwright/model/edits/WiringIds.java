// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.List;
import java.util.Objects;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

/** Finds cables and devices by the ids that studies name them by: {@code W3}, {@code spread/W3}, {@code spread/X30/1}. */
final class WiringIds {
    private final Vehicle vehicle;

    WiringIds(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** The cable of an id. */
    Cable cable(String id) {
        int slash = id.lastIndexOf('/');
        Cable found = named(slash < 0 ? vehicle.getCables() : arrangement(id.substring(0, slash), id).getCables(),
                id.substring(slash + 1));
        return found(found, "cable", id);
    }

    /** The device of a way's id, which ends with the way. */
    Device deviceOfWay(String id) {
        int way = id.lastIndexOf('/');
        if (way < 0) {
            throw new IllegalArgumentException(id + " names no way of a device");
        }
        String device = id.substring(0, way);
        int slash = device.lastIndexOf('/');
        Device found = named(slash < 0 ? vehicle.getDevices() : arrangement(device.substring(0, slash), id).getDevices(),
                device.substring(slash + 1));
        return found(found, "device", device);
    }

    /** The way's name in a way's id. */
    static String way(String id) {
        return id.substring(id.lastIndexOf('/') + 1);
    }

    private Arrangement arrangement(String name, String id) {
        return found(named(vehicle.getArrangements(), name), "arrangement", name + " of " + id);
    }

    private static <T extends Named> T named(List<T> all, String name) {
        return all.stream().filter(each -> Objects.equals(each.getName(), name)).findFirst().orElse(null);
    }

    private <T> T found(T element, String kind, String id) {
        if (element == null) {
            throw new IllegalArgumentException("vehicle " + vehicle.getName() + " has no " + kind + " " + id);
        }
        return element;
    }
}
