// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Zone;

/** Edits that add places, runs, earth points and seams to a vehicle. Each throws before it changes anything. */
public final class StructureEdits {
    private StructureEdits() {
    }

    /**
     * Adds a place.
     *
     * @param name null for P and the first free number
     * @param xMm  forward from the rearmost point, mm
     * @param yMm  to the left of the centre line, mm
     * @param zMm  up from the ground, mm
     * @param zone may be null
     */
    public static Place addPlace(Vehicle vehicle, String name, BigDecimal xMm, BigDecimal yMm, BigDecimal zMm, Zone zone) {
        Scopes.require(xMm, "x");
        Scopes.require(yMm, "y");
        Scopes.require(zMm, "z");
        Scopes.requireVisible(vehicle, zone);
        Place place = VehicleFactory.eINSTANCE.createPlace();
        String own = name == null ? NewNames.unshadowed(vehicle, "P") : name;
        NewNames.check(vehicle, place, own);
        place.setName(own);
        place.setXMm(xMm);
        place.setYMm(yMm);
        place.setZMm(zMm);
        place.setZone(zone);
        vehicle.getPlaces().add(place);
        return place;
    }

    /**
     * Adds a run between two places; as long as the straight distance until its length is stated.
     *
     * @throws IllegalArgumentException when it would lead back to where it begins, or a run joins the places already
     */
    public static Run addRun(Vehicle vehicle, Place from, Place to) {
        requireRun(vehicle, from, to);
        Run run = VehicleFactory.eINSTANCE.createRun();
        run.setName(NewNames.unshadowed(vehicle, "R"));
        run.setFrom(from);
        run.setTo(to);
        vehicle.getRuns().add(run);
        return run;
    }

    /**
     * Lets a run begin or end at another place; a stated length no longer holds and goes.
     *
     * @return cables whose path led over the run and would have a gap now: they take their shortest way instead
     */
    public static List<Cable> reconnect(Run run, CoreEnd end, Place to) {
        Vehicle vehicle = Scopes.vehicle(run);
        requireRun(vehicle, to, end == CoreEnd.A ? run.getTo() : run.getFrom());
        if (end == CoreEnd.A) {
            run.setFrom(to);
        } else {
            run.setTo(to);
        }
        if (run.getLengthMm() != null) {
            run.setLengthMm(null);
        }
        List<Cable> torn = Stream.concat(vehicle.getCables().stream(), vehicle.getArrangements().stream()
                .flatMap(arrangement -> arrangement.getCables().stream()))
                .filter(cable -> cable.getPath().contains(run) && !WiringEdits.hangsTogether(cable.getPath())).toList();
        torn.forEach(cable -> WiringEdits.setPath(cable, List.of(), ChosenBy.PERSON));
        return torn;
    }

    /** Refuses a run that may not be made; see {@link #addRun}. */
    public static void requireRun(Vehicle vehicle, Place from, Place to) {
        Scopes.require(from, "place");
        Scopes.require(to, "place");
        Scopes.requireVisible(vehicle, from);
        Scopes.requireVisible(vehicle, to);
        if (from == to) {
            throw new IllegalArgumentException("a run leads from one place to another, not back to " + from.getName());
        }
        vehicle.getRuns().stream().filter(run -> run.getFrom() == from && run.getTo() == to
                || run.getFrom() == to && run.getTo() == from).findFirst().ifPresent(run -> {
                    throw new IllegalArgumentException("the run " + run.getName() + " joins " + from.getName() + " and "
                            + to.getName() + " already");
                });
    }

    /**
     * Adds an earth point to a body.
     *
     * @param place where it is; may be null
     */
    public static EarthPoint addEarthPoint(Vehicle vehicle, Body body, Place place) {
        Scopes.require(body, "body");
        Scopes.requireVisible(vehicle, body);
        Scopes.requireVisible(vehicle, place);
        EarthPoint point = VehicleFactory.eINSTANCE.createEarthPoint();
        point.setName(NewNames.unshadowed(vehicle, "XE"));
        point.setBody(body);
        point.setPlace(place);
        vehicle.getEarthPoints().add(point);
        return point;
    }

    /** Puts an earth point at another place; the cables and straps that end there follow. */
    public static void place(EarthPoint point, Place place) {
        Scopes.require(place, "place");
        Scopes.requireVisible(point, place);
        point.setPlace(place);
    }

    /**
     * Adds a seam between two bodies.
     *
     * @param milliohm its resistance, milliohm
     */
    public static BodyLink addSeam(Vehicle vehicle, Body a, Body b, BigDecimal milliohm) {
        Scopes.require(a, "body");
        Scopes.require(b, "body");
        Scopes.require(milliohm, "resistance");
        Scopes.requireVisible(vehicle, a);
        Scopes.requireVisible(vehicle, b);
        if (a == b) {
            throw new IllegalArgumentException("a seam joins two bodies, not the " + ElementPath.of(a) + " with itself");
        }
        BodyLink link = VehicleFactory.eINSTANCE.createBodyLink();
        link.setName(NewNames.unshadowed(vehicle, "WS"));
        link.setA(a);
        link.setB(b);
        link.setMilliohm(milliohm);
        vehicle.getBodyLinks().add(link);
        return link;
    }
}
