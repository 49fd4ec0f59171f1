// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.export.bom.BomItem.Group;
import org.loomwright.export.schedule.CutLength;
import org.loomwright.model.parts.Part;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Passage;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/** Goes through a vehicle and an arrangement and counts what is not there yet. */
final class BomCount {
    private final Needs needs = new Needs();
    private final Map<String, Plan.Cable> planCables = new HashMap<>();
    private final Map<String, Plan.Run> planRuns = new HashMap<>();
    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final Plan plan;
    private final Designations designations;
    private BigDecimal cableMetres = BigDecimal.ZERO;
    private int ends;
    private int ways;

    BomCount(Vehicle vehicle, Arrangement arrangement, Plan plan) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        this.plan = plan;
        designations = new Designations(plan.arrangement());
        plan.cables().forEach(cable -> planCables.put(cable.id(), cable));
        plan.runs().forEach(run -> planRuns.put(run.id(), run));
    }

    Needs count() {
        List<Device> devices = new ArrayList<>(vehicle.getDevices());
        List<Cable> cables = new ArrayList<>(vehicle.getCables());
        List<Duct> ducts = new ArrayList<>(vehicle.getDucts());
        if (arrangement != null) {
            devices.addAll(arrangement.getDevices());
            cables.addAll(arrangement.getCables());
            ducts.addAll(arrangement.getDucts());
        }
        devices.stream().filter(device -> !yes(device.getExisting())).forEach(this::device);
        cables.stream().filter(cable -> !yes(cable.getExisting())).forEach(this::cable);
        ducts.stream().filter(duct -> !yes(duct.getExisting())).forEach(this::duct);
        for (Passage passage : vehicle.getPassages()) {
            partOf(passage.getName(), Group.PASSAGE, passage.getPart());
        }
        vehicle.getBonds().stream().filter(bond -> !yes(bond.getExisting())).forEach(this::bond);
        new ConsumableNeeds(ends, cableMetres, ways, vehicle.getPassages().size()).addTo(needs, vehicle.getLibraries());
        bareEnds();
        return needs;
    }

    private static boolean yes(Boolean flag) {
        return Boolean.TRUE.equals(flag);
    }

    private void device(Device device) {
        partOf(shown(device.getName()), Group.DEVICE, device.getPart());
        for (Way way : device.getWays()) {
            if (known(way.getProtector())) {
                needs.add(new BomItem(Group.PROTECTOR, way.getProtector(), null, ""), BigDecimal.ONE);
                ways++;
            }
        }
    }

    private void cable(Cable cable) {
        for (Core core : cable.getCores()) {
            end(core.getAEnd());
            end(core.getBEnd());
            ends += yes(core.getSpare()) ? 0 : (core.getA() == null ? 0 : 1) + (core.getB() == null ? 0 : 1);
        }
        Plan.Cable planned = planCables.get(id(cable));
        BigDecimal section = planned == null ? null : section(cable, planned);
        BigDecimal metres = planned == null ? null : CutLength.metres(planned.lengthMm());
        if (!known(cable.getPart()) || section == null || metres == null) {
            needs.leaveOut(shown(cable.getName()) + ": the cable's part, section or length is not known");
            return;
        }
        cableMetres = cableMetres.add(metres);
        needs.addLength(new BomItem(Group.CABLE, cable.getPart(), section, Colours.of(cable)), metres);
    }

    private static String id(Cable cable) {
        return cable.eContainer() instanceof Arrangement owner ? owner.getName() + "/" + cable.getName() : cable.getName();
    }

    /**
     * The cable's; where only the cores state one, the largest, by which cables of mixed sections are named. One that is still
     * open is not known, whatever the plan counts with meanwhile.
     */
    private static BigDecimal section(Cable cable, Plan.Cable planned) {
        BigDecimal section = cable.getSectionMm2() != null && Double.isFinite(planned.sectionMm2())
                ? BigDecimal.valueOf(planned.sectionMm2())
                : null;
        for (Core core : cable.getCores()) {
            BigDecimal own = core.getSectionMm2();
            if (cable.getSectionMm2() == null && own != null && (section == null || own.compareTo(section) > 0)) {
                section = own;
            }
        }
        return section == null ? null : section.stripTrailingZeros();
    }

    private void end(Part end) {
        if (known(end)) {
            needs.add(new BomItem(Group.END, end, null, ""), BigDecimal.ONE);
        }
    }

    /** Lugs and receptacles go on studs and tabs; other terminals take the conductor as it is or bring their own. */
    private void bareEnds() {
        long bare = 0;
        for (Plan.Conductor conductor : plan.conductors()) {
            if (!plan.cables().get(conductor.cable()).existing()) {
                bare += conductor.endPartA() == null && wantsEnd(conductor.a()) ? 1 : 0;
                bare += conductor.endPartB() == null && wantsEnd(conductor.b()) ? 1 : 0;
            }
        }
        if (bare > 0) {
            needs.leaveOut(bare + (bare == 1 ? " conductor end on a stud or tab names" : " conductor ends on studs or tabs name")
                    + " no end part");
        }
    }

    private boolean wantsEnd(int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        return at.device() < 0 || "stud".equals(at.form()) || "tab".equals(at.form());
    }

    private void duct(Duct duct) {
        double mm = 0;
        for (Run run : duct.getRuns()) {
            Plan.Run planned = planRuns.get(run.getName());
            mm += planned == null ? Double.NaN : planned.lengthMm();
        }
        if (!known(duct.getPart()) || !(mm > 0)) {
            needs.leaveOut(duct.getName() + ": the duct's part or length is not known");
            return;
        }
        needs.addLength(new BomItem(Group.DUCT, duct.getPart(), null, ""), CutLength.metres(mm));
    }

    /** A bond without part is a bolted joint: nothing is bought for it. */
    private void bond(Bond bond) {
        if (known(bond.getPart())) {
            needs.addPiece(new BomItem(Group.STRAP, bond.getPart(), bond.getPart().getSectionMm2(), ""),
                    bond.getLengthMm() == null ? null : CutLength.metres(bond.getLengthMm()));
        }
    }

    private void partOf(String owner, Group group, Part part) {
        if (known(part)) {
            needs.add(new BomItem(group, part, null, ""), BigDecimal.ONE);
        } else {
            needs.leaveOut(owner + ": no part is named");
        }
    }

    private static boolean known(Part part) {
        return part != null && !part.eIsProxy();
    }

    private String shown(String name) {
        return name == null ? "element without name" : designations.shown(name);
    }
}
