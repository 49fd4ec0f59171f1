// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.earth.LossCase.Detour;
import org.loomwright.engine.earth.LossCase.HotPart;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/** Straps lost, one and two at a time. */
class BondLossesTest {

    /** A second strap of 0.8 milliohm beside the first, between earth points of its own. */
    private static PlanFixture twoStraps() {
        return EarthFixture.twoBodies().earthPoint("XE5", "chassis").earthPoint("XE6", "engine").bond("WE2", "XE5", "XE6", 0.8);
    }

    private static List<Finding> losses(EarthTable table) {
        return table.result().findings().stream().filter(finding -> finding.rule().equals("bond-loss")).toList();
    }

    @Test
    void theOtherStrapTakesTheWholeCurrent() {
        EarthTable table = EarthFixture.study(twoStraps());
        // 0.6 and 1.2 milliohm in parallel: 33.3 and 16.7 A
        assertEquals(100.0 / 3, Math.abs(table.cases().get(0).bondA().get(0)), 1e-6);
        LossRow row = EarthFixture.loss(table, "WE1");
        assertEquals(LossRank.BEARS, row.rank());
        assertEquals(100.0 / 3, row.worst().carriedA(), 1e-6);
        assertEquals(0, row.worst().strandedA());
        Detour strap = row.worst().path().stream().filter(step -> step.element().equals("WE2")).findFirst().orElseThrow();
        assertEquals(50.0 / 3, strap.beforeA(), 1e-6);
        assertEquals(50, strap.afterA(), 1e-6);
        // the engine rises by 50 A x 1.2 milliohm less 50 A x 0.4 milliohm
        assertEquals("engine", table.plan().bodies().get(row.worst().bodies().get(0).body()).id());
        assertEquals(0.04, row.worst().bodies().get(0).moveV(), 1e-6);
        assertEquals("Nothing is noticed: strap -WE2 can carry it.", row.symptom());
        assertEquals(List.of(), losses(table));
    }

    @Test
    void aReserveStrapAtItsRatingHoldsAndBeyondItDoesNot() {
        assertEquals(LossRank.BEARS, EarthFixture.loss(EarthFixture.study(twoStraps().set("WE2", "currentMaxA", 50.0)), "WE1")
                .rank());
        EarthTable table = EarthFixture.study(twoStraps().set("WE2", "currentMaxA", 40.0));
        LossRow row = EarthFixture.loss(table, "WE1");
        assertEquals(LossRank.OVERLOADS, row.rank());
        assertEquals(1.25, row.worst().weight(), 1e-6);
        Finding finding = losses(table).get(0);
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals("WE1", finding.element());
        assertEquals(50, finding.is().value(), 1e-6);
        assertEquals(40, finding.wanted().value());
        assertEquals("WE2", finding.causes().get(0).element());
        assertEquals(List.of(new Mend.AddBond("chassis", "engine", 16, 300)), finding.mends().get(0).changes());
        assertFalse(finding.derivations().isEmpty());
    }

    @Test
    void whileCrankingTheReturnOfAGaugeBurns() {
        EarthTable table = EarthFixture.study(EarthFixture.withGauge(EarthFixture.starting()));
        LossRow row = EarthFixture.loss(table, "WE1");
        assertEquals(LossRank.BURNS, row.rank());
        assertEquals("start", row.worst().caseName());
        HotPart wire = row.worst().hot().get(0);
        assertEquals("W9", wire.detour().element());
        assertTrue(wire.detour().afterA() > 50 && wire.detour().beforeA() < 15, wire.toString());
        assertTrue(wire.afterC() > 160, wire.toString());
        assertTrue(row.symptom().startsWith("While cranking, the return -W9 of -B3 (B3) carries "), row.symptom());
        assertEquals(List.of("B3", "B3", "W9", "W1", "XE1"), row.worst().path().stream().map(Detour::element).toList().stream()
                .filter(id -> !id.equals("XE2") && !id.equals("XE3")).toList());
        assertTrue(losses(table).get(0).title().contains("the return -W9 of -B3"), losses(table).get(0).title());
    }

    @Test
    void currentOfAStarterWithoutAnyOtherWayIsStranded() {
        EarthTable table = EarthFixture.study(EarthFixture.starting());
        LossRow row = EarthFixture.loss(table, "WE1");
        assertEquals(LossRank.STRANDS, row.rank());
        assertEquals(row.worst().carriedA(), row.worst().strandedA());
        assertTrue(row.symptom().contains("the starter -M1 (M1) does not turn"), row.symptom());
        assertEquals(Severity.WARNING, losses(table).get(0).severity());
        // below the practice's limit it only stops loads
        EarthTable mild = EarthFixture.study(EarthFixture.starting().limit("bond-loss.stranded", 1000));
        assertEquals(LossRank.STOPS, EarthFixture.loss(mild, "WE1").rank());
        assertEquals(Severity.NOTE, losses(mild).get(0).severity());
    }

