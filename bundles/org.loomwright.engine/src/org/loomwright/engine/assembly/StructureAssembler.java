// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Zone;

/** Assembles zones, places, runs, bodies and their seams, and finds them by their model object. */
final class StructureAssembler {
    private final AssemblyScope scope;
    private final Map<Object, Integer> index = new IdentityHashMap<>();
    private final List<Plan.Zone> zones = new ArrayList<>();
    private final List<Plan.Place> places = new ArrayList<>();
    private final List<Plan.Run> runs = new ArrayList<>();
    private final List<Plan.Body> bodies = new ArrayList<>();
    private final List<Plan.BodyLink> bodyLinks = new ArrayList<>();

    StructureAssembler(Vehicle vehicle, AssemblyScope scope) {
        this.scope = scope;
        vehicle.getZones().forEach(this::add);
        vehicle.getPlaces().forEach(this::add);
        vehicle.getBodies().forEach(this::add);
        vehicle.getRuns().forEach(this::add);
        vehicle.getBodyLinks().forEach(this::add);
    }

    List<Plan.Zone> zones() {
        return zones;
    }

    List<Plan.Place> places() {
        return places;
    }

    List<Plan.Run> runs() {
        return runs;
    }

    List<Plan.Body> bodies() {
        return bodies;
    }

    List<Plan.BodyLink> bodyLinks() {
        return bodyLinks;
    }

    /** Index of a zone, place, run or body in its list; -1 for null and for what is not of this vehicle. */
    int indexOf(Object object) {
        return object == null ? -1 : index.getOrDefault(object, -1);
    }

    /** The zone with the higher highest ambient; a zone goes before none, the first before an equal one. */
    int hotter(int zoneA, int zoneB) {
        if (zoneA == zoneB || zoneA < 0 || zoneB < 0) {
            return StrictMath.max(zoneA, zoneB);
        }
        double a = zones.get(zoneA).ambientMaxC();
        double b = zones.get(zoneB).ambientMaxC();
        if (a == b) {
            return zones.get(zoneA).id().compareTo(zones.get(zoneB).id()) <= 0 ? zoneA : zoneB;
        }
        return a > b ? zoneA : zoneB;
    }

    private void add(Zone zone) {
        index.put(zone, zones.size());
        zones.add(new Plan.Zone(ModelIds.of(zone), Decimals.or(zone.getAmbientMinC(), scope.practice().value("state.cold")),
                Decimals.or(zone.getAmbientMaxC(), scope.practice().value("state.outside-hot")), zone.getWetness(),
                Decimals.yes(zone.getHot()), Decimals.yes(zone.getMoving()), Decimals.yes(zone.getFuel()),
                Decimals.yes(zone.getGasLocker()), Decimals.yes(zone.getBatteryVent()), Decimals.yes(zone.getAirbagLine()),
                Decimals.yes(zone.getDataBus()), Decimals.yes(zone.getAntenna())));
    }

    private void add(Place place) {
        index.put(place, places.size());
        places.add(new Plan.Place(ModelIds.of(place), Decimals.of(place.getXMm()), Decimals.of(place.getYMm()),
                Decimals.of(place.getZMm()), indexOf(place.getZone())));
    }

    private void add(Body body) {
        index.put(body, bodies.size());
        Plan.ReturnPolicy policy = body.isSetReturnPolicy() ? switch (body.getReturnPolicy()) {
            case ALLOWED -> Plan.ReturnPolicy.ALLOWED;
            case LISTED_LOADS -> Plan.ReturnPolicy.LISTED_LOADS;
            case FORBIDDEN -> Plan.ReturnPolicy.FORBIDDEN;
        } : null;
        double ohm = Decimals.thousandth(body.getMilliohm());
        bodies.add(new Plan.Body(ModelIds.of(body), policy, Double.isNaN(ohm) ? 0 : ohm));
    }

    private void add(Run run) {
        String id = ModelIds.of(run);
        int from = indexOf(run.getFrom());
        int to = indexOf(run.getTo());
        if (from < 0 || to < 0) {
            scope.problems().add(id, "the run names no place at one of its ends; expected two places of the vehicle");
            return;
        }
        double lengthMm = run.getLengthMm() == null ? distanceMm(places.get(from), places.get(to))
                : run.getLengthMm().doubleValue();
        if (Double.isNaN(lengthMm) || lengthMm < 0) {
            scope.problems().add(id, "the run has no length; expected lengthMm, or positions of both its places");
            return;
        }
        int zone = indexOf(run.getZone());
        index.put(run, runs.size());
        runs.add(new Plan.Run(id, from, to, lengthMm,
                zone >= 0 ? zone : hotter(places.get(from).zone(), places.get(to).zone()), indexOf(run.getBody())));
    }

    private static double distanceMm(Plan.Place a, Plan.Place b) {
        double x = a.xMm() - b.xMm();
        double y = a.yMm() - b.yMm();
        double z = a.zMm() - b.zMm();
        return StrictMath.sqrt(x * x + y * y + z * z);
    }

    /** A seam whose resistance nobody states takes that of a bolted joint, which a wide seam does not exceed. */
    private void add(BodyLink link) {
        int a = indexOf(link.getA());
        int b = indexOf(link.getB());
        if (a < 0 || b < 0) {
            scope.problems().add(ModelIds.of(link), "the seam names no body on one side; expected two bodies of the vehicle");
            return;
        }
        double ohm = Decimals.thousandth(link.getMilliohm());
        bodyLinks.add(new Plan.BodyLink(ModelIds.of(link), a, b, ohm > 0 ? ohm : scope.ohms("joint.bolted-bond")));
    }
}
