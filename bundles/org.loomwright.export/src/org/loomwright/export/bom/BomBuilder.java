// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.export.bom.BomItem.Group;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.parts.Part;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Passage;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/**
 * Counts what an arrangement needs: devices, protectors in their ways, cables by type, section and colour with their cut
 * lengths, cable ends, ducts, passages and straps. Lengths are those of the plan, tails and slack included, cut to full
 * centimetres upwards.
 */
public final class BomBuilder {
    private static final BigDecimal MM_PER_M = BigDecimal.valueOf(1000);
    private final Map<BomItem, List<BigDecimal>> needs = new LinkedHashMap<>();
    private final Map<String, Plan.Cable> planCables = new HashMap<>();
    private final Vehicle vehicle;
    private final Arrangement arrangement;

    private BomBuilder(Vehicle vehicle, Arrangement arrangement, Plan plan) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        plan.cables().forEach(cable -> planCables.put(cable.id(), cable));
    }

    /**
     * The bill of materials.
     *
     * @param vehicle     the vehicle
     * @param arrangement one of its arrangements, or null when it has none
     * @param plan        plan of that arrangement, for the lengths
     */
    public static BillOfMaterials build(Vehicle vehicle, Arrangement arrangement, Plan plan) {
        BomBuilder builder = new BomBuilder(vehicle, arrangement, plan);
        builder.collect();
        return new BillOfMaterials(plan.vehicle(), plan.arrangement(), builder.lines());
    }

    private void collect() {
        devices().filter(device -> !yes(device.getExisting())).forEach(this::device);
        cables().filter(cable -> !yes(cable.getExisting())).forEach(this::cable);
        ducts().filter(duct -> !yes(duct.getExisting())).forEach(this::duct);
        for (Passage passage : vehicle.getPassages()) {
            piece(Group.PASSAGE, passage.getPart());
        }
        for (Bond bond : vehicle.getBonds()) {
            if (!yes(bond.getExisting()) && bond.getPart() != null) {
                need(new BomItem(Group.STRAP, bond.getPart(), bond.getPart().getSectionMm2(), ""), BigDecimal.ONE);
            }
        }
    }

    private static boolean yes(Boolean flag) {
        return Boolean.TRUE.equals(flag);
    }

    private Stream<Device> devices() {
        return arrangement == null ? vehicle.getDevices().stream()
                : Stream.concat(vehicle.getDevices().stream(), arrangement.getDevices().stream());
    }

    private Stream<Cable> cables() {
        return arrangement == null ? vehicle.getCables().stream()
                : Stream.concat(vehicle.getCables().stream(), arrangement.getCables().stream());
    }

    private Stream<Duct> ducts() {
        return arrangement == null ? vehicle.getDucts().stream()
                : Stream.concat(vehicle.getDucts().stream(), arrangement.getDucts().stream());
    }

    private void device(Device device) {
        piece(Group.DEVICE, device.getPart());
        for (Way way : device.getWays()) {
            piece(Group.PROTECTOR, way.getProtector());
        }
    }

    private void cable(Cable cable) {
        String id = cable.eContainer() instanceof Arrangement owner ? owner.getName() + "/" + cable.getName() : cable.getName();
        Plan.Cable planned = planCables.get(id);
        if (cable.getPart() == null || planned == null) {
            return;
        }
        BigDecimal metres = BigDecimal.valueOf(planned.lengthMm()).divide(MM_PER_M, 2, RoundingMode.CEILING);
        BigDecimal section = cable.getSectionMm2() != null ? cable.getSectionMm2()
                : BigDecimal.valueOf(planned.sectionMm2()).stripTrailingZeros();
        need(new BomItem(Group.CABLE, cable.getPart(), section.stripTrailingZeros(), colours(cable)), metres);
        for (Core core : cable.getCores()) {
            end(core.getAEnd());
            end(core.getBEnd());
        }
    }

    private void end(EndPart end) {
        piece(Group.END, end);
    }

    private static String colours(Cable cable) {
        return String.join(" ", cable.getCores().stream().map(Core::getColour).filter(colour -> colour != null).toList());
    }

    private void duct(Duct duct) {
        if (duct.getPart() == null) {
            return;
        }
        BigDecimal mm = duct.getRuns().stream().map(RunLength::of).reduce(BigDecimal.ZERO, BigDecimal::add);
        need(new BomItem(Group.DUCT, duct.getPart(), null, ""), mm.divide(MM_PER_M, 2, RoundingMode.CEILING));
    }

    private void piece(Group group, Part part) {
        if (part != null) {
            need(new BomItem(group, part, null, ""), BigDecimal.ONE);
        }
    }

    private void need(BomItem item, BigDecimal quantity) {
        needs.computeIfAbsent(item, key -> new ArrayList<>()).add(quantity);
    }

    private List<BomLine> lines() {
        StockAtHand stock = new StockAtHand(vehicle.getStock());
        Comparator<BomItem> order = Comparator.comparing(BomItem::group).thenComparing(item -> item.part().getName())
                .thenComparing(BomItem::sectionMm2, Comparator.nullsFirst(Comparator.naturalOrder()))
                .thenComparing(BomItem::colour);
        return needs.keySet().stream().sorted(order).map(item -> line(item, stock)).toList();
    }

    private BomLine line(BomItem item, StockAtHand stock) {
        List<BigDecimal> quantities = needs.get(item);
        BigDecimal needed = quantities.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        boolean byLength = item.group() == Group.CABLE || item.group() == Group.DUCT;
        BigDecimal atHand = stock.of(item, item.group() == Group.CABLE ? quantities : List.of());
        List<BigDecimal> cuts = item.group() == Group.CABLE
                ? quantities.stream().sorted(Comparator.reverseOrder()).toList()
                : List.of();
        return new BomLine(item.group().title(), item.part().getName(), text(item.part().getLabel()),
                text(item.part().getOrderCode()), item.sectionMm2(), item.colour(), byLength ? "m" : "pcs", needed,
                atHand.min(needed), price(item), mass(item), cuts);
    }

    private static BigDecimal price(BomItem item) {
        if (item.part() instanceof CablePart cable) {
            CableRow row = row(cable, item.sectionMm2());
            return row == null ? null : row.getPricePerM();
        }
        return item.part() instanceof DuctPart duct ? duct.getPricePerM() : item.part().getPrice();
    }

    private static BigDecimal mass(BomItem item) {
        if (item.part() instanceof CablePart cable) {
            CableRow row = row(cable, item.sectionMm2());
            return row == null ? null : row.getMassGPerM();
        }
        return item.part() instanceof DuctPart duct ? duct.getMassGPerM() : item.part().getMassG();
    }

    private static CableRow row(CablePart part, BigDecimal section) {
        return part.getRows().stream().filter(row -> row.getSectionMm2() != null && section != null
                && row.getSectionMm2().compareTo(section) == 0).findFirst().orElse(null);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
