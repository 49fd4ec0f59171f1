// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult;

/**
 * One vehicle in one arrangement, checked.
 *
 * @param file    file as the person named it
 * @param label   label of the vehicle; may be empty
 * @param adopted the arrangement is the adopted one
 * @param plan    what was checked
 * @param result  what the check says
 */
public record CheckedVehicle(String file, String label, boolean adopted, Plan plan, StudyResult result) {

    /** How element ids are shown. */
    public Designations designations() {
        return new Designations(plan.arrangement());
    }

    /** Id of the element that a person wrote, see {@link ElementIds}; null when this vehicle has none of that name. */
    public String element(String written) {
        return ElementIds.of(plan).find(written);
    }

    /** Findings that stand, as bad as the threshold or worse. */
    public List<Finding> standing(Severity threshold) {
        return result.findings().stream()
                .filter(finding -> finding.accepted() == null && finding.severity().atLeast(threshold)).toList();
    }

    /** Findings that a person accepted, as bad as the threshold or worse. */
    public List<Finding> accepted(Severity threshold) {
        return result.findings().stream()
                .filter(finding -> finding.accepted() != null && finding.severity().atLeast(threshold)).toList();
    }
}
