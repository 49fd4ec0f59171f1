// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.headless.check.CheckedVehicle;

/**
 * One arrangement, solved, checked and measured.
 *
 * @param label   its label; may be empty
 * @param checked what the check says
 * @param figures its figures
 */
record StudiedArrangement(String label, CheckedVehicle checked, ArrangementFigures figures) {

    /** Name for people; {@code as it is} for a vehicle without arrangements. */
    String name() {
        return figures.arrangement().isEmpty() ? "as it is" : figures.arrangement();
    }
}
