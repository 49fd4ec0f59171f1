// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** Edits of drawings: where a person wants something to stand. Nothing electrical changes, but the place of a plan is real. */
public final class DrawingEdits {
    private static final int DECIMALS = 1;
    private static final String POINT = "-?[0-9]+([.][0-9]+)?,-?[0-9]+([.][0-9]+)?";

    private DrawingEdits() {
    }

    /**
     * Puts an element somewhere on the sheet of a line or earth diagram; the sheet is made when there is none yet.
     *
     * @param arrangement arrangement whose sheet it is; null for the sheet of what all arrangements share
     * @param x           to the right, px of the sheet, kept to a tenth
     * @param y           downwards, px of the sheet, kept to a tenth
     * @throws IllegalArgumentException for a plan, whose positions are those of places; for an element out of sight
     */
    public static SheetItem moveTo(Vehicle vehicle, DiagramKind diagram, Arrangement arrangement, EObject element, double x,
            double y) {
        SheetItem item = item(vehicle, diagram, arrangement, element);
        item.setX(tenth(x));
        item.setY(tenth(y));
        return item;
    }

    /**
     * Puts the drawn plate of a place's devices, or of one device, somewhere beside its spot on the plan seen from above. Where
     * the
     * devices are in the vehicle does not change.
     *
     * @param element a place, or a device
     * @param xMm     middle of the plate from the spot, forward, mm of the vehicle
     * @param yMm     middle of the plate from the spot, to the left, mm of the vehicle
     */
    public static SheetItem seat(Vehicle vehicle, Arrangement arrangement, EObject element, BigDecimal xMm, BigDecimal yMm) {
        if (!(element instanceof Place) && !(element instanceof Device)) {
            throw new IllegalArgumentException("the " + ElementPath.of(element) + " has no plate on the plan");
        }
        SheetItem item = known(vehicle, DiagramKind.PLAN, arrangement, element);
        item.setX(xMm);
        item.setY(yMm);
        return item;
    }

    /**
     * Sets the bends of an edge on the sheet of a line or earth diagram, or of a run on the plan.
     *
     * @param bends points as {@code x,y x,y ...}: px of the sheet; on the plan mm of the vehicle, forward and to the left. Null
     *              to let
     *              the layout choose again
     */
    public static SheetItem bend(Vehicle vehicle, DiagramKind diagram, Arrangement arrangement, EObject edge, String bends) {
        if (diagram == DiagramKind.PLAN && !(edge instanceof Run)) {
            throw new IllegalArgumentException("on the plan runs can be bent, cables follow them; the " + ElementPath.of(edge)
                    + " is none");
        }
        if (bends != null && !bends.matches(POINT + "( " + POINT + ")*")) {
            throw new IllegalArgumentException("the bends of the " + ElementPath.of(edge) + " are '" + bends
                    + "'; expected points as x,y x,y ...");
        }
        SheetItem item = known(vehicle, diagram, arrangement, edge);
        item.setBends(bends);
        if (bends == null && item.getX() == null && item.getY() == null) {
            ((Sheet) item.eContainer()).getItems().remove(item);
        }
        return item;
    }

    /** Lets the layout choose again where an element stands; true when a person had chosen. */
    public static boolean release(Vehicle vehicle, DiagramKind diagram, Arrangement arrangement, EObject element) {
        Sheet sheet = sheet(vehicle, diagram, arrangement);
        return sheet != null && sheet.getItems().removeIf(item -> Fragments.of(element).equals(item.getElement()));
    }

    /**
     * Moves a place of the vehicle; everything in it, and the runs that end there, come along. Runs without a stated length get
     * longer or shorter.
     *
     * @param dxMm forward, mm
     * @param dyMm to the left, mm
     * @param dzMm up, mm
     */
    public static void movePlace(Place place, BigDecimal dxMm, BigDecimal dyMm, BigDecimal dzMm) {
        if (place.getXMm() == null || place.getYMm() == null || place.getZMm() == null) {
            throw new IllegalArgumentException("the " + ElementPath.of(place)
                    + " has no position yet; expected x, y and z in mm");
        }
        if (dxMm.signum() != 0) {
            place.setXMm(place.getXMm().add(dxMm));
        }
        if (dyMm.signum() != 0) {
            place.setYMm(place.getYMm().add(dyMm));
        }
        if (dzMm.signum() != 0) {
            place.setZMm(place.getZMm().add(dzMm));
        }
    }

    /** The sheet of a diagram and arrangement; null when there is none. */
    public static Sheet sheet(Vehicle vehicle, DiagramKind diagram, Arrangement arrangement) {
        return vehicle.getSheets().stream().filter(sheet -> sheet.isSetDiagram() && sheet.getDiagram() == diagram
                && Objects.equals(sheet.getArrangement(), arrangement)).findFirst().orElse(null);
    }

    private static SheetItem item(Vehicle vehicle, DiagramKind diagram, Arrangement arrangement, EObject element) {
        if (diagram == DiagramKind.PLAN) {
            throw new IllegalArgumentException("positions of the plan are those of places; the " + ElementPath.of(element)
                    + " cannot be put elsewhere on its sheet");
        }
        return known(vehicle, diagram, arrangement, element);
    }

    /** The item of an element; made when there is none, with its sheet. */
    private static SheetItem known(Vehicle vehicle, DiagramKind diagram, Arrangement arrangement, EObject element) {
        Scopes.require(element, "element");
        if (Scopes.vehicle(element) != vehicle || Scopes.arrangement(element) != null
                && Scopes.arrangement(element) != arrangement) {
            throw new IllegalArgumentException("the " + ElementPath.of(element) + " is not on this drawing");
        }
        Sheet sheet = sheet(vehicle, diagram, arrangement);
        if (sheet == null) {
            sheet = VehicleFactory.eINSTANCE.createSheet();
            String stem = diagram.getLiteral() + (arrangement == null ? "" : "-" + arrangement.getName());
            sheet.setName(free(vehicle, stem));
            sheet.setDiagram(diagram);
            sheet.setArrangement(arrangement);
            vehicle.getSheets().add(sheet);
        }
        String fragment = Fragments.of(element);
        for (SheetItem known : sheet.getItems()) {
            if (fragment.equals(known.getElement())) {
                return known;
            }
        }
        SheetItem item = VehicleFactory.eINSTANCE.createSheetItem();
        item.setElement(fragment);
        sheet.getItems().add(item);
        return item;
    }

    private static String free(Vehicle vehicle, String stem) {
        return Fragments.find(vehicle, stem) == null ? stem : NewNames.free(vehicle, stem + "-");
    }

    private static BigDecimal tenth(double px) {
        BigDecimal rounded = BigDecimal.valueOf(px).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
