// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import org.eclipse.emf.ecore.EClass;
import org.loomwright.model.vehicle.VehiclePackage;

/** What the line diagram shows. */
public enum LineKind {
    /** A device: source, box, switchgear, load. */
    DEVICE(VehiclePackage.Literals.DEVICE, false, "equipment"),
    /** A way of a distribution point with its protective device. */
    WAY(VehiclePackage.Literals.WAY, false, "equipment"),
    /** An earth point at the end of a return. */
    EARTH_POINT(VehiclePackage.Literals.EARTH_POINT, false, "structure"),
    /** A cable. */
    CABLE(VehiclePackage.Literals.CABLE, true, "wiring");

    private final EClass type;
    private final boolean edge;
    private final String paletteGroup;

    LineKind(EClass type, boolean edge, String paletteGroup) {
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
    public static LineKind of(EClass type) {
        for (LineKind kind : values()) {
            if (kind.type == type) {
                return kind;
            }
        }
        return null;
    }
}