    @Test
    void limitOfStrandedCurrentIsMetFromItsValueOn() {
        // the only strap, 50 A in its one case
        PlanFixture at = EarthFixture.twoBodies().limit("bond-loss.stranded", 49.999999);
        assertEquals(LossRank.STRANDS, EarthFixture.loss(EarthFixture.study(at), "WE1").rank());
        PlanFixture above = EarthFixture.twoBodies().limit("bond-loss.stranded", 50.1);
        LossRow row = EarthFixture.loss(EarthFixture.study(above), "WE1");
        assertEquals(LossRank.STOPS, row.rank());
        assertEquals(1, row.worst().loads().size());
    }

    @Test
    void strapThatCarriesNothingIsLostWithoutNotice() {
        PlanFixture fixture = EarthFixture.twoBodies().body("cabin").earthPoint("XE7", "cabin").earthPoint("XE8", "chassis")
                .bond("WE3", "XE7", "XE8", 0.3);
        LossRow row = EarthFixture.loss(EarthFixture.study(fixture), "WE3");
        assertEquals(LossRank.IDLE, row.rank());
        assertEquals(List.of(), row.cases());
    }

    @Test
    void twoReserveStrapsLostTogetherAreWorseThanEither() {
        EarthTable table = EarthFixture.study(twoStraps().limit("bond-loss.stranded", 40));
        assertEquals(1, table.pairs().size());
        LossRow pair = table.pairs().get(0);
        assertEquals(List.of(0, 1), pair.bonds());
        assertEquals(LossRank.STRANDS, pair.rank());
        // all of E1's current, though neither strap carried it alone
        assertEquals(50, pair.worst().strandedA(), 1e-6);
        Finding finding = losses(table).get(0);
        assertTrue(finding.title().startsWith("Without straps -WE1 and -WE2 "), finding.title());
        assertEquals("WE2", finding.causes().get(0).element());
    }

    @Test
    void pairsAreBoundedByTheirShareAndNumber() {
        assertEquals(0, EarthFixture.study(twoStraps().limit("bond-loss.stranded", 30).limit("bond-loss.pairs-max", 1)).pairs()
                .size());
        // WE2 carries half of what WE1 does
        assertEquals(1, EarthFixture.study(twoStraps().limit("bond-loss.stranded", 30).limit("bond-loss.pairs-share", 0.49))
                .pairs().size());
        assertEquals(0, EarthFixture.study(twoStraps().limit("bond-loss.stranded", 30).limit("bond-loss.pairs-share", 0.51))
                .pairs().size());
    }

    @Test
    void rankedWithTheWorstFirst() {
        EarthTable table = EarthFixture.study(EarthFixture.withGauge(EarthFixture.starting()).body("cabin")
                .earthPoint("XE7", "cabin").earthPoint("XE8", "chassis").bond("WE0", "XE7", "XE8", 0.3));
        assertEquals(List.of(LossRank.BURNS, LossRank.IDLE), table.losses().stream().map(LossRow::rank).toList());
    }

    @Test
    void practiceAndWaiversHold() {
        EarthTable accepted = EarthFixture.study(EarthFixture.starting().waiver("bond-loss", "WE1"));
        assertTrue(losses(accepted).get(0).accepted().startsWith("accepted in a test"), losses(accepted).toString());
    }

    @Test
    void cancelledStudyEnds() {
        BasicMonitor monitor = new BasicMonitor();
        var context = EarthFixture.context(EarthFixture.twoBodies());
        monitor.setCanceled(true);
        assertThrows(CancellationException.class, () -> EarthStudy.of(context, monitor));
    }

    @Test
    void orderOfTheElementsDoesNotMatter() {
        PlanFixture turned = new PlanFixture().domain("12V", 12, "G1.30").load("E1", "current", 50, 12)
                .battery("G1", 12, 0.004, 0.012, 100).body("engine").body("chassis")
                .earthPoint("XE6", "engine").earthPoint("XE5", "chassis").earthPoint("XE4", "engine").earthPoint("XE3", "engine")
                .earthPoint("XE2", "chassis").earthPoint("XE1", "chassis").bond("WE2", "XE5", "XE6", 0.8)
                .bond("WE1", "XE2", "XE3", 0.2).cable("W3", 25, 1, "E1.L-", "XE4").cable("W2", 25, 1, "G1.30", "E1.L+")
                .cable("W1", 35, 1, "G1.31", "XE1");
        EarthTable one = EarthFixture.study(twoStraps());
        EarthTable other = EarthFixture.study(turned);
        for (String strap : List.of("WE1", "WE2")) {
            LossCase here = EarthFixture.loss(one, strap).worst();
            LossCase there = EarthFixture.loss(other, strap).worst();
            assertEquals(here.carriedA(), there.carriedA(), 1e-9);
            assertEquals(here.path().stream().map(Detour::element).toList(), there.path().stream().map(Detour::element).toList());
            for (int k = 0; k < here.path().size(); k++) {
                assertEquals(here.path().get(k).afterA(), there.path().get(k).afterA(), 1e-9);
            }
        }
        assertEquals(one.losses().stream().map(LossRow::rank).toList(), other.losses().stream().map(LossRow::rank).toList());
    }
}
