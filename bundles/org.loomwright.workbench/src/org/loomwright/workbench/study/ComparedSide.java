// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.compare.DeviceSheet;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * One arrangement to be compared, as it stands.
 *
 * @param name      its name
 * @param label     what it is called for people
 * @param assembled the vehicle in this arrangement
 * @param sheets    prices, masses and sizes of its devices
 */
public record ComparedSide(String name, String label, AssemblyResult assembled, DeviceSheet.Sheets sheets) {
    /** The arrangements of a vehicle as they stand, the first ones up to a number; in the thread that owns it. */
    public static List<ComparedSide> of(Vehicle vehicle, int most) {
        List<ComparedSide> sides = new ArrayList<>();
        for (Arrangement each : vehicle.getArrangements()) {
            if (sides.size() < most) {
                String label = each.getLabel() == null || each.getLabel().isBlank() ? each.getName() : each.getLabel().strip();
                sides.add(new ComparedSide(each.getName(), label, Assembly.assemble(vehicle, each, null),
                        DeviceSheet.of(vehicle, each)));
            }
        }
        return sides;
    }
}
