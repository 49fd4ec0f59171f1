// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
     * @param ends    price of the lugs, receptacles and so on that new cables name
     */
    public record Sheets(Map<String, DeviceSheet> devices, Tally ends) {
        public Sheets {
            devices = Map.copyOf(devices);
        }

        /** The sheet of a device; one without figures when its part is not known. */
        public DeviceSheet of(String device) {
            return devices.getOrDefault(device, UNKNOWN);
        }
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
        Tally ends = Tally.ZERO;
        for (Cable cable : cables) {
            for (Core core : Boolean.TRUE.equals(cable.getExisting()) ? List.<Core>of() : cable.getCores()) {
                ends = end(end(ends, core.getAEnd()), core.getBEnd());
            }
        }
        return new Sheets(sheets, ends);
    }

    private static Tally end(Tally sum, EndPart end) {
        return end == null || end.eIsProxy() ? sum : sum.with(number(end.getPrice()));
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
