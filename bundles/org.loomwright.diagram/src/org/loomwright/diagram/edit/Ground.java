// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.plan.Outline;
import org.loomwright.diagram.plan.Spot;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.edits.StructureEdits;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Zone;

/**
 * Places made on the plan. The length across the view that a drawing does not show is taken from the nearest place: the height
 * from
 * above, the side from the side.
 */
final class Ground {
    private final Drawn drawn;

    Ground(Drawn drawn) {
        this.drawn = drawn;
    }

    Verdict makePlace(Point at) {
        return verdict(at, "place");
    }

    Verdict verdict(Point at, String what) {
        if (drawn.scale() == null) {
            return Verdict.refused("places are made on the plan");
        }
        Point mm = drawn.scale().toMm(at);
        return Verdict.allowed(what + ": x " + Drawn.mm(mm.x()).toPlainString() + (drawn.view() == View.PLAN ? ", y " : ", z ")
                + Drawn.mm(mm.y()).toPlainString() + " mm");
    }

    /** Makes a place at a point of the sheet. */
    Place make(Point at) {
        if (drawn.scale() == null) {
            throw new IllegalArgumentException("places are made on the plan");
        }
        Point mm = drawn.scale().toMm(at);
        boolean above = drawn.view() == View.PLAN;
        Place near = nearest(mm, above);
        BigDecimal up = Drawn.mm(mm.y());
        BigDecimal other = near == null ? BigDecimal.ZERO : above ? near.getZMm() : near.getYMm();
        return StructureEdits.addPlace(drawn.vehicle(), null, Drawn.mm(mm.x()), above ? up : other, above ? other : up,
                zone(at, near));
    }

    /** Makes a place, with a run to it from another where one is named. */
    Outcome make(Point at, String after) {
        Place from = drawn.element(after, Place.class);
        Place made = make(at);
        List<String> told = new ArrayList<>();
        told.add(drawn.label(made) + (drawn.view() == View.PLAN ? " is " + made.getZMm().toPlainString() + " mm above the ground"
                : " is " + made.getYMm().toPlainString() + " mm to the left of the centre line") + ", as its neighbour is");
        if (from != null) {
            Run run = StructureEdits.addRun(drawn.vehicle(), from, made);
            told.add(drawn.label(run) + " leads to it");
        }
        return new Outcome(Set.of(Fragments.of(made)), told);
    }

    private Place nearest(Point mm, boolean above) {
        Place nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Place place : drawn.vehicle().getPlaces()) {
            if (place.getXMm() != null && place.getYMm() != null && place.getZMm() != null) {
                double away = mm.distance(new Point(place.getXMm().doubleValue(), (above ? place.getYMm() : place.getZMm())
                        .doubleValue()));
                if (away < least) {
                    least = away;
                    nearest = place;
                }
            }
        }
        return nearest;
    }

    /** The smallest zone drawn around a point; else that of the nearest place. */
    private Zone zone(Point at, Place near) {
        Zone found = null;
        double least = Double.POSITIVE_INFINITY;
        for (Zone zone : drawn.view() == View.PLAN ? drawn.vehicle().getZones() : List.<Zone>of()) {
            Outline outline = Outline.read(zone.getOutline());
            Point mm = drawn.scale().toMm(at);
            if (outline != null && outline.area() < least && outline.holds(new Spot(mm.x(), mm.y()))) {
                least = outline.area();
                found = zone;
            }
        }
        return found != null || near == null ? found : near.getZone();
    }

    /** A device that went elsewhere lies with the others of its place again. */
    void reseat(Device device) {
        DrawingEdits.release(drawn.vehicle(), DiagramKind.PLAN, drawn.arrangement(), device);
    }
}
