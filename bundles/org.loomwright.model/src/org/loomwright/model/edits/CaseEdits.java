// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.SwitchPosition;
import org.loomwright.model.vehicle.VehicleFactory;

/** Edits of operating states: which loads are on, and how hand switches stand. */
public final class CaseEdits {
    private CaseEdits() {
    }

    /**
     * States that a load is on in a case, instead of what the case said about it.
     *
     * @param load    the device
     * @param element name of one demand of its part; null for all of the device
     * @param factor  share of the rated demand, 0 or more; null for 1
     * @param onS     seconds on in each period; null for always on
     * @param periodS period, s, at least {@code onS}; given exactly when {@code onS} is
     */
    public static DemandState setLoad(Case state, Device load, String element, BigDecimal factor, BigDecimal onS,
            BigDecimal periodS) {
        Scopes.require(load, "load");
        requireSameVehicle(state, load);
        requireDemand(load, element);
        if (factor != null && factor.signum() < 0) {
            throw new IllegalArgumentException("a load cannot be on by less than nothing (" + factor.toPlainString() + ")");
        }
        if ((onS == null) != (periodS == null)) {
            throw new IllegalArgumentException("a duty is stated by both the seconds on and the period");
        }
        if (onS != null && (onS.signum() <= 0 || onS.compareTo(periodS) > 0)) {
            throw new IllegalArgumentException(onS.toPlainString() + " s on in a period of " + periodS.toPlainString()
                    + " s is no duty");
        }
        DemandState demand = find(state, load, element);
        boolean added = demand == null;
        if (added) {
            demand = VehicleFactory.eINSTANCE.createDemandState();
            demand.setDevice(load);
            demand.setElement(element);
        }
        demand.setFactor(factor);
        demand.setOnS(onS);
        demand.setPeriodS(periodS);
        if (added) {
            state.getDemands().add(demand);
        }
        return demand;
    }

    /** Takes a load off the list of what is on in a case. */
    public static void removeLoad(Case state, Device load, String element) {
        DemandState known = find(state, load, element);
        if (known == null) {
            throw new IllegalArgumentException("the " + ElementPath.of(load) + " is not listed in the case " + state.getName());
        }
        state.getDemands().remove(known);
    }

    /**
     * States how a hand switch stands in a case.
     *
     * @param contact name of the contact; null for all hand contacts of the device
     * @param closed  null for the rest position
     */
    public static void setPosition(Case state, Device device, String contact, Boolean closed) {
        Scopes.require(device, "switch");
        requireSameVehicle(state, device);
        requireHandContact(device, contact);
        SwitchPosition known = state.getPositions().stream().filter(position -> position.getDevice() == device
                && Objects.equals(position.getContact(), contact)).findFirst().orElse(null);
        if (closed == null) {
            state.getPositions().remove(known);
        } else if (known != null) {
            known.setClosed(closed);
        } else {
            SwitchPosition added = VehicleFactory.eINSTANCE.createSwitchPosition();
            added.setDevice(device);
            added.setContact(contact);
            added.setClosed(closed);
            state.getPositions().add(added);
        }
    }

    private static DemandState find(Case state, Device load, String element) {
        return state.getDemands().stream().filter(demand -> demand.getDevice() == load
                && Objects.equals(demand.getElement(), element)).findFirst().orElse(null);
    }

    /** Cases may name devices of arrangements, too: what an arrangement lacks does not matter in it. */
    private static void requireSameVehicle(Case state, Device device) {
        if (Scopes.vehicle(state) != Scopes.vehicle(device)) {
            throw new IllegalArgumentException("the " + ElementPath.of(device) + " belongs to another vehicle");
        }
    }

    private static void requireDemand(Device load, String element) {
        DevicePart part = load.getPart();
        if (part == null) {
            return;
        }
        if (part.getDemands().isEmpty()) {
            throw new IllegalArgumentException("the " + ElementPath.of(load) + " draws nothing: its part " + part.getName()
                    + " has no demand");
        }
        if (element != null && part.getDemands().stream().noneMatch(demand -> element.equals(demand.getName()))) {
            throw new IllegalArgumentException("the " + ElementPath.of(load) + " has no demand " + element);
        }
    }

    private static void requireHandContact(Device device, String contact) {
        DevicePart part = device.getPart();
        if (part == null) {
            return;
        }
        List<Contact> hand = part.getContacts().stream()
                .filter(c -> c.isSetDriver() && c.getDriver() == Driver.HAND).toList();
        if (hand.isEmpty()) {
            throw new IllegalArgumentException("the " + ElementPath.of(device) + " has no contact that is moved by hand");
        }
        if (contact != null && hand.stream().noneMatch(c -> contact.equals(c.getName()))) {
            throw new IllegalArgumentException("the " + ElementPath.of(device) + " has no hand contact " + contact);
        }
    }
}
