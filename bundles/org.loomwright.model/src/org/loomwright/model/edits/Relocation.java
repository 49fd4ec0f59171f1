// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Devices put somewhere else, with their cables: first planned, so that a person can be told, then applied. Cables take the
 * shortest way over the runs again and leave the ducts that do not lie on it; a path that a person chose stays. A measured
 * length of
 * a cable whose end moves no longer holds and goes. A shared device moves in all arrangements, unless the arrangement looked at
 * has
 * its own word on where it is: then only that changes.
 */
public final class Relocation {
    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final Set<Device> moved;
    private final Spot to;
    private final List<Cable> following = new ArrayList<>();
    private final List<Cable> pinned = new ArrayList<>();
    private final List<Cable> remeasured = new ArrayList<>();

    private Relocation(Arrangement arrangement, Collection<Device> devices, Spot to) {
        this.arrangement = arrangement;
        this.to = to;
        if (devices.isEmpty()) {
            throw new IllegalArgumentException("no device given");
        }
        moved = new LinkedHashSet<>(devices);
        vehicle = Scopes.vehicle(moved.iterator().next());
        for (Device device : moved) {
            Scopes.requireVisible(device, to.place() == null ? to.run() : to.place());
            if (arrangement != null) {
                Scopes.requireVisible(arrangement, device);
            }
        }
        moved.removeIf(device -> device.getMountedIn() == null && Spot.of(device, arrangement).equals(to));
        cables().forEach(this::look);
    }

    /**
     * Plans to put devices in a place.
     *
     * @param arrangement the arrangement looked at; null for what all arrangements share
     */
    public static Relocation of(Arrangement arrangement, Collection<Device> devices, Place place) {
        Scopes.require(place, "place");
        return new Relocation(arrangement, devices, Spot.at(place));
    }

    /**
     * Plans to put devices on a run.
     *
     * @param atMm distance from the run's first place, mm
     */
    public static Relocation onRun(Arrangement arrangement, Collection<Device> devices, Run run, BigDecimal atMm) {
        VehicleEdits.requireOnRun(run, atMm);
        for (Device device : devices) {
            if (Spot.placement(device, arrangement) != null) {
                throw new IllegalArgumentException("-" + device.getName() + " has a place of its own in the arrangement "
                        + arrangement.getName() + "; an arrangement can state a place only, not a run");
            }
        }
        return new Relocation(arrangement, devices, new Spot(null, run, atMm));
    }

    /** Devices that are not there already. */
    public Set<Device> moved() {
        return moved;
    }

    /** Cables whose way changes. */
    public List<Cable> following() {
        return List.copyOf(following);
    }

    /** Cables that keep a path that a person chose, though an end of theirs moves. */
    public List<Cable> pinned() {
        return List.copyOf(pinned);
    }

    /** Cables whose measured length no longer holds. */
    public List<Cable> remeasured() {
        return List.copyOf(remeasured);
    }

    /** What a person should know, in sentences; empty for nothing. */
    public List<String> told() {
        List<String> lines = new ArrayList<>();
        if (!following.isEmpty()) {
            lines.add(names(following) + (following.size() == 1 ? " takes its" : " take their") + " shortest way again");
        }
        for (Cable cable : pinned) {
            lines.add(names(List.of(cable)) + " keeps the path a person chose: "
                    + String.join(" ", cable.getPath().stream().map(Run::getName).toList()));
        }
        if (!remeasured.isEmpty()) {
            lines.add("the measured length of " + names(remeasured) + " no longer holds");
        }
        return lines;
    }

    /** Applies the plan; the model must not have changed since it was made. */
    public void apply() {
        for (Device device : moved) {
            Placement own = Spot.placement(device, arrangement);
            if (own != null) {
                own.setPlace(to.place());
            } else if (to.place() != null) {
                VehicleEdits.place(device, to.place());
            } else {
                VehicleEdits.placeOnRun(device, to.run(), to.atMm());
            }
        }
        RunWays ways = new RunWays(vehicle);
        following.forEach(cable -> reroute(cable, ways));
        remeasured.forEach(cable -> cable.setLengthMm(null));
    }

    private Stream<Cable> cables() {
        boolean everywhere = moved.stream().anyMatch(device -> Scopes.arrangement(device) == null
                && Spot.placement(device, arrangement) == null);
        Stream<Arrangement> homes = everywhere ? vehicle.getArrangements().stream()
                : arrangement == null ? Stream.of() : Stream.of(arrangement);
        return Stream.concat(vehicle.getCables().stream(), homes.flatMap(home -> home.getCables().stream()));
    }

    private void look(Cable cable) {
        if (cable.getCores().stream().noneMatch(this::touched)) {
            return;
        }
        boolean chosen = !cable.getPath().isEmpty() && !(cable.isSetPathBy() && cable.getPathBy() == ChosenBy.SIZING);
        (chosen ? pinned : following).add(cable);
        if (cable.getLengthMm() != null) {
            remeasured.add(cable);
        }
    }

    private boolean touched(Core core) {
        return goes(WireEnd.of(core.getA())) || goes(WireEnd.of(core.getB()));
    }

    /** True for an end at a device that moves, or at one that is mounted in such a device. */
    private boolean goes(WireEnd end) {
        if (end instanceof WireEnd.Pin pin) {
            Device at = pin.device();
            Set<Device> seen = new LinkedHashSet<>();
            while (at != null && seen.add(at)) {
                if (moved.contains(at)) {
                    return true;
                }
                at = at.getPlace() == null && at.getRun() == null && Spot.placement(at, arrangement) == null
                        ? at.getMountedIn() : null;
            }
        }
        return false;
    }

    private static void reroute(Cable cable, RunWays ways) {
        if (!cable.getPath().isEmpty()) {
            cable.getPath().clear();
            cable.unsetPathBy();
        }
        if (cable.getDucts().isEmpty()) {
            return;
        }
        Set<Run> passed = new LinkedHashSet<>();
        Arrangement home = Scopes.arrangement(cable);
        for (Core core : cable.getCores()) {
            List<Run> way = ways.shortest(Spot.of(WireEnd.of(core.getA()), home), Spot.of(WireEnd.of(core.getB()), home));
            passed.addAll(way == null ? List.of() : way);
        }
        List<Duct> left = cable.getDucts().stream().filter(duct -> duct.getRuns().stream().noneMatch(passed::contains)).toList();
        cable.getDucts().removeAll(left);
    }

    private static String names(List<Cable> cables) {
        return String.join(" ", cables.stream().map(cable -> "-" + cable.getName()).toList());
    }
}
