// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.files.Terminals;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.ArrangementStatus;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Return;
import org.loomwright.model.vehicle.ReturnBy;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.VehiclePackage;
import org.loomwright.model.vehicle.Waiver;

/**
 * Edits of a vehicle: connecting, placing, renaming, deleting and a few more. Each does one thing completely or throws an
 * {@link IllegalArgumentException} in the user's words and changes nothing. They use nothing but the model, so they can be
 * recorded and undone.
 */
public final class VehicleEdits {
    private VehicleEdits() {
    }

    /**
     * Connects an end of a core, instead of what it was connected to; a spare core is no longer spare.
     *
     * @throws IllegalArgumentException when the attachment is out of sight, the part has no such terminal, or the other end
     *                                  is connected to the same
     */
    public static void connect(Core core, CoreEnd end, Attachment attachment) {
        Scopes.require(attachment, "terminal or earth point");
        Scopes.requireVisible(core, attachment);
        if (attachment instanceof Terminal terminal) {
            requireTerminal(Terminals.deviceOf(terminal), terminal.getName());
        }
        if (end.other().of(core) == attachment) {
            throw new IllegalArgumentException("both ends of the " + ElementPath.of(core) + " would be connected to the same");
        }
        end.set(core, attachment);
        if (core.getSpare() != null) {
            core.setSpare(null);
        }
    }

    /** Connects an end of a core to a terminal of a device, for example L+. */
    public static void connect(Core core, CoreEnd end, Device device, String terminal) {
        Scopes.require(device, "device");
        requireTerminal(device, terminal);
        connect(core, end, Terminals.of(device, terminal));
    }

    /** Opens an end of a core; the end part and its place in the stack go too. */
    public static void disconnect(Core core, CoreEnd end) {
        boolean a = end == CoreEnd.A;
        for (var feature : List.of(a ? VehiclePackage.Literals.CORE__A : VehiclePackage.Literals.CORE__B,
                a ? VehiclePackage.Literals.CORE__AEND : VehiclePackage.Literals.CORE__BEND,
                a ? VehiclePackage.Literals.CORE__AORDER : VehiclePackage.Literals.CORE__BORDER)) {
            if (core.eIsSet(feature)) {
                core.eUnset(feature);
            }
        }
    }

    /**
     * Puts a device in a place, in all arrangements; it no longer sits on a run or in another device. Placements of single
     * arrangements that
     * say otherwise stay.
     */
    public static void place(Device device, Place place) {
        Scopes.require(place, "place");
        Scopes.requireVisible(device, place);
        device.setPlace(place);
        if (device.getRun() != null) {
            device.setRun(null);
        }
        if (device.getAtMm() != null) {
            device.setAtMm(null);
        }
        if (device.getMountedIn() != null) {
            device.setMountedIn(null);
        }
    }

    /**
     * Puts a device in a place in one arrangement only. For an arrangement's own device that is the same as placing it;
     * going back to the vehicle's place removes the exception.
     *
     * @throws IllegalArgumentException when the device belongs to another arrangement
     */
    public static void place(Arrangement arrangement, Device device, Place place) {
        Scopes.require(place, "place");
        Scopes.requireVisible(arrangement, device);
        Scopes.requireVisible(arrangement, place);
        if (Scopes.arrangement(device) == arrangement) {
            place(device, place);
            return;
        }
        Placement known = arrangement.getPlacements().stream().filter(p -> p.getDevice() == device).findFirst().orElse(null);
        if (place == device.getPlace()) {
            if (known != null) {
                arrangement.getPlacements().remove(known);
            }
        } else if (known != null) {
            known.setPlace(place);
        } else {
            Placement placement = VehicleFactory.eINSTANCE.createPlacement();
            placement.setDevice(device);
            placement.setPlace(place);
            arrangement.getPlacements().add(placement);
        }
    }

    /**
     * Puts a device on a run instead of in a place.
     *
     * @param atMm distance from the run's first place, mm, not below 0 nor beyond the run's stated length
     */
    public static void placeOnRun(Device device, Run run, BigDecimal atMm) {
        Scopes.requireVisible(device, run);
        requireOnRun(run, atMm);
        device.setPlace(null);
        if (device.getMountedIn() != null) {
            device.setMountedIn(null);
        }
        device.setRun(run);
        device.setAtMm(atMm);
    }

