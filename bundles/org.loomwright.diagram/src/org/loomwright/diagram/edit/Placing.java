// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.edits.ConnectEdits;
import org.loomwright.model.edits.DeviceEdits;
import org.loomwright.model.edits.Relocation;
import org.loomwright.model.edits.Spot;
import org.loomwright.model.edits.StructureEdits;
import org.loomwright.model.edits.WireEnd;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Way;

/** Devices put somewhere: new ones from the library, and those that are dropped at another place or on a run. */
final class Placing {
    private final Drawn drawn;
    private final Ground ground;

    Placing(Drawn drawn, Ground ground) {
        this.drawn = drawn;
        this.ground = ground;
    }

    Verdict place(String written, String target, Point at) {
        try {
            DevicePart part = DeviceEdits.part(drawn.vehicle(), written);
            String name = part.getLabel() == null || part.getLabel().isBlank() ? part.getName() : part.getLabel();
            return drawn.view() == View.LINE ? onLine(name, target) : onPlan(name, target, at);
        } catch (IllegalArgumentException refused) {
            return Verdict.refused(refused.getMessage());
        }
    }

    private Verdict onPlan(String name, String target, Point at) {
        if (drawn.view() == View.EARTH) {
            return Verdict.refused("devices are placed on the plan or the line diagram");
        }
        Spot spot = spot(target, at);
        return spot.known() ? Verdict.allowed(name + " " + words(spot)) : ground.verdict(at, name + " at a new place");
    }

    private Verdict onLine(String name, String target) {
        WireEnd outlet = outlet(target);
        if (outlet == null && isBox(drawn.element(target))) {
            return Verdict.warned(name + ", not connected: no way of " + drawn.label(drawn.element(target)) + " is free");
        }
        return outlet == null ? Verdict.allowed(name + ", not connected yet; " + words(home()))
                : Verdict.allowed(name + " at " + outlet.shown());
    }

    /** Adds a device of a part. */
    Outcome add(String written, String target, Point at) {
        DevicePart part = DeviceEdits.part(drawn.vehicle(), written);
        EObject holder = DeviceEdits.holder(drawn.vehicle(), drawn.arrangement(), part);
        List<String> told = new ArrayList<>();
        Verdict verdict = place(written, target, at);
        if (!verdict.possible()) {
            throw new IllegalArgumentException(verdict.text());
        }
        if (verdict.kind() == Verdict.Kind.WARNED) {
            told.add(verdict.text());
        }
        if (drawn.view() == View.LINE) {
            WireEnd outlet = outlet(target);
            Spot spot = outlet instanceof WireEnd.Pin pin ? Spot.of(pin.device(), drawn.arrangement()) : home();
            Device device = add(holder, part, spot.known() ? spot : home());
            told.add(drawn.label(device) + " sits " + words(Spot.of(device, drawn.arrangement())) + " until it is put elsewhere");
            if (outlet != null) {
                feed(outlet, device, told);
            }
            return new Outcome(Set.of(Fragments.of(device)), told);
        }
        Spot spot = spot(target, at);
        Device device = add(holder, part, spot.known() ? spot : new Spot(ground.make(at), null, null));
        return new Outcome(Set.of(Fragments.of(device)), told);
    }

    private static Device add(EObject holder, DevicePart part, Spot spot) {
        return spot.place() != null ? DeviceEdits.add(holder, part, spot.place())
                : DeviceEdits.addOnRun(holder, part, spot.run(), spot.atMm());
    }

    private void feed(WireEnd outlet, Device device, List<String> told) {
        WireEnd in = org.loomwright.model.edits.Connections.of(drawn.vehicle(), drawn.arrangement()).natural(device, outlet);
        if (in == null) {
            told.add(drawn.label(device) + " has no terminal that " + outlet.shown() + " could feed");
            return;
        }
        ConnectEdits.connect(drawn.vehicle(), drawn.arrangement(), outlet, in, null);
    }

    private static boolean isBox(EObject element) {
        return element instanceof Device device && device.getPart() != null && !device.getPart().getWays().isEmpty();
    }

