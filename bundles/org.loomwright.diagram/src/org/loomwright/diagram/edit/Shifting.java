// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.plan.PlanScale;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.edits.Spot;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;

/**
 * Moves on drawings. On the plan places move, in mm of the vehicle; the drawn plates of devices are put elsewhere on the sheet.
 * On
 * the other drawings everything moves on the sheet.
 */
final class Shifting {
    private final Drawn drawn;

    Shifting(Drawn drawn) {
        this.drawn = drawn;
    }

    boolean movable(EObject element) {
        return switch (drawn.view()) {
            case PLAN -> element instanceof Place place ? positioned(place) : element instanceof Device device
                    && Spot.of(device, drawn.arrangement()).known();
            case SIDE -> element instanceof Place place && positioned(place);
            case LINE -> element instanceof Device;
            case EARTH -> element instanceof Body;
        };
    }

    private static boolean positioned(Place place) {
        return place.getXMm() != null && place.getYMm() != null && place.getZMm() != null;
    }

    /** Moves each element by its own way, px of the sheet. */
    Outcome move(Map<String, Point> byPx) {
        Set<EObject> places = new LinkedHashSet<>();
        Map<EObject, Point> others = new LinkedHashMap<>();
        byPx.forEach((id, by) -> {
            EObject element = drawn.element(id);
            if (element instanceof Place place && drawn.view().toScale() && movable(place)) {
                places.add(place);
                place(place, by);
            } else if (element != null && movable(element)) {
                others.put(element, by);
            }
        });
        // plates keep their distance from a place that was moved
        others.keySet().removeIf(element -> element instanceof Device device && drawn.view().toScale()
                && places.contains(Spot.of(device, drawn.arrangement()).place()));
        if (drawn.view().toScale()) {
            seats(others);
        } else {
            others.forEach(this::onSheet);
        }
        if (places.isEmpty() && others.isEmpty()) {
            throw new IllegalArgumentException("nothing of this can be moved here");
        }
        return Outcome.quiet();
    }

    private void place(Place place, Point byPx) {
        BigDecimal along = Drawn.mm(byPx.x() * drawn.scale().mmPerPx());
        BigDecimal up = Drawn.mm(-byPx.y() * drawn.scale().mmPerPx());
        boolean above = drawn.view() == View.PLAN;
        DrawingEdits.movePlace(place, along, above ? up : BigDecimal.ZERO, above ? BigDecimal.ZERO : up);
    }

    /** Moves plates: that of a place with all its devices, once, and those of devices on runs. */
    private void seats(Map<EObject, Point> devices) {
        Map<EObject, Device> seats = new LinkedHashMap<>();
        devices.keySet().forEach(device -> {
            Place place = Spot.of((Device) device, drawn.arrangement()).place();
            seats.putIfAbsent(place == null ? device : place, (Device) device);
        });
        seats.forEach((seat, device) -> seat(seat, device, devices.get(device)));
    }

    private void seat(EObject seat, Device device, Point byPx) {
        Bounds plate = plate(Fragments.of(device));
        if (plate == null) {
            throw new IllegalArgumentException(drawn.label(device) + " is not drawn here");
        }
        Point spot = spotOnSheet(device);
        Point middle = plate.centre().moved(byPx.x(), byPx.y());
        double mmPerPx = drawn.scale().mmPerPx();
        DrawingEdits.seat(drawn.vehicle(), drawn.arrangement(), seat, Drawn.mm((middle.x() - spot.x()) * mmPerPx),
                Drawn.mm((spot.y() - middle.y()) * mmPerPx));
    }

    /** The plate a device lies on: its own, or that of all devices of its place; null when it is not drawn. */
    private Bounds plate(String device) {
        Bounds own = drawn.shape(device);
        return own == null ? null : drawn.hits().scene().groups().stream().filter(group -> PlanScale.TRAY.equals(group.name()))
                .map(Group::shape).filter(tray -> tray.holds(own.centre())).findFirst().orElse(own);
    }

    private void onSheet(EObject element, Point byPx) {
        String id = Fragments.of(element);
        Bounds room = drawn.shape(id);
        if (room == null) {
            throw new IllegalArgumentException(drawn.label(element) + " is not drawn here");
        }
        SheetItem known = item(id);
        double x = known != null && known.getX() != null ? known.getX().doubleValue() : room.left();
        double y = known != null && known.getY() != null ? known.getY().doubleValue() : room.top();
        DrawingEdits.moveTo(drawn.vehicle(), drawn.view().sheet(), drawn.arrangement(), element, StrictMath.rint(x + byPx.x()),
                StrictMath.rint(y + byPx.y()));
    }

    /** Where a device's leader begins. */
    private Point spotOnSheet(Device device) {
        Spot spot = Spot.of(device, drawn.arrangement());
        if (spot.place() != null) {
            Bounds ring = drawn.shape(Fragments.of(spot.place()));
            if (ring != null) {
                return ring.centre();
            }
        } else if (spot.run() != null) {
            Point at = RunLine.of(drawn, spot.run()).at(spot.atMm().doubleValue());
            if (at != null) {
                return at;
            }
        }
        throw new IllegalArgumentException("the place of " + drawn.label(device) + " is not drawn here");
    }

    private SheetItem item(String id) {
        Sheet sheet = DrawingEdits.sheet(drawn.vehicle(), drawn.view().sheet(), drawn.arrangement());
        return sheet == null ? null : sheet.getItems().stream().filter(item -> id.equals(item.getElement())).findFirst()
                .orElse(null);
    }
}
