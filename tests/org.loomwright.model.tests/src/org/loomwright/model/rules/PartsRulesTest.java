// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.AmpacityTable;
import org.loomwright.model.parts.CountBasis;
import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.FuseCurve;
import org.loomwright.model.parts.LoadLaw;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.parts.Threshold;

class PartsRulesTest {
    private final Sketch sketch = new Sketch();
    private final PartsLibrary library = PartsFactory.eINSTANCE.createPartsLibrary();

    PartsRulesTest() {
        library.setName("lib");
        library.setFormat("1.0");
        library.getDevices().add(sketch.relayPart);
        library.getCables().add(sketch.wire);
    }

    private void expect(String rule, EObject element) {
        List<Violation> found = PartsRules.check(library);
        assertTrue(found.stream().anyMatch(v -> v.rule().equals(rule) && v.element() == element),
                () -> rule + " expected, found " + found.stream().map(v -> v.rule() + ": " + v.message()).toList());
    }

    @Test
    void aSoundLibraryHasNoViolation() {
        assertEquals(List.of(), PartsRules.check(library));
    }

    @Test
    void aRatingTableThatFallsWhileTheSectionGrowsIsRefused() {
        AmpacityTable table = PartsFactory.eINSTANCE.createAmpacityTable();
        table.setName("table");
        table.setSource("this test");
        table.setCounts(CountBasis.CIRCUITS);
        table.setReferenceC(BigDecimal.valueOf(30));
        table.setMaxC(BigDecimal.valueOf(85));
        point(table, "1", "10");
        point(table, "2.5", "10");
        library.getAmpacityTables().add(table);
        assertEquals(List.of(), PartsRules.check(library), "a level table can be");
        point(table, "4", "9.9");
        expect("table-physics", table);
    }

    @Test
    void sectionsOutOfOrderAreRefused() {
        var row = org.eclipse.emf.ecore.util.EcoreUtil.copy(sketch.wire.getRows().get(0));
        sketch.wire.getRows().add(row);
        expect("table-order", sketch.wire);
    }

    @Test
    void aLoadWithoutItsSizeIsRefused() {
        Demand demand = PartsFactory.eINSTANCE.createDemand();
        demand.setA(sketch.relayPart.getTerminals().get(0));
        demand.setB(sketch.relayPart.getTerminals().get(1));
        demand.setLaw(LoadLaw.RESISTANCE);
        demand.setWatts(BigDecimal.TEN);
        sketch.relayPart.getDemands().add(demand);
        expect("demand-size", demand);
        demand.setRefV(BigDecimal.valueOf(12));
        assertEquals(List.of(), PartsRules.check(library));
        demand.setOffV(BigDecimal.valueOf(10));
        demand.setRestartV(BigDecimal.valueOf(9));
        expect("demand-hysteresis", demand);
    }

    @Test
    void aThresholdNeedsAGapAndOneThingToSense() {
        Threshold threshold = PartsFactory.eINSTANCE.createThreshold();
        threshold.setName("t");
        threshold.setOnAt(new BigDecimal("12.0"));
        threshold.setOffAt(new BigDecimal("12"));
        sketch.relayPart.getThresholds().add(threshold);
        expect("threshold-gap", threshold);
        expect("threshold-sense", threshold);
    }

    @Test
    void aContactDrivenByACoilNamesTheCoil() {
        sketch.relayPart.getContacts().get(0).setCoil(null);
        expect("contact-driver", sketch.relayPart.getContacts().get(0));
    }

    @Test
    void aCoilReleasesBelowWhereItPullsIn() {
        sketch.relayPart.getCoils().get(0).setDropOutV(BigDecimal.valueOf(8));
        expect("coil-hysteresis", sketch.relayPart.getCoils().get(0));
    }

    @Test
    void fuseTimesThatGrowWithTheCurrentAreRefused() {
        FuseCurve curve = PartsFactory.eINSTANCE.createFuseCurve();
        curve.setName("curve");
        library.getFuseCurves().add(curve);
        expect("fuse-curve", curve);
        gate(curve, "1.35", "100");
        gate(curve, "2", "5");
        assertEquals(List.of(), PartsRules.check(library));
        gate(curve, "3.5", "6");
        expect("fuse-curve", curve);
    }

    @Test
    void aPieceInStockIsExactlyOnePart() {
        Stock stock = PartsFactory.eINSTANCE.createStock();
        stock.setName("garage");
        stock.setFormat("1.0");
        PieceStock piece = PartsFactory.eINSTANCE.createPieceStock();
        piece.setQuantity(BigDecimal.ONE);
        stock.getPieces().add(piece);
        assertEquals(1, PartsRules.check(stock).size());
        piece.setDevice(sketch.relayPart);
        assertEquals(List.of(), PartsRules.check(stock));
    }

    private static void point(AmpacityTable table, String section, String amps) {
        var point = PartsFactory.eINSTANCE.createAmpacityPoint();
        point.setSectionMm2(new BigDecimal(section));
        point.setAmps(new BigDecimal(amps));
        table.getPoints().add(point);
    }

    private static void gate(FuseCurve curve, String times, String seconds) {
        var point = PartsFactory.eINSTANCE.createCurvePoint();
        point.setTimesRated(new BigDecimal(times));
        point.setSeconds(new BigDecimal(seconds));
        curve.getSlowest().add(point);
    }
}
