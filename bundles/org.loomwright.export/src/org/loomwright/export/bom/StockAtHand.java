// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.loomwright.model.parts.CableStock;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.Stock;

/** What of a need lies in the garage. A length of cable serves only for pieces that can be cut from it whole. */
final class StockAtHand {
    private final List<Stock> stocks;

    StockAtHand(List<Stock> stocks) {
        this.stocks = stocks;
    }

    /**
     * Quantity at hand for an item.
     *
     * @param cuts lengths to cut where the item is a cable, m; empty for pieces and ducts
     */
    BigDecimal of(BomItem item, List<BigDecimal> cuts) {
        return item.group() == BomItem.Group.CABLE ? cable(item, cuts) : pieces(item);
    }

    private BigDecimal pieces(BomItem item) {
        return stocks.stream().flatMap(stock -> stock.getPieces().stream()).filter(piece -> names(piece, item))
                .map(PieceStock::getQuantity).filter(java.util.Objects::nonNull).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean names(PieceStock piece, BomItem item) {
        return Stream.of(piece.getDevice(), piece.getProtector(), piece.getEnd(), piece.getPassage(), piece.getStrap(),
                piece.getDuct()).anyMatch(part -> part == item.part());
    }

    /** Longest pieces first, each from the shortest length left that holds it. */
    private BigDecimal cable(BomItem item, List<BigDecimal> cuts) {
        List<BigDecimal> left = new ArrayList<>();
        for (Stock stock : stocks) {
            for (CableStock length : stock.getCables()) {
                if (length.getCable() == item.part() && length.getMetres() != null && length.getSectionMm2() != null
                        && length.getSectionMm2().compareTo(item.sectionMm2()) == 0
                        && (length.getColour() == null || length.getColour().equals(item.colour()))) {
                    left.add(length.getMetres());
                }
            }
        }
        BigDecimal used = BigDecimal.ZERO;
        for (BigDecimal cut : cuts.stream().sorted(Comparator.reverseOrder()).toList()) {
            left.sort(Comparator.naturalOrder());
            for (int i = 0; i < left.size(); i++) {
                if (left.get(i).compareTo(cut) >= 0) {
                    left.set(i, left.get(i).subtract(cut));
                    used = used.add(cut);
                    break;
                }
            }
        }
        return used;
    }
}
