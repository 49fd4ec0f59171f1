// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import org.eclipse.emf.ecore.EClass;
import org.loomwright.diagram.services.ElementKind;
import org.loomwright.model.vehicle.VehiclePackage;

/** What the earth diagram shows. */
public enum EarthKind implements ElementKind {
    /** A structure body, drawn as an area. */
    BODY(VehiclePackage.Literals.BODY, false, "structure"),
    /** A seam between two bodies. */
    SEAM(VehiclePackage.Literals.BODY_LINK, true, "structure"),
    /** An earth point at the rim of its body. */
    EARTH_POINT(VehiclePackage.Literals.EARTH_POINT, false, "structure"),
    /** A strap or bolted joint between two earth points. */
    BOND(VehiclePackage.Literals.BOND, true, "structure"),
    /** A cable that ends at an earth point. */
    RETURN(VehiclePackage.Literals.CABLE, true, "equipment");

    private final Traits traits;

    EarthKind(EClass type, boolean edge, String paletteGroup) {
        traits = new Traits(type, edge, paletteGroup);
    }

    @Override
    public Traits traits() {
        return traits;
    }

    /** The kind of an object of the model; null for what the diagram does not show. */
    public static EarthKind of(EClass type) {
        return ElementKind.of(values(), type);
    }
}
