// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Zone;

/** Reads from the model what a plan shows; whatever is incomplete is left out or marked, never refused. */
final class PlanReader {
    /** Paper around what lies in a vehicle without an outline, mm. */
    private static final double MARGIN_MM = 150;
    /** Second figure of a protection code from which on splashing water is expected (IEC 60529). */
    private static final int SPLASHED = 4;
    private static final Pattern CODE = Pattern.compile("IP[0-9X]([0-9])K?.*");
    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final PlanView view;
    private final Map<Place, Integer> places = new LinkedHashMap<>();
    private final Map<Run, Integer> runs = new LinkedHashMap<>();

    private PlanReader(Vehicle vehicle, Arrangement arrangement, PlanView view) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        this.view = view;
    }

    static PlanContent read(Vehicle vehicle, Arrangement arrangement, PlanView view) {
        return new PlanReader(vehicle, arrangement, view).read();
    }

    private PlanContent read() {
        List<PlanContent.Place> placeList = new ArrayList<>();
        for (Place place : vehicle.getPlaces()) {
            if (place.getXMm() != null && place.getYMm() != null && place.getZMm() != null) {
                places.put(place, placeList.size());
                placeList.add(new PlanContent.Place(Fragments.of(place), shown(place.getLabel(), place.getName()), spot(place),
                        earthPoints(place)));
            }
        }
        List<PlanContent.Run> runList = new ArrayList<>();
        for (Run run : vehicle.getRuns()) {
            if (places.containsKey(run.getFrom()) && places.containsKey(run.getTo())) {
                runs.put(run, runList.size());
                runList.add(new PlanContent.Run(Fragments.of(run), places.get(run.getFrom()), places.get(run.getTo())));
            }
        }
        List<PlanContent.Body> bodies = new ArrayList<>();
        if (view == PlanView.ABOVE) {
            for (Body body : vehicle.getBodies()) {
                Outline outline = Outline.read(body.getOutline());
                if (outline != null) {
                    bodies.add(new PlanContent.Body(Fragments.of(body), body.getName(), outline));
                }
            }
        }
        Outline stated = stated();
        return new PlanContent(stated == null ? derived(placeList, bodies) : stated, stated != null, zones(), bodies, placeList,
                runList, devices(), new CableReader(vehicle, arrangement, runs, places).read());
    }

    private Outline stated() {
        return Outline.read(view == PlanView.ABOVE ? vehicle.getOutline() : vehicle.getSideOutline());
    }

    /** From the stated size, else from what lies in the vehicle; a plain rectangle, no more is known. */
    private Outline derived(List<PlanContent.Place> placeList, List<PlanContent.Body> bodies) {
        BigDecimal length = vehicle.getLengthMm();
        BigDecimal across = view == PlanView.ABOVE ? vehicle.getWidthMm() : vehicle.getHeightMm();
        if (length != null && across != null && length.signum() > 0 && across.signum() > 0) {
            double low = view == PlanView.ABOVE ? -across.doubleValue() / 2 : 0;
            return Outline.rectangle(0, low, length.doubleValue(), low + across.doubleValue());
        }
        List<Spot> all = new ArrayList<>();
        placeList.forEach(place -> all.add(place.spot()));
        bodies.forEach(body -> all.addAll(body.outline().spots()));
        if (all.isEmpty()) {
            all.add(new Spot(0, 0));
        }
        return Outline.rectangle(all.stream().mapToDouble(Spot::alongMm).min().orElseThrow() - MARGIN_MM,
                all.stream().mapToDouble(Spot::upMm).min().orElseThrow() - MARGIN_MM,
                all.stream().mapToDouble(Spot::alongMm).max().orElseThrow() + MARGIN_MM,
                all.stream().mapToDouble(Spot::upMm).max().orElseThrow() + MARGIN_MM);
    }

    private List<PlanContent.Zone> zones() {
        List<PlanContent.Zone> zones = new ArrayList<>();
        for (Zone zone : vehicle.getZones()) {
            String ambient = zone.getAmbientMaxC() == null ? "" : zone.getAmbientMaxC().toPlainString() + " \u00B0C";
            String wetness = zone.getWetness() == null ? "" : zone.getWetness();
            zones.add(new PlanContent.Zone(Fragments.of(zone), shown(zone.getLabel(), zone.getName()),
                    ambient.isEmpty() || wetness.isEmpty() ? ambient + wetness : ambient + ", " + wetness,
                    Boolean.TRUE.equals(zone.getHot()), wet(wetness),
                    view == PlanView.ABOVE ? Outline.read(zone.getOutline()) : null,
                    (int) vehicle.getPlaces().stream().filter(place -> place.getZone() == zone).count()));
        }
        return zones;
    }

    static boolean wet(String code) {
        if (code == null) {
            return false;
        }
        Matcher matcher = CODE.matcher(code);
        return matcher.matches() && Integer.parseInt(matcher.group(1)) >= SPLASHED;
    }

    private List<String> earthPoints(Place place) {
        List<String> ids = new ArrayList<>();
        for (EarthPoint point : vehicle.getEarthPoints()) {
            if (point.getPlace() == place) {
                ids.add(Fragments.of(point));
            }
        }
        return ids;
    }

    private List<PlanContent.Device> devices() {
        List<PlanContent.Device> devices = new ArrayList<>();
        vehicle.getDevices().forEach(device -> add(device, devices));
        if (arrangement != null) {
            arrangement.getDevices().forEach(device -> add(device, devices));
        }
        return devices;
    }

    private void add(Device device, List<PlanContent.Device> devices) {
        Device seat = device;
        for (int depth = 0; depth < vehicle.getDevices().size() && seat.getMountedIn() != null && seat.getPlace() == null
                && seat.getRun() == null && placement(seat) == null; depth++) {
            seat = seat.getMountedIn();
        }
        Place moved = placement(seat);
        int place = places.getOrDefault(moved != null ? moved : seat.getPlace(), -1);
        int run = place >= 0 ? -1 : runs.getOrDefault(seat.getRun(), -1);
        if (place < 0 && run < 0) {
            return;
        }
        BigDecimal across = device.getPart() == null ? null
                : view == PlanView.ABOVE ? device.getPart().getWidthMm() : device.getPart().getHeightMm();
        BigDecimal along = device.getPart() == null ? null : device.getPart().getLengthMm();
        devices.add(new PlanContent.Device(Fragments.of(device), device.getName(),
                device.getLabel() == null ? "" : device.getLabel(),
                device.getPart() == null || !device.getPart().isSetKind() ? DeviceKind.LOAD : device.getPart().getKind(),
                Boolean.TRUE.equals(device.getExisting()), place, run, share(seat), figure(along), figure(across)));
    }

    private Place placement(Device device) {
        if (arrangement != null) {
            for (Placement placement : arrangement.getPlacements()) {
                if (placement.getDevice() == device) {
                    return placement.getPlace();
                }
            }
        }
        return null;
    }

    private double share(Device device) {
        Run run = device.getRun();
        if (run == null || device.getAtMm() == null) {
            return 0;
        }
        double length = figure(run.getLengthMm());
        if (length <= 0 && run.getFrom() != null && run.getTo() != null && places.containsKey(run.getFrom())
                && places.containsKey(run.getTo())) {
            double dx = figure(run.getFrom().getXMm()) - figure(run.getTo().getXMm());
            double dy = figure(run.getFrom().getYMm()) - figure(run.getTo().getYMm());
            double dz = figure(run.getFrom().getZMm()) - figure(run.getTo().getZMm());
            length = StrictMath.sqrt(dx * dx + dy * dy + dz * dz);
        }
        return length <= 0 ? 0 : StrictMath.min(1, StrictMath.max(0, device.getAtMm().doubleValue() / length));
    }

    private Spot spot(Place place) {
        return new Spot(place.getXMm().doubleValue(), view.up(place.getYMm().doubleValue(), place.getZMm().doubleValue()));
    }

    private static double figure(BigDecimal value) {
        return value == null ? 0 : value.doubleValue();
    }

    private static String shown(String label, String name) {
        return label == null || label.isBlank() ? name == null ? "" : name : label;
    }
}
