// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Makes the bill of materials of an arrangement: devices, protectors in their ways, cables by type, section and colour with
 * their cut lengths, cable ends, ducts, passages, straps, and the consumables that the libraries count by any of these. Lengths
 * are those of the plan, tails and slack included, cut to full centimetres upwards. Protectors in devices of the base vehicle
 * are existing like the device. What cannot be counted is said in the bill.
 */
public final class BomBuilder {
    private BomBuilder() {
    }

    /**
     * The bill of materials.
     *
     * @param vehicle     the vehicle
     * @param arrangement one of its arrangements, or null when it has none
     * @param plan        plan of that arrangement, for the lengths
     */
    public static BillOfMaterials build(Vehicle vehicle, Arrangement arrangement, Plan plan) {
        Needs needs = new BomCount(vehicle, arrangement, plan).count();
        StockAtHand stock = new StockAtHand(vehicle.getStock());
        List<BomLine> lines = needs.sorted().stream().map(item -> line(item, needs, stock)).toList();
        return new BillOfMaterials(plan.vehicle(), plan.arrangement(), lines, needs.uncounted());
    }

    private static BomLine line(BomItem item, Needs needs, StockAtHand stock) {
        BigDecimal needed = needs.total(item);
        List<BigDecimal> cuts = needs.cuts(item);
        return new BomLine(item.group().title(), needs.name(item.part()), text(item.part().getLabel()),
                text(item.part().getOrderCode()), item.sectionMm2(), item.colour(), item.unit(), needed,
                stock.take(item, needed, cuts), price(item), mass(item), cuts);
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
        return part.getRows().stream().filter(row -> row.getSectionMm2() != null
                && row.getSectionMm2().compareTo(section) == 0).findFirst().orElse(null);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
