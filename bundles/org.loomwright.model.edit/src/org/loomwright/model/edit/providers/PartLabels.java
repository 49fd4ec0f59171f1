// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.CableStock;
import org.loomwright.model.parts.ConsumablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PassagePart;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.parts.StrapPart;

/** Labels of libraries, parts and stock. */
final class PartLabels {
    private PartLabels() {
    }

    private static LabelText named(Named element) {
        return new LabelText(element.getName()).add(element.getLabel());
    }

    /** {@code base  Basic parts library}. */
    static String of(PartsLibrary library) {
        return named(library).text();
    }

    /** {@code lfp-200  LFP battery 200 Ah}. */
    static String of(DevicePart part) {
        return named(part).add(Figures.of(part)).text();
    }

    /** {@code blade-std-15  15 A, 32 V}. */
    static String of(ProtectorPart part) {
        return named(part).add(part.getRatingA(), "A").add(part.getRatedV(), "V").text();
    }

    /** {@code twin-pvc  Twin, sheathed, 0.5 to 6 mm2}. */
    static String of(CablePart part) {
        List<BigDecimal> sections = part.getRows().stream().map(CableRow::getSectionMm2).filter(Objects::nonNull)
                .sorted().toList();
        return named(part)
                .add(sections.isEmpty() ? null : LabelText.range(sections.get(0), sections.get(sections.size() - 1), "mm2"))
                .text();
    }

    /** {@code 2.081 mm2  AWG 14, outer diameter 3.6 mm}. */
    static String of(CableRow row) {
        String outer = LabelText.quantity(row.getOuterDiameterMm(), "mm");
        return new LabelText(LabelText.quantity(row.getSectionMm2(), "mm2")).add(row.getSize())
                .add(outer == null ? null : "outer diameter " + outer).text();
    }

    /** {@code conduit-23  Corrugated conduit, inside 23 mm}. */
    static String of(DuctPart part) {
        BigDecimal width = part.getInnerWidthMm();
        BigDecimal height = part.getInnerHeightMm();
        String inside = part.getInnerDiameterMm() != null ? LabelText.quantity(part.getInnerDiameterMm(), "mm")
                : width == null || height == null ? null : width.toPlainString() + " x " + LabelText.quantity(height, "mm");
        return named(part).add(inside == null ? null : "inside " + inside).text();
    }

    /** {@code gland-m16  Cable gland M16, for 5 to 10 mm}. */
    static String of(PassagePart part) {
        String clamps = LabelText.range(part.getClampMinMm(), part.getClampMaxMm(), "mm");
        return named(part).add(clamps == null ? null : "for " + clamps).text();
    }

    /** {@code lug-m8-35  Cable lug, M8, 25 to 35 mm2}. */
    static String of(EndPart part) {
        return named(part).add(thread(part.getStudMm()))
                .add(LabelText.range(part.getSectionMinMm2(), part.getSectionMaxMm2(), "mm2")).text();
    }

    /** {@code strap-16  Braided strap, 16 mm2, M8}. */
    static String of(StrapPart part) {
        return named(part).add(part.getSectionMm2(), "mm2").add(thread(part.getStudMm())).text();
    }

    private static String thread(BigDecimal studMm) {
        return studMm == null ? null : "M" + studMm.toPlainString();
    }

    /** {@code cable-tie  Cable tie, 3 piece per cable-metre}. */
    static String of(ConsumablePart part) {
        String each = LabelText.quantity(part.getQuantity(), part.getUnit() == null ? "piece" : part.getUnit());
        return named(part).add(part.getPer() == null ? null : (each == null ? "" : each + " ") + "per " + part.getPer()).text();
    }

    /** {@code garage  What lies in the garage}. */
    static String of(Stock stock) {
        return named(stock).text();
    }

    /** {@code 42 m  twin-xl 1.5 mm2 RD BK}. */
    static String of(CableStock length) {
        return new LabelText(LabelText.quantity(length.getMetres(), "m")).add(Designated.name(length.getCable()))
                .addTo(LabelText.quantity(length.getSectionMm2(), "mm2")).addTo(length.getColour()).text();
    }

    /** {@code 20 pcs  blade-std-3}; ducts in metres, consumables in their own unit. */
    static String of(PieceStock pieces) {
        String unit = pieces.getDuct() != null ? "m"
                : pieces.getConsumable() != null && !pieces.getConsumable().eIsProxy() && pieces.getConsumable().getUnit() != null
                        ? pieces.getConsumable().getUnit() : "pcs";
        String part = Stream.of(pieces.getDevice(), pieces.getProtector(), pieces.getEnd(), pieces.getPassage(),
                pieces.getStrap(), pieces.getConsumable(), pieces.getDuct()).map(Designated::name).filter(Objects::nonNull)
                .findFirst().orElse(null);
        return new LabelText(LabelText.quantity(pieces.getQuantity(), unit)).add(part).text();
    }
}
