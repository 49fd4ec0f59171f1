// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.plan.PlanScale;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.edits.Connections;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** A vehicle and its drawing, as all gestures look at them. */
final class Drawn {
    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final View view;
    private final HitIndex hits;
    private final PlanScale scale;
    private Connections connections;

    Drawn(Vehicle vehicle, Arrangement arrangement, View view, HitIndex hits) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        this.view = view;
        this.hits = hits;
        scale = !view.toScale() ? null : PlanScale.of(vehicle, arrangement, view == View.SIDE ? PlanView.SIDE : PlanView.ABOVE,
                hits.scene());
    }

    Vehicle vehicle() {
        return vehicle;
    }

    Arrangement arrangement() {
        return arrangement;
    }

    View view() {
        return view;
    }

    HitIndex hits() {
        return hits;
    }

    /** Scale of a plan; null where positions are those of the sheet. */
    PlanScale scale() {
        return scale;
    }

    /** What may be joined; looked up when first asked for. */
    Connections connections() {
        if (connections == null) {
            connections = Connections.of(vehicle, arrangement);
        }
        return connections;
    }

    EObject element(String id) {
        return id == null ? null : Fragments.find(vehicle, id);
    }

    <T extends EObject> T element(String id, Class<T> type) {
        EObject found = element(id);
        return type.isInstance(found) ? type.cast(found) : null;
    }

    <T extends EObject> List<T> elements(Collection<String> ids, Class<T> type) {
        List<T> found = new ArrayList<>();
        for (String id : ids) {
            T element = element(id, type);
            if (element != null && !found.contains(element)) {
                found.add(element);
            }
        }
        return found;
    }

    /** What an element is called here. */
    String label(EObject element) {
        if (element == null) {
            return "";
        }
        String label = view.services().label(element);
        return label.isEmpty() ? Fragments.of(element) : label;
    }

    /** The room of an element's own shape; null when it has none. */
    Bounds shape(String id) {
        return hits.shape(id);
    }

    /** Lines of an edge, as drawn. */
    List<List<Point>> lines(String id) {
        return hits.lines(id);
    }

    /** Whole mm. */
    static BigDecimal mm(double value) {
        return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP);
    }
}
