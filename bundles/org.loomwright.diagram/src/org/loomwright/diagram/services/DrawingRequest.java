// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What is to be drawn. A scene is made of it in the thread that owns the model.
 *
 * @param vehicle     the vehicle
 * @param arrangement its arrangement; null for what all arrangements share
 * @param study       what the engine found out; null when it was not asked yet
 * @param caseName    case whose figures are wanted; null for none
 * @param overlay     what colours show; null for nothing
 * @param preferences how figures are shown
 * @param lostBond    id of a strap that is taken out, for the earth diagram; null for none
 */
public record DrawingRequest(Vehicle vehicle, Arrangement arrangement, StudyView study, String caseName, OverlayKind overlay,
        DrawingPreferences preferences, String lostBond) {

    /** A request about the vehicle as it is. */
    public DrawingRequest(Vehicle vehicle, Arrangement arrangement, StudyView study, String caseName, OverlayKind overlay,
            DrawingPreferences preferences) {
        this(vehicle, arrangement, study, caseName, overlay, preferences, null);
    }

    /** A vehicle in its adopted arrangement, or its first, without figures. */
    public static DrawingRequest of(Vehicle vehicle) {
        Arrangement shown = vehicle.getAdopted() != null ? vehicle.getAdopted()
                : vehicle.getArrangements().isEmpty() ? null : vehicle.getArrangements().get(0);
        return new DrawingRequest(vehicle, shown, null, null, null, DrawingPreferences.metric());
    }

    /** The same with figures. */
    public DrawingRequest with(StudyView view, String shownCase) {
        return new DrawingRequest(vehicle, arrangement, view, shownCase, overlay, preferences, lostBond);
    }

    /** The same with a strap taken out; null for none. */
    public DrawingRequest lost(String bond) {
        return new DrawingRequest(vehicle, arrangement, study, caseName, overlay, preferences, bond);
    }

    /** What the lost strap comes to; null when none is lost, or there are no figures. */
    public LostStrap loss() {
        return study == null || caseName == null || lostBond == null ? null : study.lost(caseName, lostBond);
    }

    /** Figures of the case as it is; null when there are none. */
    public CaseView figures() {
        return study == null || caseName == null ? null : study.caseView(caseName);
    }
}
