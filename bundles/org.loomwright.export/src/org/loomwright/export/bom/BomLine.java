// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * One line of a bill of materials.
 *
 * @param group      what kind of thing it is, for people
 * @param part       name of the part
 * @param label      what it is, for people
 * @param orderCode  code to order by, or empty
 * @param sectionMm2 section of a cable or strap, else null
 * @param colour     colour of a cable, IEC 60757 letters, else empty
 * @param unit       {@code pcs}, {@code m}, or the unit of a consumable
 * @param needed     quantity needed, in unit
 * @param fromStock  part of it that lies at hand, in unit
 * @param unitPrice  price of one unit, or null when the library gives none
 * @param unitMassG  mass of one unit, g, or null when the library gives none
 * @param cuts       lengths to cut, m, longest first; of straps the lengths of the pieces; empty where no length is known
 */
public record BomLine(String group, String part, String label, String orderCode, BigDecimal sectionMm2, String colour,
        String unit, BigDecimal needed, BigDecimal fromStock, BigDecimal unitPrice, BigDecimal unitMassG,
        List<BigDecimal> cuts) {
    public BomLine {
        cuts = List.copyOf(cuts);
    }

    /** Quantity to buy, in unit. */
    public BigDecimal toBuy() {
        return needed.subtract(fromStock);
    }

    /** Price of what is to be bought, rounded to two decimals as on a bill, or null when the library gives no price. */
    public BigDecimal price() {
        return unitPrice == null ? null : unitPrice.multiply(toBuy()).setScale(2, RoundingMode.HALF_UP);
    }

    /** Mass of what is needed, g, or null when the library gives none. */
    public BigDecimal massG() {
        return unitMassG == null ? null : unitMassG.multiply(needed);
    }
}