    /** Refuses a distance that does not lie on a run. */
    static void requireOnRun(Run run, BigDecimal atMm) {
        Scopes.require(run, "run");
        Scopes.require(atMm, "distance");
        if (atMm.signum() < 0 || run.getLengthMm() != null && atMm.compareTo(run.getLengthMm()) > 0) {
            throw new IllegalArgumentException(atMm.toPlainString() + " mm is not on the run " + run.getName()
                    + (run.getLengthMm() == null ? "" : ", which is " + run.getLengthMm().toPlainString() + " mm long"));
        }
    }

    /**
     * Gives an element another name. References follow, as do waivers and sheets of the same file. Files that are not open do
     * not follow when a part or a library is renamed.
     *
     * @throws IllegalArgumentException when it is no name, or taken in the same place
     */
    public static void rename(Named element, String name) {
        if (element instanceof Terminal) {
            throw new IllegalArgumentException("terminals are named by the device's part");
        }
        NewNames.check(element.eContainer(), element, name);
        if (name.equals(element.getName())) {
            return;
        }
        FragmentTexts texts = FragmentTexts.of(element);
        element.setName(name);
        texts.rewrite();
    }

    /**
     * Deletes an element with what makes no sense without it; {@link Deletion} tells beforehand what that is.
     *
     * @return all elements that went, the one asked for first
     */
    public static List<EObject> delete(EObject element) {
        Deletion deletion = Deletion.of(element);
        List<EObject> removed = deletion.removed();
        deletion.apply();
        return removed;
    }

    /** Makes an arrangement the one that is or will be built; one that was adopted before becomes a draft. */
    public static void adopt(Arrangement arrangement) {
        Vehicle vehicle = Scopes.vehicle(arrangement);
        Arrangement before = vehicle.getAdopted();
        if (before != null && before != arrangement && before.isSetStatus()
                && before.getStatus() == ArrangementStatus.ADOPTED) {
            before.setStatus(ArrangementStatus.DRAFT);
        }
        vehicle.setAdopted(arrangement);
        if (!arrangement.isSetStatus() || arrangement.getStatus() == ArrangementStatus.DRAFT) {
            arrangement.setStatus(ArrangementStatus.ADOPTED);
        }
    }

    /** States how a load returns in an arrangement; null leaves it open again. */
    public static void setReturn(Arrangement arrangement, Device load, ReturnBy by) {
        Scopes.requireVisible(arrangement, load);
        Return known = arrangement.getReturns().stream().filter(r -> r.getDevice() == load).findFirst().orElse(null);
        if (by == null) {
            arrangement.getReturns().remove(known);
        } else if (known != null) {
            known.setBy(by);
        } else {
            Return added = VehicleFactory.eINSTANCE.createReturn();
            added.setDevice(load);
            added.setBy(by);
            arrangement.getReturns().add(added);
        }
    }

    /**
     * Accepts a finding with a reason, instead of an earlier waiver of the same finding.
     *
     * @param rule    slug of the rule
     * @param element fragment of the element
     * @param reason  why it is accepted; must say something
     * @param who     who accepts it
     * @param when    date, ISO 8601
     */
    public static Waiver waive(Vehicle vehicle, String rule, String element, String reason, String who, String when) {
        if (reason == null || reason.isBlank()) {
            throw new IllegalArgumentException("a finding is accepted with a reason only");
        }
        if (rule == null || rule.isBlank() || element == null || element.isBlank()) {
            throw new IllegalArgumentException("a waiver names a rule and an element");
        }
        Waiver waiver = vehicle.getWaivers().stream()
                .filter(w -> rule.equals(w.getRule()) && element.equals(w.getElement())).findFirst().orElse(null);
        boolean added = waiver == null;
        if (added) {
            waiver = VehicleFactory.eINSTANCE.createWaiver();
            waiver.setRule(rule);
            waiver.setElement(element);
        }
        waiver.setReason(reason);
        waiver.setWho(who);
        waiver.setWhen(when);
        if (added) {
            vehicle.getWaivers().add(waiver);
        }
        return waiver;
    }

    private static void requireTerminal(Device device, String name) {
        Scopes.require(device, "device");
        DevicePart part = device.getPart();
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("no terminal of the " + ElementPath.of(device) + " given");
        }
        if (part != null && part.getTerminals().stream().noneMatch(spec -> Objects.equals(spec.getName(), name))) {
            throw new IllegalArgumentException("the " + ElementPath.of(device) + " has no terminal " + name + "; its part "
                    + part.getName() + " has " + String.join(", ",
                            part.getTerminals().stream().map(Named::getName).filter(Objects::nonNull).toList()));
        }
    }
}
