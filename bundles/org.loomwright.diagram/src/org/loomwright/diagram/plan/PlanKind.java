// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import org.eclipse.emf.ecore.EClass;
import org.loomwright.diagram.services.ElementKind;
import org.loomwright.model.vehicle.VehiclePackage;

/** What the plan shows. */
public enum PlanKind implements ElementKind {
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

    private final Traits traits;

    PlanKind(EClass type, boolean edge, String paletteGroup) {
        traits = new Traits(type, edge, paletteGroup);
    }

    @Override
    public Traits traits() {
        return traits;
    }

    /** The kind of an object of the model; null for what the diagram does not show. */
    public static PlanKind of(EClass type) {
        return ElementKind.of(values(), type);
    }
}
