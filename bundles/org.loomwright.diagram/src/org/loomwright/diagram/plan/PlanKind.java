// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import org.eclipse.emf.ecore.EClass;
import org.loomwright.model.vehicle.VehiclePackage;

/** What the plan shows. */
public enum PlanKind {
    /** A zone, drawn as ground. */
    ZONE(VehiclePackage.Literals.ZONE, false, "structure"),
    /** A structure body, drawn by its outline. */
    BODY(VehiclePackage.Literals.BODY, false, "structure"),
    /** A place, drawn as a ring. */
    PLACE(VehiclePackage.Literals.PLACE, false, "ways"),
    /** A run between two places, drawn as a duct. */
    RUN(VehiclePackage.Literals.RUN, true, "ways"),
    /** A device where it sits. */
    DEVICE(VehiclePackage.Literals.DEVICE, false, "equipment"),
    /** A cable along its runs. */
    CABLE(VehiclePackage.Literals.CABLE, true, "equipment"),
    /** An earth point where it sits. */
    EARTH_POINT(VehiclePackage.Literals.EARTH_POINT, false, "structure");

    private final EClass type;
    private final boolean edge;
    private final String paletteGroup;

    PlanKind(EClass type, boolean edge, String paletteGroup) {
        this.type = type;
        this.edge = edge;
        this.paletteGroup = paletteGroup;
    }

    /** Class of the model's objects of this kind. */
    public EClass type() {
        return type;
    }

    /** True for what is drawn as lines between two others. */
    public boolean edge() {
        return edge;
    }

    /** Group of the palette that makes such elements. */
    public String paletteGroup() {
        return paletteGroup;
    }

    /** The kind of an object of the model; null for what the plan does not show. */
    public static PlanKind of(EClass type) {
        for (PlanKind kind : values()) {
            if (kind.type == type) {
                return kind;
            }
        }
        return null;
    }
}
