// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.StrapPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** Edits that add wiring and decide on sections and paths. Each throws before it changes anything. */
public final class WiringEdits {
    private WiringEdits() {
    }

    /**
     * Adds a device.
     *
     * @param holder the vehicle, or an arrangement for its own device
     * @param part   its part; may be null until it is chosen
     * @param place  where it sits; may be null
     */
    public static Device addDevice(EObject holder, String name, DevicePart part, Place place) {
        requireHolder(holder);
        Device device = VehicleFactory.eINSTANCE.createDevice();
        NewNames.check(holder, device, name);
        if (place != null) {
            Scopes.requireVisible(holder, place);
        }
        device.setName(name);
        device.setPart(part);
        device.setPlace(place);
        (holder instanceof Vehicle vehicle ? vehicle.getDevices() : ((Arrangement) holder).getDevices()).add(device);
        return device;
    }

    /**
     * Adds a cable with as many cores as its part has, named 1, 2, ... and coloured as the part offers; the first core is
     * connected.
     *
     * @param holder the vehicle, or an arrangement for its own cable
     * @param part   its part; may be null until it is chosen, then there is one core
     * @param a      where the first core begins; may be null
     * @param b      where it ends; may be null
     */
    public static Cable addCable(EObject holder, String name, CablePart part, Attachment a, Attachment b) {
        requireHolder(holder);
        Cable cable = VehicleFactory.eINSTANCE.createCable();
        NewNames.check(holder, cable, name);
        Scopes.requireVisible(holder, a);
        Scopes.requireVisible(holder, b);
        if (a != null && a == b) {
            throw new IllegalArgumentException("both ends of " + name + " would be connected to the same");
        }
        cable.setName(name);
        cable.setPart(part);
        int cores = part == null || part.getCores() == null ? 1 : part.getCores();
        String[] colours = part == null || part.getColours() == null ? new String[0] : part.getColours().trim().split("\\s+");
        for (int i = 0; i < cores; i++) {
            Core core = VehicleFactory.eINSTANCE.createCore();
            core.setName(Integer.toString(i + 1));
            if (cores > 1 && i < colours.length) {
                core.setColour(colours[i]);
            }
            cable.getCores().add(core);
        }
        if (cores > 0) {
            cable.getCores().get(0).setA(a);
            cable.getCores().get(0).setB(b);
        }
        (holder instanceof Vehicle vehicle ? vehicle.getCables() : ((Arrangement) holder).getCables()).add(cable);
        return cable;
    }

    /**
     * Sets or clears the section of a cable.
     *
     * @param sectionMm2 section, mm2, one that the part offers; null leaves it to be sized
     * @param by         who chooses: a study may not change what a person chose, nor wiring of the base vehicle
     */
    public static void setSection(Cable cable, BigDecimal sectionMm2, ChosenBy by) {
        if (by == ChosenBy.SIZING) {
            refuseStudy(cable, cable.getSectionMm2() != null && cable.isSetSectionBy()
                    && cable.getSectionBy() == ChosenBy.PERSON, "section");
        }
        if (sectionMm2 == null) {
            cable.setSectionMm2(null);
            if (cable.isSetSectionBy()) {
                cable.unsetSectionBy();
            }
            return;
        }
        if (sectionMm2.signum() <= 0) {
            throw new IllegalArgumentException(sectionMm2.toPlainString() + " mm2 is no section");
        }
        CablePart part = cable.getPart();
        if (part != null && !part.getRows().isEmpty() && part.getRows().stream().noneMatch(row -> row.getSectionMm2() != null
                && row.getSectionMm2().compareTo(sectionMm2) == 0)) {
            throw new IllegalArgumentException(part.getName() + " is not made with " + sectionMm2.toPlainString() + " mm2");
        }
        cable.setSectionMm2(sectionMm2);
        cable.setSectionBy(by);
    }

    /**
     * Sets the path of a cable.
     *
     * @param runs runs in order, each beginning where the one before ends; empty for the shortest way
     * @param by   who chooses: a study may not change what a person chose, nor wiring of the base vehicle
     */
    public static void setPath(Cable cable, List<Run> runs, ChosenBy by) {
        if (by == ChosenBy.SIZING) {
            refuseStudy(cable, !cable.getPath().isEmpty() && cable.isSetPathBy() && cable.getPathBy() == ChosenBy.PERSON, "path");
        }
        runs.forEach(run -> Scopes.requireVisible(cable, run));
        if (runs.stream().distinct().count() != runs.size()) {
            throw new IllegalArgumentException("a run is passed twice");
        }
        requireChain(runs);
        cable.getPath().clear();
        cable.getPath().addAll(runs);
        if (!runs.isEmpty()) {
            cable.setPathBy(by);
        } else if (cable.isSetPathBy()) {
            cable.unsetPathBy();
        }
    }

    /**
     * Adds a bond between two earth points.
     *
     * @param strap the strap; null for a bolted joint
     */
    public static Bond addBond(Vehicle vehicle, String name, EarthPoint a, EarthPoint b, StrapPart strap) {
        Scopes.require(a, "earth point");
        Scopes.require(b, "earth point");
        Bond bond = VehicleFactory.eINSTANCE.createBond();
        NewNames.check(vehicle, bond, name);
        Scopes.requireVisible(vehicle, a);
        Scopes.requireVisible(vehicle, b);
        if (a == b) {
            throw new IllegalArgumentException("a bond joins two earth points, not one with itself");
        }
        bond.setName(name);
        bond.setA(a);
        bond.setB(b);
        bond.setPart(strap);
        vehicle.getBonds().add(bond);
        return bond;
    }

    private static void requireHolder(EObject holder) {
        if (!(holder instanceof Vehicle) && !(holder instanceof Arrangement)) {
            throw new IllegalArgumentException("devices and cables belong to a vehicle or an arrangement");
        }
    }

    private static void refuseStudy(Cable cable, boolean chosenByPerson, String what) {
        if (chosenByPerson) {
            throw new IllegalArgumentException("the " + what + " of the " + ElementPath.of(cable) + " was chosen by a person");
        }
        if (Boolean.TRUE.equals(cable.getExisting())) {
            throw new IllegalArgumentException("the " + ElementPath.of(cable) + " belongs to the base vehicle");
        }
    }

    /** True when each run begins where the one before ends. */
    static boolean hangsTogether(List<Run> runs) {
        try {
            requireChain(runs);
            return true;
        } catch (IllegalArgumentException gap) {
            return false;
        }
    }

    private static void requireChain(List<Run> runs) {
        Place at = null;
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            if (i == 0) {
                Run next = runs.size() > 1 ? runs.get(1) : null;
                at = next != null && (run.getFrom() == next.getFrom() || run.getFrom() == next.getTo())
                        && !(run.getTo() == next.getFrom() || run.getTo() == next.getTo()) ? run.getFrom() : run.getTo();
            } else if (run.getFrom() == at || run.getTo() == at) {
                at = run.getFrom() == at ? run.getTo() : run.getFrom();
            } else {
                throw new IllegalArgumentException("the run " + run.getName() + " does not begin where "
                        + runs.get(i - 1).getName() + " ends");
            }
        }
    }
}
