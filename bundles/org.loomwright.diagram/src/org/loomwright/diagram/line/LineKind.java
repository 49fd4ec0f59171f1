// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import org.eclipse.emf.ecore.EClass;
import org.loomwright.diagram.services.ElementKind;
import org.loomwright.model.vehicle.VehiclePackage;

/** What the line diagram shows. */
public enum LineKind implements ElementKind {
    /** A device: source, box, switchgear, load. */
    DEVICE(VehiclePackage.Literals.DEVICE, false, "equipment"),
    /** A way of a distribution point with its protective device. */
    WAY(VehiclePackage.Literals.WAY, false, "equipment"),
    /** An earth point at the end of a return. */
    EARTH_POINT(VehiclePackage.Literals.EARTH_POINT, false, "structure"),
    /** A cable. */
    CABLE(VehiclePackage.Literals.CABLE, true, "wiring");

    private final Traits traits;

    LineKind(EClass type, boolean edge, String paletteGroup) {
        traits = new Traits(type, edge, paletteGroup);
    }

    @Override
    public Traits traits() {
        return traits;
    }

    /** The kind of an object of the model; null for what the diagram does not show. */
    public static LineKind of(EClass type) {
        return ElementKind.of(values(), type);
    }
}
