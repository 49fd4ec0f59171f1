// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.files.Terminals;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.Part;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehiclePackage;
import org.loomwright.model.vehicle.Way;

/**
 * A {@link WiringFragment} added to a vehicle. Names that are taken become the next free ones. Parts, places, runs and ends
 * outside the
 * fragment are kept where the vehicle sees them, else those of the same name are taken; what finds none is left out and told.
 * Copies are
 * new equipment, also of what belonged to a base vehicle.
 */
public final class Pasting {
    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final Place place;
    private final WrittenParts parts;
    private final List<EObject> added = new ArrayList<>();
    private final Set<String> told = new LinkedHashSet<>();
    private final EcoreUtil.Copier copier = new EcoreUtil.Copier();
    private final Map<EObject, String> renamed = new LinkedHashMap<>();

    private Pasting(Vehicle vehicle, Arrangement arrangement, Place place) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        this.place = place;
        parts = new WrittenParts(vehicle);
    }

    /**
     * Adds a fragment.
     *
     * @param arrangement arrangement that gets what belonged to an arrangement; null puts all into what all arrangements share
     * @param place       where the devices are put; null for where they were, or for the place of the same name
     * @throws IllegalArgumentException when nothing of it can be added; nothing is changed then
     */
    public static Pasting of(WiringFragment fragment, Vehicle vehicle, Arrangement arrangement, Place place) {
        Pasting pasting = new Pasting(vehicle, arrangement, place);
        pasting.add(fragment);
        return pasting;
    }

    /** What was added, in order. */
    public List<EObject> added() {
        return List.copyOf(added);
    }

    /** What a person should know, in sentences. */
    public List<String> told() {
        return List.copyOf(told);
    }

    private void add(WiringFragment fragment) {
        List<Device> devices = fragment.devices().stream().filter(device -> part(device.getPart(), device) != null
                && spot(device, fragment).known()).toList();
        copier.copyAll(devices);
        List<Cable> cables = new ArrayList<>();
        for (Cable cable : fragment.cables()) {
            if (part(cable.getPart(), cable) != null && joins(cable, devices)) {
                cables.add(cable);
            }
        }
        copier.copyAll(cables);
        copier.copyReferences();
        if (devices.isEmpty() && cables.isEmpty()) {
            throw new IllegalArgumentException(told.isEmpty() ? "nothing to add" : String.join("; ", told));
        }
        devices.forEach(device -> add(device, fragment));
        cables.forEach(cable -> add(cable, fragment));
        if (!renamed.isEmpty()) {
            told.add("named anew: " + String.join(", ", renamed.entrySet().stream()
                    .map(each -> "-" + each.getValue() + " to -" + ((Named) each.getKey()).getName()).toList()));
        }
    }

    /** The part as this vehicle has it; told and null when it has none. */
    private <T extends Part> T part(T part, Named user) {
        T found = part == null || part.eIsProxy() ? null : parts.has(part) ? part : parts.same(part);
        if (found == null) {
            told.add("-" + user.getName() + " is left out: " + (part == null || part.getName() == null ? "it has no part"
                    : "the vehicle's libraries have no part " + part.getName()));
        }
        return found;
    }

    private Spot spot(Device device, WiringFragment fragment) {
        if (place != null) {
            return Spot.at(place);
        }
        Spot before = fragment.spot(device);
        Place same = (Place) seen(before.place());
        Run run = (Run) seen(before.run());
        if (same != null || run != null) {
            return new Spot(same, run, before.atMm());
        }
        if (vehicle.getPlaces().isEmpty()) {
            told.add("-" + device.getName() + " is left out: the vehicle has no place");
            return Spot.NOWHERE;
        }
        Place first = vehicle.getPlaces().get(0);
        told.add("-" + device.getName() + " sits at " + first.getName() + ", since its own place is not here");
        return Spot.at(first);
    }

    /** The same element where this vehicle and arrangement see it, else the one of the same kind and name; null for none. */
    private EObject seen(EObject original) {
        if (original == null || !(EcoreUtil.getRootContainer(original) instanceof Vehicle home)) {
            return null;
        }
        Arrangement own = Scopes.arrangement(original);
        if (home == vehicle && (own == null || own == arrangement)) {
            return original;
        }
        EObject scope = own == null ? vehicle : arrangement;
        EObject found = scope == null ? null : Fragments.find(scope, ((Named) original).getName());
        return found != null && found != scope && found.eClass() == original.eClass() ? found : null;
    }

    /** True when a core of a cable keeps both ends; tells when it does not. */
    private boolean joins(Cable cable, List<Device> devices) {
        for (Core core : cable.getCores()) {
            if (end(core.getA(), devices) != null && end(core.getB(), devices) != null) {
                return true;
            }
        }
        told.add("-" + cable.getName() + " is left out: its ends are not here");
        return false;
    }

    /** The end here: of a copied device the copy's terminal, to be looked up after copying; null when there is none. */
    private Attachment end(Attachment original, List<Device> devices) {
        if (original instanceof Terminal terminal) {
            Device device = Terminals.deviceOf(terminal);
            if (devices.contains(device)) {
                return terminal;
            }
            Device here = device == null ? null : (Device) seen(device);
            return here == null ? null : Terminals.of(here, terminal.getName());
        }
        return (Attachment) seen(original);
    }

    private void add(Device original, WiringFragment fragment) {
        Device copy = (Device) copier.get(original);
        EObject holder = holder(original, fragment);
        name(copy, holder);
        copy.setPart(part(original.getPart(), original));
        for (Way way : List.copyOf(copy.getWays())) {
            if (way.getProtector() != null) {
                way.setProtector(parts.has(way.getProtector()) ? way.getProtector() : parts.same(way.getProtector()));
                if (way.getProtector() == null) {
                    told.add("way " + way.getName() + " of -" + copy.getName() + " is empty: the vehicle's libraries have no such"
                            + " protector");
                    copy.getWays().remove(way);
                }
            }
        }
        if (original.getMountedIn() == null || !copier.containsValue(copy.getMountedIn())) {
            Spot spot = spot(original, fragment);
            unset(copy, VehiclePackage.Literals.DEVICE__MOUNTED_IN);
            copy.setPlace(spot.place());
            copy.setRun(spot.run());
            copy.setAtMm(spot.atMm());
        }
        copy.setBody((org.loomwright.model.vehicle.Body) seen(original.getBody()));
        unset(copy, VehiclePackage.Literals.DEVICE__EXISTING);
        (holder instanceof Vehicle own ? own.getDevices() : ((Arrangement) holder).getDevices()).add(copy);
        added.add(copy);
    }

    private void add(Cable original, WiringFragment fragment) {
        Cable copy = (Cable) copier.get(original);
        copy.setPart(part(original.getPart(), original));
        List<Device> devices = fragment.devices().stream().filter(copier::containsKey).toList();
        boolean inArrangement = false;
        for (int i = 0; i < copy.getCores().size(); i++) {
            Core core = copy.getCores().get(i);
            for (CoreEnd end : CoreEnd.values()) {
                inArrangement |= end(core, original.getCores().get(i), end, devices);
            }
        }
        EObject holder = inArrangement && arrangement != null ? arrangement : holder(original, fragment);
        name(copy, holder);
        runs(copy);
        unset(copy, VehiclePackage.Literals.CABLE__EXISTING);
        (holder instanceof Vehicle own ? own.getCables() : ((Arrangement) holder).getCables()).add(copy);
        added.add(copy);
    }

    /** Fixes one end of a copied core; true when that end is in the arrangement. */
    private boolean end(Core core, Core original, CoreEnd which, List<Device> devices) {
        boolean a = which == CoreEnd.A;
        EReference part = a ? VehiclePackage.Literals.CORE__AEND : VehiclePackage.Literals.CORE__BEND;
        if (original.eGet(part) instanceof Part used) {
            core.eSet(part, parts.has(used) ? used : parts.same(used));
        }
        Attachment before = which.of(original);
        if (before == null) {
            return false;
        }
        Attachment here = end(before, devices);
        Attachment fixed = here == before && copier.containsKey(before) ? (Attachment) copier.get(before) : here;
        if (fixed == null) {
            VehicleEdits.disconnect(core, which);
            core.setSpare(Boolean.TRUE);
            return false;
        }
        which.set(core, fixed);
        return Scopes.arrangement(fixed) != null;
    }

    private void runs(Cable copy) {
        List<Run> path = new ArrayList<>();
        for (Run run : copy.getPath()) {
            path.add((Run) seen(run));
        }
        if (path.contains(null) || !WiringEdits.hangsTogether(path)) {
            copy.getPath().clear();
            copy.unsetPathBy();
            told.add("the path of -" + copy.getName() + " is not here: it takes its shortest way");
        } else if (!path.equals(copy.getPath())) {
            copy.getPath().clear();
            copy.getPath().addAll(path);
        }
        List<org.loomwright.model.vehicle.Duct> ducts = new ArrayList<>();
        copy.getDucts().forEach(duct -> ducts.add((org.loomwright.model.vehicle.Duct) seen(duct)));
        ducts.removeIf(java.util.Objects::isNull);
        if (!ducts.equals(copy.getDucts())) {
            copy.getDucts().clear();
            copy.getDucts().addAll(ducts);
        }
    }

    private EObject holder(EObject original, WiringFragment fragment) {
        return arrangement == null || fragment.shared(original) ? vehicle : arrangement;
    }

    private void name(Named copy, EObject holder) {
        Set<String> taken = new LinkedHashSet<>(NewNames.visible(holder));
        String before = copy.getName();
        if (before != null && !taken.contains(before)) {
            return;
        }
        String stem = before == null ? "A" : before.replaceFirst("[0-9]+$", "");
        copy.setName(NewNames.free(taken, stem.equals(before) ? before + "-" : stem.isEmpty() ? "A" : stem));
        renamed.put(copy, before);
    }

    private static void unset(EObject object, org.eclipse.emf.ecore.EStructuralFeature feature) {
        if (object.eIsSet(feature)) {
            object.eUnset(feature);
        }
    }
}
