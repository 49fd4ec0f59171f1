// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.parts.CableStock;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.vehicle.Vehicle;

/** The cable that lies in a vehicle's stores. */
public final class StockLengths {
    private StockLengths() {
    }

    /**
     * Cable at hand.
     *
     * @param part       name of the part
     * @param sectionMm2 section, mm2
     * @param colour     IEC 60757 letters, or null where the store states none
     * @param lengthMm   length, mm
     */
    public record Length(String part, double sectionMm2, String colour, double lengthMm) {
    }

    /** All lengths, in the order of the stock files; none when the vehicle names no store. */
    public static List<Length> of(Vehicle vehicle) {
        List<Length> lengths = new ArrayList<>();
        for (Stock stock : vehicle.getStock()) {
            for (CableStock row : stock.eIsProxy() ? List.<CableStock>of() : stock.getCables()) {
                if (row.getCable() != null && !row.getCable().eIsProxy() && row.getSectionMm2() != null
                        && row.getMetres() != null) {
                    lengths.add(new Length(row.getCable().getName(), row.getSectionMm2().doubleValue(), row.getColour(),
                            1000 * row.getMetres().doubleValue()));
                }
            }
        }
        return lengths;
    }
}
