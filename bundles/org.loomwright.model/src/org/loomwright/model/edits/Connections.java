// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.ReturnPolicy;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/**
 * What may be joined by a cable in one arrangement. Looks at the model as it is when it is made; asking is quick, so that a
 * gesture can ask at every movement of the pointer.
 */
public final class Connections {
    /**
     * What is said about two ends.
     *
     * @param possible whether they may be joined
     * @param text     why not, or what to mind; empty when there is nothing to say
     */
    public record Answer(boolean possible, String text) {
        static final Answer YES = new Answer(true, "");

        static Answer no(String why) {
            return new Answer(false, why);
        }

        static Answer mind(String what) {
            return new Answer(true, what);
        }
    }

    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final Supplies supplies;
    private final Map<WireEnd, List<Core>> cores = new LinkedHashMap<>();

    private Connections(Vehicle vehicle, Arrangement arrangement) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        supplies = new Supplies(vehicle, arrangement);
        vehicle.getCables().forEach(this::collect);
        if (arrangement != null) {
            arrangement.getCables().forEach(this::collect);
        }
    }

    /**
     * Of a vehicle.
     *
     * @param arrangement the arrangement looked at; null for what all arrangements share
     */
    public static Connections of(Vehicle vehicle, Arrangement arrangement) {
        return new Connections(vehicle, arrangement);
    }

    private void collect(Cable cable) {
        for (Core core : cable.getCores()) {
            for (CoreEnd end : CoreEnd.values()) {
                WireEnd at = WireEnd.of(end.of(core));
                if (at != null) {
                    cores.computeIfAbsent(at, none -> new ArrayList<>()).add(core);
                }
            }
        }
    }

    /** True when a core ends there. */
    public boolean used(WireEnd end) {
        return cores.containsKey(end);
    }

    /** What conductors can end at, at an element: a device's outer terminals, a way's outlet, an earth point. */
    public static List<WireEnd> ends(EObject element) {
        List<WireEnd> ends = new ArrayList<>();
        if (element instanceof Device device && device.getPart() != null && !device.getPart().eIsProxy()) {
            for (TerminalSpec spec : device.getPart().getTerminals()) {
                if (spec.getName() != null && !(spec.isSetRole() && spec.getRole() == TerminalRole.INTERNAL)) {
                    ends.add(new WireEnd.Pin(device, spec.getName()));
                }
            }
        } else if (element instanceof Way way && way.eContainer() instanceof Device device && device.getPart() != null) {
            for (WaySpec spec : device.getPart().getWays()) {
                if (spec.getOut() != null && Objects.equals(spec.getName(), way.getName())) {
                    ends.add(new WireEnd.Pin(device, spec.getOut().getName()));
                }
            }
        } else if (element instanceof EarthPoint || element instanceof Terminal) {
            ends.add(WireEnd.of((org.loomwright.model.vehicle.Attachment) element));
        }
        ends.removeIf(Objects::isNull);
        return ends;
    }

    /** The end at an element that a person most likely means, given the other end; null when no end there can be joined. */
    public WireEnd natural(EObject element, WireEnd other) {
        WireEnd best = null;
        int least = Integer.MAX_VALUE;
        for (WireEnd end : ends(element)) {
            Answer answer = other == null ? Answer.YES : between(other, end);
            if (answer.possible()) {
                int cost = cost(end, other) + (answer.text().isEmpty() ? 0 : 100);
                if (cost < least) {
                    least = cost;
                    best = end;
                }
            }
        }
        return best;
    }

    /** What makes an end less likely: used already, the wrong side, both live, or a feed where an outlet is meant. */
    private int cost(WireEnd end, WireEnd other) {
        int cost = used(end) ? 10 : 0;
        if (!(end instanceof WireEnd.Pin pin)) {
            return cost;
        }
        TerminalRole role = pin.role();
        if (other == null) {
            boolean begins = role == TerminalRole.PLUS;
            return cost + (begins ? 0 : role == TerminalRole.MINUS ? 5 : 20) + (feed(pin) ? 3 : 0);
        }
        boolean back = other instanceof WireEnd.Earth || other instanceof WireEnd.Pin p && p.role() == TerminalRole.MINUS;
        if (back != (role == TerminalRole.MINUS || role == TerminalRole.CASE)) {
            cost += 50;
        }
        boolean live = supplies.of(other) != null;
        if (!back && live == (supplies.of(end) != null)) {
            cost += 4;
        }
        return cost + (!back && outlet(pin) == live ? 3 : 0) + (role == TerminalRole.PLUS || role == TerminalRole.MINUS ? 0 : 5);
    }

    private static boolean outlet(WireEnd.Pin pin) {
        DevicePart part = pin.device().getPart();
        return part != null && part.getWays().stream().anyMatch(way -> way.getOut() == pin.spec());
    }

    private static boolean feed(WireEnd.Pin pin) {
        DevicePart part = pin.device().getPart();
        return part != null && part.getWays().stream().anyMatch(way -> way.getFrom() == pin.spec());
    }

    /** Whether a new cable may join two ends. */
    public Answer between(WireEnd a, WireEnd b) {
        return between(a, b, null);
    }

    /** Whether a core, or a new one, may join two ends; what it joins now does not count. */
    public Answer between(WireEnd a, WireEnd b, Core own) {
        if (a == null || b == null) {
            return Answer.no("nothing there that a cable can end at");
        }
        if (a.equals(b)) {
            return Answer.no("both ends would be " + a.shown());
        }
        if (a instanceof WireEnd.Earth && b instanceof WireEnd.Earth) {
            return Answer.no("earth points are joined by a strap, on the earth diagram");
        }
        String scope = outOfSight(a) ? a.shown() : outOfSight(b) ? b.shown() : null;
        if (scope != null) {
            return Answer.no(scope + " belongs to another arrangement");
        }
        for (WireEnd end : List.of(a, b)) {
            if (end instanceof WireEnd.Pin pin && (pin.spec() == null || pin.role() == TerminalRole.INTERNAL)) {
                return Answer.no(pin.spec() == null ? "the part of -" + pin.device().getName() + " has no terminal "
                        + pin.terminal() : end.shown() + " lies inside the device");
            }
        }
        if (supplies.one(a, b)) {
            return Answer.no(a.shown() + " and " + b.shown() + " are one bar already");
        }
        for (Core core : cores.getOrDefault(a, List.of())) {
            if (core != own && cores.getOrDefault(b, List.of()).contains(core)) {
                return Answer.no("-" + ((Cable) core.eContainer()).getName() + " joins " + a.shown() + " and " + b.shown()
                        + " already");
            }
        }
        Answer sides = sides(a, b);
        return sides.possible() && sides.text().isEmpty() ? levels(a, b, own) : sides;
    }

    private boolean outOfSight(WireEnd end) {
        EObject owner = end instanceof WireEnd.Pin pin ? pin.device() : ((WireEnd.Earth) end).point();
        return owner.eResource() != vehicle.eResource() || Scopes.arrangement(owner) != null
                && Scopes.arrangement(owner) != arrangement;
    }

    /** Plus and minus. */
    private Answer sides(WireEnd a, WireEnd b) {
        if (b instanceof WireEnd.Earth && !(a instanceof WireEnd.Earth)) {
            return sides(b, a);
        }
        TerminalRole there = ((WireEnd.Pin) b).role();
        if (a instanceof WireEnd.Earth earth) {
            if (there == TerminalRole.PLUS) {
                return Answer.no("would join plus at " + b.shown() + " with the structure");
            }
            ReturnPolicy policy = earth.point().getBody() != null && earth.point().getBody().isSetReturnPolicy()
                    ? earth.point().getBody().getReturnPolicy() : vehicle.isSetReturnPolicy() ? vehicle.getReturnPolicy() : null;
            return policy == ReturnPolicy.FORBIDDEN && there == TerminalRole.MINUS && !source(((WireEnd.Pin) b).device())
                    ? Answer.mind("loads may not return through "
                            + (earth.point().getBody() == null ? "the structure" : earth.point().getBody().getName()))
                    : Answer.YES;
        }
        TerminalRole here = ((WireEnd.Pin) a).role();
        boolean opposed = here == TerminalRole.PLUS && there == TerminalRole.MINUS
                || here == TerminalRole.MINUS && there == TerminalRole.PLUS;
        if (!opposed) {
            return here == TerminalRole.PLUS && there == TerminalRole.CASE || here == TerminalRole.CASE
                    && there == TerminalRole.PLUS ? Answer.mind("joins plus with a case") : Answer.YES;
        }
        Device one = ((WireEnd.Pin) a).device();
        Device other = ((WireEnd.Pin) b).device();
        if (source(one) && one == other) {
            return Answer.no("would short -" + one.getName());
        }
        return source(one) && source(other) ? Answer.mind("puts -" + one.getName() + " and -" + other.getName() + " in series")
                : Answer.mind("joins a plus terminal with a minus terminal");
    }

    private static boolean source(Device device) {
        return device.getPart() != null && !device.getPart().getCells().isEmpty();
    }

    /** Voltage levels, and what fits on a terminal. */
    private Answer levels(WireEnd a, WireEnd b, Core own) {
        Supplies.Supply one = supplies.of(a);
        Supplies.Supply other = supplies.of(b);
        if (one != null && other != null && !one.equals(other)) {
            return Supplies.apart(one.nominalV(), other.nominalV())
                    ? Answer.no(a.shown() + " is on " + one.words() + ", " + b.shown() + " on " + other.words())
                    : Answer.mind("joins two supplies: " + one.name() + " and " + other.name());
        }
        Answer made = one == null && other == null ? Answer.YES : one != null ? madeFor(b, one) : madeFor(a, other);
        if (!made.text().isEmpty()) {
            return made;
        }
        for (WireEnd end : List.of(a, b)) {
            long there = cores.getOrDefault(end, List.of()).stream().filter(core -> core != own).count();
            if (end instanceof WireEnd.Pin pin && pin.spec().getLugsMax() != null && there >= pin.spec().getLugsMax()) {
                return Answer.mind(end.shown() + " takes " + pin.spec().getLugsMax() + " lugs; there are " + there + " already");
            }
        }
        return Answer.YES;
    }

    private static Answer madeFor(WireEnd load, Supplies.Supply supply) {
        if (load instanceof WireEnd.Pin pin) {
            for (var demand : pin.device().getPart().getDemands()) {
                if (demand.getA() == pin.spec() && demand.getRefV() != null && demand.getRefV().signum() > 0
                        && Supplies.apart(demand.getRefV(), supply.nominalV())) {
                    return Answer.mind("-" + pin.device().getName() + " is made for "
                            + demand.getRefV().stripTrailingZeros().toPlainString() + " V, not for " + supply.words());
                }
            }
        }
        return Answer.YES;
    }
}
