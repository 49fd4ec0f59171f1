// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomwright.export.bom.BomItem.Group;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableStock;
import org.loomwright.model.parts.ConsumablePart;
import org.loomwright.model.parts.DuctForm;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.Stock;

/** What lies in the garage is given once, and lengths only where a whole piece can be cut from them. */
class StockAtHandTest {
    private static final PartsFactory PARTS = PartsFactory.eINSTANCE;
    private final Stock stock = PARTS.createStock();
    private final CablePart cable = PARTS.createCablePart();
    private final EndPart lug = PARTS.createEndPart();

    private void coil(String section, String colour, String metres) {
        CableStock coil = PARTS.createCableStock();
        coil.setCable(cable);
        coil.setSectionMm2(new BigDecimal(section));
        coil.setColour(colour);
        coil.setMetres(new BigDecimal(metres));
        stock.getCables().add(coil);
    }

    private PieceStock pieces(String quantity) {
        PieceStock pieces = PARTS.createPieceStock();
        pieces.setQuantity(new BigDecimal(quantity));
        stock.getPieces().add(pieces);
        return pieces;
    }

    private StockAtHand atHand() {
        return new StockAtHand(List.of(stock));
    }

    private BomItem wire(String section, String colour) {
        return new BomItem(Group.CABLE, cable, new BigDecimal(section), colour);
    }

    private static String take(StockAtHand from, BomItem item, String... cuts) {
        List<BigDecimal> lengths = new ArrayList<>();
        for (String cut : cuts) {
            lengths.add(new BigDecimal(cut));
        }
        BigDecimal needed = lengths.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return from.take(item, needed, lengths).toPlainString();
    }

    private static String take(StockAtHand from, BomItem item, int needed) {
        return from.take(item, BigDecimal.valueOf(needed), List.of()).toPlainString();
    }

    @Test
    void lengthServesOnlyWholePieces() {
        coil("2.5", "RD", "5");
        assertEquals("0", take(atHand(), wire("2.5", "RD"), "5.01"));
        assertEquals("5.00", take(atHand(), wire("2.5", "RD"), "5.00"));
        assertEquals("3", take(atHand(), wire("2.5", "RD"), "3", "3"));
        assertEquals("5", take(atHand(), wire("2.5", "RD"), "3", "3", "2"));
    }

    @Test
    void twoLengthsAreNotOneLongOne() {
        coil("2.5", "RD", "2");
        coil("2.5", "RD", "2");
        assertEquals("0", take(atHand(), wire("2.5", "RD"), "3"));
        assertEquals("4", take(atHand(), wire("2.5", "RD"), "2", "2", "2"));
    }

    @Test
    void shortestLengthThatHoldsThePieceIsCut() {
        coil("2.5", "RD", "10");
        coil("2.5", "RD", "4");
        assertEquals("13", take(atHand(), wire("2.5", "RD"), "3", "10"));
    }

    @Test
    void sectionAndColourMustFit() {
        coil("2.50", "RD", "10");
        StockAtHand from = atHand();
        assertEquals("0", take(from, wire("1.5", "RD"), "1"));
        assertEquals("0", take(from, wire("2.5", "BK"), "1"));
        assertEquals("1", take(from, wire("2.5", "RD"), "1"));
    }

    @Test
    void stockWithoutColourIsSharedByTheColoursAndGivenOnce() {
        coil("2.5", null, "5");
        StockAtHand from = atHand();
        assertEquals("3", take(from, wire("2.5", "BK"), "3"));
        assertEquals("0", take(from, wire("2.5", "RD"), "3"));
        assertEquals("2", take(from, wire("2.5", "RD"), "2"));
        assertEquals("0", take(from, wire("2.5", "RD"), "0.01"));
    }

    @Test
    void cableOfTheRightColourGoesFirst() {
        coil("2.5", null, "3");
        coil("2.5", "BK", "5");
        StockAtHand from = atHand();
        assertEquals("3", take(from, wire("2.5", "BK"), "3"));
        assertEquals("3", take(from, wire("2.5", "RD"), "3"));
    }

