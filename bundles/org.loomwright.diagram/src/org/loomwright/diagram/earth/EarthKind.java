// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import org.eclipse.emf.ecore.EClass;
import org.loomwright.model.vehicle.VehiclePackage;

/** What the earth diagram shows. */
public enum EarthKind {
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

    private final EClass type;
    private final boolean edge;
    private final String paletteGroup;

    EarthKind(EClass type, boolean edge, String paletteGroup) {
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

    /** The kind of an object of the model; null for what the diagram does not show. */
    public static EarthKind of(EClass type) {
        for (EarthKind kind : values()) {
            if (kind.type == type) {
                return kind;
            }
        }
        return null;
    }
}
