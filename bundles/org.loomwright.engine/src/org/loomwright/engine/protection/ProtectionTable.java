// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.StudyResult;

/**
 * What the protection study found. Immutable.
 *
 * @param plan       the plan
 * @param conductors a row for each conductor, in the plan's order
 * @param devices    a row for each protective device, in the plan's order
 * @param uncleared  faults that do not clear in time
 * @param explainer  how the figures came about, made when asked
 */
public record ProtectionTable(Plan plan, List<ConductorProtection> conductors, List<DeviceProtection> devices,
        List<UnclearedFault> uncleared, StudyResult.Explainer explainer) {
    public ProtectionTable {
        conductors = List.copyOf(conductors);
        devices = List.copyOf(devices);
        uncleared = List.copyOf(uncleared);
    }

    /** Row of a conductor (index in the plan). */
    public ConductorProtection conductor(int conductor) {
        return conductors.get(conductor);
    }

    /** Row of a protective device (element), empty for other elements. */
    public Optional<DeviceProtection> device(int element) {
        return devices.stream().filter(row -> row.protector() == element).findFirst();
    }
}