    @Test
    void piecesOfTwoLinesAddUpAndAreGivenOnce() {
        pieces("3").setEnd(lug);
        pieces("4").setEnd(lug);
        BomItem item = new BomItem(Group.END, lug, null, "");
        StockAtHand from = atHand();
        assertEquals("5", take(from, item, 5));
        assertEquals("2", take(from, item, 5));
        assertEquals("0", take(from, item, 5));
    }

    @Test
    void stockOfSeveralFilesAddsUp() {
        pieces("3").setEnd(lug);
        Stock other = PARTS.createStock();
        PieceStock more = PARTS.createPieceStock();
        more.setEnd(lug);
        more.setQuantity(BigDecimal.TEN);
        other.getPieces().add(more);
        assertEquals("12", take(new StockAtHand(List.of(stock, other)), new BomItem(Group.END, lug, null, ""), 12));
    }

    @Test
    void neverBelowZeroAndNeverHalfAPiece() {
        pieces("-3").setEnd(lug);
        pieces("1.5").setEnd(lug);
        coil("2.5", "RD", "-4");
        assertEquals("1", take(atHand(), new BomItem(Group.END, lug, null, ""), 5));
        assertEquals("0", take(atHand(), wire("2.5", "RD"), "1"));
    }

    @Test
    void quantityNotStatedIsNone() {
        PieceStock unknown = PARTS.createPieceStock();
        unknown.setEnd(lug);
        stock.getPieces().add(unknown);
        CableStock length = PARTS.createCableStock();
        length.setCable(cable);
        stock.getCables().add(length);
        assertEquals("0", take(atHand(), new BomItem(Group.END, lug, null, ""), 5));
        assertEquals("0", take(atHand(), wire("2.5", "RD"), "1"));
    }

    @Test
    void conduitIsCutWholeAndChannelIsLaidEndToEnd() {
        for (DuctForm form : DuctForm.values()) {
            stock.getPieces().clear();
            DuctPart duct = PARTS.createDuctPart();
            duct.setForm(form);
            pieces("2").setDuct(duct);
            pieces("1").setDuct(duct);
            String expected = form == DuctForm.OPENABLE ? "2.5" : "0";
            assertEquals(expected, take(atHand(), new BomItem(Group.DUCT, duct, null, ""), "2.5"), form.getLiteral());
        }
    }

    @Test
    void consumablesByTheMetreAddUp() {
        ConsumablePart shrink = PARTS.createConsumablePart();
        shrink.setUnit("m");
        pieces("0.5").setConsumable(shrink);
        pieces("0.75").setConsumable(shrink);
        BomItem item = new BomItem(Group.CONSUMABLE, shrink, null, "");
        assertEquals("1.20", atHand().take(item, new BigDecimal("1.20"), List.of()).toPlainString());
    }

    /** Whatever is asked, in all no more is given than lies there, and no line gets more than it needs. */
    @Test
    void neverGivesMoreThanThereIs() {
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            stock.getCables().clear();
            BigDecimal there = BigDecimal.ZERO;
            for (int i = random.nextInt(5); i > 0; i--) {
                BigDecimal metres = BigDecimal.valueOf(random.nextInt(1000), 2);
                coil("2.5", random.nextInt(3) == 0 ? null : random.nextBoolean() ? "RD" : "BK", metres.toPlainString());
                there = there.add(metres);
            }
            StockAtHand from = atHand();
            BigDecimal given = BigDecimal.ZERO;
            for (String colour : List.of("BK", "RD", "GN")) {
                List<BigDecimal> cuts = random.ints(random.nextInt(6), 1, 600).mapToObj(cm -> BigDecimal.valueOf(cm, 2)).toList();
                BigDecimal needed = cuts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                BigDecimal taken = from.take(wire("2.5", colour), needed, cuts);
                assertTrue(taken.signum() >= 0 && taken.compareTo(needed) <= 0, taken + " of " + needed);
                given = given.add(taken);
            }
            assertTrue(given.compareTo(there) <= 0, given + " of " + there);
        }
    }
}
