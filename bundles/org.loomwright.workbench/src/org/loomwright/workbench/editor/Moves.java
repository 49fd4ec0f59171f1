// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.workbench.diagram.SceneCanvas;

/**
 * Turns what was moved on a drawing into a change of the model: on the plan places move, in mm of the vehicle; on the other
 * drawings positions of the sheet.
 */
final class Moves {
    private static final double SHEET_GRID_PX = 10;
    /** Steps of a place on the plan, mm; finer ones are typed into the properties. */
    private static final BigDecimal STEP_MM = BigDecimal.TEN;
    private final VehicleDocument document;
    private final SceneCanvas canvas;

    Moves(VehicleDocument document, SceneCanvas canvas) {
        this.document = document;
        this.canvas = canvas;
    }

    /** Grid of a drawing, px; 0 for none. */
    double gridPx(DrawingKind kind) {
        return kind == DrawingKind.LINE || kind == DrawingKind.EARTH ? SHEET_GRID_PX : 0;
    }

    /** True when an element can be moved on a drawing. */
    boolean movable(DrawingKind kind, String id) {
        EObject element = document.element(id);
        return switch (kind) {
            case PLAN, SIDE -> positioned(place(element));
            case LINE -> element instanceof Device;
            case EARTH -> element instanceof Body;
        };
    }

    private static boolean positioned(Place place) {
        return place != null && place.getXMm() != null && place.getYMm() != null && place.getZMm() != null;
    }

    /** Moves elements in one step that can be undone. */
    void move(DrawingKind kind, EditRequest.Move move) {
        String what = move.elements().size() == 1 ? move.elements().iterator().next() : Integer.toString(move.elements().size());
        String label = Words.of("edit.move", what);
        if (kind == DrawingKind.PLAN || kind == DrawingKind.SIDE) {
            double mmPerPx = mmPerPx(kind == DrawingKind.SIDE);
            Set<Place> places = new LinkedHashSet<>();
            move.elements().forEach(id -> places.add(place(document.element(id))));
            places.remove(null);
            BigDecimal along = steps(move.dxPx() * mmPerPx);
            BigDecimal up = steps(-move.dyPx() * mmPerPx);
            boolean above = kind == DrawingKind.PLAN;
            document.run(label, () -> places.forEach(place -> DrawingEdits.movePlace(place, along, above ? up : BigDecimal.ZERO,
                    above ? BigDecimal.ZERO : up)));
        } else {
            DiagramKind diagram = kind == DrawingKind.LINE ? DiagramKind.LINE : DiagramKind.EARTH;
            document.run(label, () -> move.elements().forEach(id -> onSheet(diagram, id, move)));
        }
    }

    private void onSheet(DiagramKind diagram, String id, EditRequest.Move move) {
        Bounds room = null;
        for (Group group : canvas.hits().groups(id)) {
            if (group.kind() == Group.Kind.NODE && group.shape() != null) {
                room = group.shape().with(room);
            }
        }
        if (room == null) {
            return;
        }
        Sheet sheet = DrawingEdits.sheet(document.vehicle(), diagram, document.arrangement());
        SheetItem known = sheet == null ? null
                : sheet.getItems().stream().filter(item -> id.equals(item.getElement())).findFirst().orElse(null);
        double x = known != null && known.getX() != null ? known.getX().doubleValue() : room.left();
        double y = known != null && known.getY() != null ? known.getY().doubleValue() : room.top();
        DrawingEdits.moveTo(document.vehicle(), diagram, document.arrangement(), document.element(id),
                StrictMath.rint(x + move.dxPx()), StrictMath.rint(y + move.dyPx()));
    }

    private Place place(EObject element) {
        if (element instanceof Place place) {
            return place;
        }
        if (element instanceof Device device && device.getRun() == null) {
            Arrangement arrangement = document.arrangement();
            if (arrangement != null) {
                for (Placement placement : arrangement.getPlacements()) {
                    if (placement.getDevice() == device) {
                        return placement.getPlace();
                    }
                }
            }
            return device.getPlace();
        }
        return null;
    }

    /** From the two drawn places that lie farthest apart along the vehicle: they are drawn where they are. */
    private double mmPerPx(boolean side) {
        Place first = null;
        Place last = null;
        for (Place place : document.vehicle().getPlaces()) {
            if (place.getXMm() != null && centre(place) != null) {
                first = first == null || place.getXMm().compareTo(first.getXMm()) < 0 ? place : first;
                last = last == null || place.getXMm().compareTo(last.getXMm()) > 0 ? place : last;
            }
        }
        if (first == null || first.getXMm().compareTo(last.getXMm()) == 0) {
            throw new IllegalArgumentException("the scale of the plan is not known: expected two places apart along the vehicle");
        }
        return last.getXMm().subtract(first.getXMm()).doubleValue() / (centre(last) - centre(first));
    }

    private Double centre(Place place) {
        for (Group group : canvas.hits().groups(Fragments.of(place))) {
            if (group.shape() != null) {
                return group.shape().centre().x();
            }
        }
        return null;
    }

    private static BigDecimal steps(double mm) {
        return BigDecimal.valueOf(mm).divide(STEP_MM, 0, RoundingMode.HALF_UP).multiply(STEP_MM);
    }
}
