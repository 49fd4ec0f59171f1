// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * What has to be bought for an arrangement. Existing wiring and equipment of the base vehicle is left out; stock at hand is
 * deducted.
 *
 * @param vehicle     name of the vehicle
 * @param arrangement name of the arrangement; empty for none
 * @param lines       lines by group, then part, section and colour
 * @param uncounted   what is missing from the lines and why, a sentence each
 */
public record BillOfMaterials(String vehicle, String arrangement, List<BomLine> lines, List<String> uncounted) {
    public BillOfMaterials {
        lines = List.copyOf(lines);
        uncounted = List.copyOf(uncounted);
    }

    /** Price of all that is to be bought, the sum of the lines, in the libraries' currency; a line without price adds nothing. */
    public BigDecimal price() {
        return sum(BomLine::price);
    }

    /** Mass of all that is needed, g; lines without a mass count nothing. */
    public BigDecimal massG() {
        return sum(BomLine::massG);
    }

    /** Lines whose price the libraries do not give. */
    public long linesWithoutPrice() {
        return lines.stream().filter(line -> line.unitPrice() == null && line.toBuy().signum() > 0).count();
    }

    /** Lines whose mass the libraries do not give. */
    public long linesWithoutMass() {
        return lines.stream().filter(line -> line.unitMassG() == null).count();
    }

    private BigDecimal sum(Function<BomLine, BigDecimal> of) {
        return lines.stream().map(of).filter(Objects::nonNull).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