    /** The free outlet meant by a way, a terminal or a box; null when there is none. */
    private WireEnd outlet(String target) {
        EObject element = drawn.element(target);
        if (element instanceof Way || element instanceof Terminal) {
            WireEnd end = org.loomwright.model.edits.Connections.ends(element).stream().findFirst().orElse(null);
            return end == null || drawn.connections().used(end) ? null : end;
        }
        if (!isBox(element)) {
            return null;
        }
        Device box = (Device) element;
        // ways in use come first, then those nobody reserved
        for (boolean fitted : new boolean[] {true, false}) {
            for (var spec : box.getPart().getWays()) {
                Way way = box.getWays().stream().filter(each -> Objects.equals(each.getName(), spec.getName())).findFirst()
                        .orElse(null);
                boolean wanted = fitted ? way != null && way.getProtector() != null : way == null;
                if (wanted && spec.getOut() != null) {
                    WireEnd end = new WireEnd.Pin(box, spec.getOut().getName());
                    if (!drawn.connections().used(end)) {
                        return end;
                    }
                }
            }
        }
        return null;
    }

    /** Where a device sits that was drawn on the line diagram: beside the first source, else at the first place. */
    private Spot home() {
        for (var domain : drawn.vehicle().getDomains()) {
            if (domain.getSource() instanceof Terminal terminal && terminal.eContainer() instanceof Device device
                    && Spot.of(device, drawn.arrangement()).known()) {
                return Spot.of(device, drawn.arrangement());
            }
        }
        if (drawn.vehicle().getPlaces().isEmpty()) {
            throw new IllegalArgumentException("the vehicle has no place yet; draw one on the plan first");
        }
        return new Spot(drawn.vehicle().getPlaces().get(0), null, null);
    }

    /** What comes of dropping elements on a target; null when they stay where they are or the target takes none. */
    Verdict drop(Collection<String> ids, String target, Point at) {
        if (!drawn.view().toScale() || target == null) {
            return null;
        }
        List<Device> devices = drawn.elements(ids, Device.class);
        List<EarthPoint> points = drawn.elements(ids, EarthPoint.class);
        Spot spot = spot(target, at);
        boolean rest = devices.size() + points.size() < ids.size();
        if (rest || !spot.known() || devices.isEmpty() && points.isEmpty()) {
            return null;
        }
        try {
            if (devices.isEmpty()) {
                return spot.place() == null ? Verdict.refused("an earth point is at a place, not on a run")
                        : Verdict.allowed(words(spot));
            }
            Relocation plan = relocation(devices, spot);
            if (plan.moved().isEmpty()) {
                return null;
            }
            String told = plan.told().isEmpty() ? "" : ": " + String.join("; ", plan.told());
            return plan.pinned().isEmpty() ? Verdict.allowed(words(spot) + told) : Verdict.warned(words(spot) + told);
        } catch (IllegalArgumentException refused) {
            return Verdict.refused(refused.getMessage());
        }
    }

    /** Drops devices and earth points. */
    Outcome put(Collection<String> ids, String target, Point at) {
        Verdict verdict = drop(ids, target, at);
        if (verdict == null || !verdict.possible()) {
            throw new IllegalArgumentException(verdict == null ? "nothing of this can be put there" : verdict.text());
        }
        Spot spot = spot(target, at);
        List<String> told = new ArrayList<>();
        List<Device> devices = drawn.elements(ids, Device.class);
        if (!devices.isEmpty()) {
            Relocation plan = relocation(devices, spot);
            plan.apply();
            told.addAll(plan.told());
            devices.forEach(device -> ground.reseat(device));
        }
        drawn.elements(ids, EarthPoint.class).forEach(point -> StructureEdits.place(point, spot.place()));
        return new Outcome(null, told);
    }

    private Relocation relocation(List<Device> devices, Spot spot) {
        return spot.place() != null ? Relocation.of(drawn.arrangement(), devices, spot.place())
                : Relocation.onRun(drawn.arrangement(), devices, spot.run(), spot.atMm());
    }

    /** The spot that a target means: a place, the place of a device, or a point on a run. */
    private Spot spot(String target, Point at) {
        EObject element = drawn.element(target);
        if (element instanceof Place place) {
            return new Spot(place, null, null);
        }
        if (element instanceof EarthPoint point && point.getPlace() != null) {
            return new Spot(point.getPlace(), null, null);
        }
        if (element instanceof Device device) {
            return Spot.of(device, drawn.arrangement());
        }
        if (element instanceof Run run) {
            double mm = RunLine.of(drawn, run).mmAt(at);
            if (!Double.isNaN(mm)) {
                BigDecimal whole = Drawn.mm(mm);
                return new Spot(null, run, run.getLengthMm() == null ? whole : whole.min(run.getLengthMm()));
            }
        }
        return Spot.NOWHERE;
    }

    private String words(Spot spot) {
        return spot.place() != null ? "at " + drawn.label(spot.place())
                : "on " + drawn.label(spot.run()) + ", " + spot.atMm().toPlainString() + " mm from "
                        + drawn.label(spot.run().getFrom());
    }
}
