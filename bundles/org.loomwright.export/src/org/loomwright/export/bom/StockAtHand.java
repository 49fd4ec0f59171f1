// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.loomwright.model.parts.CableStock;
import org.loomwright.model.parts.DuctForm;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.parts.Part;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.Stock;

/**
 * What lies in the garage, used up line by line: what one line takes is gone for the next. A length of cable, conduit or sleeve
 * serves only for pieces that can be cut from it whole; a duct that opens is laid end to end, so its lengths add up. Cable whose
 * colour the stock does not state serves any colour, after the cable of the right one. Stock below zero counts as none.
 */
final class StockAtHand {
    private final List<Length> cables = new ArrayList<>();
    private final List<Pieces> pieces = new ArrayList<>();

    /** What is left of a length at hand. */
    private static final class Length {
        private final Part part;
        private final BigDecimal sectionMm2;
        private final String colour;
        private BigDecimal metres;

        Length(CableStock of) {
            part = of.getCable();
            sectionMm2 = of.getSectionMm2();
            colour = of.getColour() == null || of.getColour().isBlank() ? null : Colours.of(of.getColour());
            metres = of.getMetres();
        }

        boolean fits(BomItem item) {
            return part == item.part() && sectionMm2 != null && item.sectionMm2() != null
                    && sectionMm2.compareTo(item.sectionMm2()) == 0 && (colour == null || colour.equals(item.colour()));
        }
    }

    /** What is left of one line of pieces, or of metres of duct. */
    private static final class Pieces {
        private final PieceStock of;
        private BigDecimal quantity;

        Pieces(PieceStock of) {
            this.of = of;
            quantity = of.getQuantity();
        }

        boolean names(Part part) {
            return Stream.of(of.getDevice(), of.getProtector(), of.getEnd(), of.getPassage(), of.getStrap(), of.getDuct(),
                    of.getConsumable()).anyMatch(named -> named == part);
        }
    }

    StockAtHand(List<Stock> stocks) {
        for (Stock stock : stocks) {
            stock.getCables().stream().filter(length -> positive(length.getMetres())).map(Length::new).forEach(cables::add);
            stock.getPieces().stream().filter(piece -> positive(piece.getQuantity())).map(Pieces::new).forEach(pieces::add);
        }
    }

    private static boolean positive(BigDecimal number) {
        return number != null && number.signum() > 0;
    }

    /**
     * Takes what there is of an item, at most what is needed.
     *
     * @param needed quantity needed, in the item's unit
     * @param cuts   lengths to cut, m
     * @return quantity taken, in the item's unit
     */
    BigDecimal take(BomItem item, BigDecimal needed, List<BigDecimal> cuts) {
        if (item.group() == BomItem.Group.CABLE) {
            return cut(cables.stream().filter(length -> length.fits(item)).toList(), cuts);
        }
        if (item.part() instanceof DuctPart duct && duct.getForm() != DuctForm.OPENABLE) {
            return cutDuct(item, cuts);
        }
        return count(item, needed);
    }

    private BigDecimal count(BomItem item, BigDecimal needed) {
        boolean whole = BomItem.PIECES.equals(item.unit());
        BigDecimal taken = BigDecimal.ZERO;
        for (Pieces piece : pieces) {
            if (piece.names(item.part())) {
                BigDecimal there = whole ? piece.quantity.setScale(0, RoundingMode.FLOOR) : piece.quantity;
                BigDecimal now = there.min(needed.subtract(taken));
                piece.quantity = piece.quantity.subtract(now);
                taken = taken.add(now);
            }
        }
        return taken;
    }

    /** Longest pieces first, each from the shortest length left that holds it, cable of the right colour before any colour. */
    private static BigDecimal cut(List<Length> lengths, List<BigDecimal> cuts) {
        Comparator<Length> best = Comparator.comparing((Length length) -> length.colour == null)
                .thenComparing(length -> length.metres);
        BigDecimal taken = BigDecimal.ZERO;
        for (BigDecimal cut : longestFirst(cuts)) {
            Length from = lengths.stream().filter(length -> length.metres.compareTo(cut) >= 0).min(best).orElse(null);
            if (from != null) {
                from.metres = from.metres.subtract(cut);
                taken = taken.add(cut);
            }
        }
        return taken;
    }

    private BigDecimal cutDuct(BomItem item, List<BigDecimal> cuts) {
        BigDecimal taken = BigDecimal.ZERO;
        for (BigDecimal cut : longestFirst(cuts)) {
            Pieces from = pieces.stream().filter(piece -> piece.names(item.part()) && piece.quantity.compareTo(cut) >= 0)
                    .min(Comparator.comparing(piece -> piece.quantity)).orElse(null);
            if (from != null) {
                from.quantity = from.quantity.subtract(cut);
                taken = taken.add(cut);
            }
        }
        return taken;
    }

    private static List<BigDecimal> longestFirst(List<BigDecimal> cuts) {
        return cuts.stream().sorted(Comparator.reverseOrder()).toList();
    }
}
