// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.util.List;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.rules.VehicleRules;
import org.loomwright.model.rules.Violation;
import org.loomwright.model.vehicle.Vehicle;

/** What cannot be meant in a vehicle, told as findings while it is edited; the command line refuses such files. */
public final class StructuralFindings {
    private StructuralFindings() {
    }

    /** Findings about the structure of a vehicle; in the thread that owns it. */
    public static List<Finding> of(Vehicle vehicle) {
        return VehicleRules.check(vehicle).stream().filter(Violation::blocking).map(StructuralFindings::finding).toList();
    }

    private static Finding finding(Violation violation) {
        String title = violation.message() + (violation.expected() == null ? "" : "; expected " + violation.expected());
        return Finding.of(violation.rule(), Severity.ERROR, Fragments.of(violation.element()),
                violation.feature() == null ? title : violation.feature() + ": " + title).build();
    }
}
