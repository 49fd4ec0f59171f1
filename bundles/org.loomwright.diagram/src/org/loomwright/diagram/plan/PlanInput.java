// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.overlay.OverlayValues;
import org.loomwright.engine.result.Finding;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What a plan is drawn from.
 *
 * @param arrangement null for what all arrangements share
 * @param findings    findings of the arrangement; null when it was not analysed
 * @param caseName    case shown, null for none
 * @param overlay     values of the overlay shown, null for none
 */
record PlanInput(Vehicle vehicle, Arrangement arrangement, PlanView view, List<Finding> findings, String caseName,
        OverlayValues overlay) {
}
