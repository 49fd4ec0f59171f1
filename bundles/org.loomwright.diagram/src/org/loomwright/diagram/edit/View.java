// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import org.loomwright.diagram.earth.EarthServices;
import org.loomwright.diagram.line.LineServices;
import org.loomwright.diagram.plan.PlanServices;
import org.loomwright.diagram.services.DiagramServices;
import org.loomwright.model.vehicle.DiagramKind;

/** The drawings on which a vehicle is edited. */
public enum View {
    /** To scale, from above. */
    PLAN(DiagramKind.PLAN, new PlanServices()),
    /** To scale, from the side. */
    SIDE(DiagramKind.PLAN, new PlanServices()),
    /** Single-line circuit. */
    LINE(DiagramKind.LINE, new LineServices()),
    /** Structure bodies with their bonds and returns. */
    EARTH(DiagramKind.EARTH, new EarthServices());

    private final DiagramKind sheet;
    private final DiagramServices services;

    View(DiagramKind sheet, DiagramServices services) {
        this.sheet = sheet;
        this.services = services;
    }

    /** Kind of the sheet on which its positions and bends are kept. */
    public DiagramKind sheet() {
        return sheet;
    }

    /** True where positions are those of the vehicle, mm. */
    public boolean toScale() {
        return sheet == DiagramKind.PLAN;
    }

    DiagramServices services() {
        return services;
    }
}
