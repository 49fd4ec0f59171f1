// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.model.vehicle.Vehicle;

/**
 * One arrangement, sized.
 *
 * @param file    file as the person named it
 * @param vehicle the vehicle
 * @param adopted the arrangement is the adopted one
 * @param plan    the plan as it stood
 * @param result  what sizing came to
 */
record SizedVehicle(String file, Vehicle vehicle, boolean adopted, Plan plan, SizingResult result) {

    /** How element ids are shown. */
    Designations designations() {
        return new Designations(plan.arrangement());
    }

    /** Id of the element that a person wrote; null when the vehicle has none of that name. */
    String element(String written) {
        return new CheckedVehicle(file, label(), adopted, plan, null).element(written);
    }

    /** Label of the vehicle; may be empty. */
    String label() {
        return vehicle.getLabel() == null ? "" : vehicle.getLabel();
    }
}
