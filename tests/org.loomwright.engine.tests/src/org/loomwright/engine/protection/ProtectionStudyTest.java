// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.protection.Fault.End;
import org.loomwright.engine.protection.Fault.Target;

/** Rows of the study for small vehicles, worked out by hand. */
class ProtectionStudyTest {
    private static final double HOT = 1 + 0.00393 * 70;

    @Test
    void aLampsSupplyIsFedThroughItsFuse() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4));
        Feed feed = study.feed("W2");
        assertEquals(List.of(study.element("F1#1")), feed.next());
        assertEquals(feed.next(), feed.upstream());
        assertEquals(0, feed.bareA());
        double fuse = 0.0015;
        double nearest = 0.004 + 0.0175 * 0.15 / 25 + 2 * 0.02e-3 + fuse;
        assertEquals(12.8 / nearest, feed.fault(Extreme.LARGEST, End.NEAR, Target.RETURN).totalA(), 1e-3);
        double wire = 0.018 / 1.5 * 4 * HOT + 2 * 0.2e-3;
        double loop = 0.012 + 0.018 * 0.15 / 25 * HOT + 2 * 0.2e-3 + fuse + 2 * wire;
        Fault far = feed.fault(Extreme.SMALLEST, End.FAR, Target.RETURN);
        assertEquals(12.3 / loop, far.totalA(), 1e-3);
        assertEquals(far.totalA(), far.throughA(), 1e-6);
        assertEquals(loop, far.loopOhm(), 1e-6);
        // In 15 A at -20 degC bears 16.5 A; 78 A of it is 4.7 times, beyond 4 x: between 0.5 s and 0.05 s
        CurvePair curve = CurvePair.of((Plan.Protector) study.plan.elements().get(study.element("F1#1"))).orElseThrow().at(-20);
        assertEquals(curve.slowestS(far.totalA()), far.clearing().seconds(), 1e-9);
        assertEquals(far.totalA() * far.totalA() * far.clearing().seconds(), far.clearing().letThroughA2s(), 1e-6);
        assertEquals(List.of(study.element("F1#1")), far.clearing().steps().stream().map(Clearing.Step::protector).toList());
        Fault body = feed.fault(Extreme.SMALLEST, End.FAR, Target.BODY);
        double toBody = loop - wire + 0.018 / 25 * 0.5 * HOT + 2 * 0.2e-3 + 0.2e-3;
        assertEquals(12.3 / toBody, body.totalA(), 1e-3);
    }

    @Test
    void theFourConditionsHoldForASoundCircuitAndFailOneByOne() {
        ConductorProtection sound = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4)).row("W2");
        assertTrue(sound.conditions().met(), sound.conditions().toString());
        assertEquals(Verdict.NOT_NEEDED, sound.conditions().overload(), "a lamp does not overload");
        PlanFixture stalls = ProtectionFixture.lamp(15, 1.5, 4).set("E1#load", "canOverload", true);
        assertEquals(Verdict.HOLDS, ProtectionFixture.of(stalls).row("W2").conditions().overload());

        ConductorProtection thin = ProtectionFixture.of(ProtectionFixture.lamp(25, 1.5, 4)).row("W2");
        assertEquals(Verdict.FAILS, thin.conditions().rating());
        ConductorProtection tiny = ProtectionFixture.of(ProtectionFixture.lamp(60, 0.5, 1)).row("W2");
        assertEquals(Verdict.FAILS, tiny.conditions().shortTime());
        assertTrue(tiny.heat().peakC() > 160);
        ConductorProtection far = ProtectionFixture.of(ProtectionFixture.lamp(15, 0.5, 30)).row("W2");
        assertEquals(Verdict.FAILS, far.conditions().clears());
        assertFalse(far.conditions().met());
    }

    /** Iz of 1.5 mm2 at 60 degC is 20 A x sqrt(30 / 50), its hardly loaded return not counted: that much holds, more fails. */
    @Test
    void aRatingAtItsLimitHolds() {
        double izA = 20 * Math.sqrt(30 / 50.0);
        PlanFixture hot = ProtectionFixture.lamp(izA, 1.5, 4).state("hot", c -> c.on("E1").ambient(60));
        ConductorProtection at = ProtectionFixture.of(hot).row("W2");
        assertEquals(izA, at.overload().izA(), 1e-9);
        assertEquals(Verdict.HOLDS, at.conditions().rating());
        PlanFixture above = ProtectionFixture.lamp(izA * 1.001, 1.5, 4).state("hot", c -> c.on("E1").ambient(60));
        assertEquals(Verdict.FAILS, ProtectionFixture.of(above).row("W2").conditions().rating());
    }

    @Test
    void aBatteryLeadHasNoDevice() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4));
        ConductorProtection lead = study.row("W1");
        assertEquals(Verdict.NO_DEVICE, lead.conditions().shortTime());
        assertEquals(Verdict.NO_DEVICE, lead.conditions().clears());
        assertEquals(Verdict.NO_DEVICE, lead.conditions().rating());
        assertEquals(12.8 / 0.004, study.feed("W1").bareA(), 200);
        assertTrue(study.table.uncleared().isEmpty(), "no device is blamed for what it is not before");
    }

    @Test
    void aReturnIsJudgedByTheDeviceWhoseFaultItCarries() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4));
        ConductorProtection back = study.row("W3");
        assertFalse(back.supply());
        ReturnDuty duty = back.duties().get(0);
        assertEquals(study.element("F1#1"), duty.protector());
        assertEquals(1, duty.share(), 1e-9);
        assertEquals(study.feed("W2").fault(Extreme.SMALLEST, End.FAR, Target.RETURN).totalA(), duty.smallestA(), 1e-6);
        assertTrue(back.conditions().met(), back.conditions().toString());
    }

    /** A thin return shared with a bigger circuit has to bear that circuit's fuse. */
    @Test
    void aSharedReturnIsJudgedByTheLargestDevice() {
        PlanFixture fixture = ProtectionFixture.lamp(5, 1.5, 4).fuse("F1", "2", 40).negativeBar("X1", 3).at("X1", "p")
                .cable("WB", 1.5, 2, "X1.31", "G1.31").load("E2", "power", 300, 12).cable("W5", 6, 2, "F1.2", "E2.L+")
                .cable("W6", 6, 2, "E2.L-", "X1.N1").load("E3", "power", 5, 12).cable("W7", 1.5, 1, "F1.1", "E3.L+")
                .cable("W8", 1.5, 1, "E3.L-", "X1.N2").at("E2", "p").at("E3", "p");
        ProtectionFixture study = ProtectionFixture.of(fixture);
        ConductorProtection bar = study.row("WB");
        assertEquals(study.element("F1#2"), bar.overload().protector());
        assertEquals(40, bar.overload().inA(), 1e-6);
        assertEquals(Verdict.FAILS, bar.conditions().rating());
        assertEquals(Verdict.HOLDS, study.row("W8").conditions().rating());
        assertEquals(2, bar.duties().size());
    }

    /** The fault to the cab returns through one strap of 300 mohm: 12.3 V / 0.36 ohm = 34 A do not clear 30 A. */
    @Test
    void aStrapThatKeepsAFuseFromClearingIsNamedWithItsHeat() {
        PlanFixture fixture = ProtectionFixture.lamp(30, 4, 3).body("frame").earthPoint("XE2", "cab").earthPoint("XE3", "frame")
                .bond("WE1", "XE2", "XE3", 300).set("XE1", "body", 1);
        ProtectionFixture study = ProtectionFixture.of(fixture);
        assertEquals(1, study.table.uncleared().size());
        UnclearedFault fault = study.table.uncleared().get(0);
        assertEquals(Target.BODY, fault.fault().target());
        assertEquals(study.element("F1#1"), fault.protector());
        assertEquals(FaultBranch.Kind.BOND, fault.culprit().branch().kind());
        assertEquals(0.300, fault.culprit().branch().ohm(), 1e-12);
        double amps = fault.fault().totalA();
        assertEquals(amps * amps * 0.300, fault.culprit().watts(), 1e-6);
        assertTrue(fault.culprit().share() > 0.7 && fault.culprit().share() < 1);
        assertEquals(5, fault.limitS());
        CurvePair curve = CurvePair.of((Plan.Protector) study.plan.elements().get(fault.protector())).orElseThrow().at(-20);
        assertEquals(curve.clearingA(5), fault.neededA(), 1e-9);
        assertTrue(fault.neededA() > amps);
        assertEquals(Verdict.FAILS, study.row("W2").conditions().clears());
        assertTrue(ProtectionFixture.of(ProtectionFixture.lamp(30, 4, 3).body("frame").earthPoint("XE2", "cab")
                .earthPoint("XE3", "frame").bond("WE1", "XE2", "XE3", 3).set("XE1", "body", 1)).table.uncleared().isEmpty());
    }

    @Test
    void aReturnIntoABodyWithoutAWayBackIsAFaultThatNeverClears() {
        PlanFixture fixture = ProtectionFixture.lamp(15, 1.5, 4).body("rack").earthPoint("XE9", "rack")
                .load("E2", "power", 20, 12).cable("W5", 1.5, 2, "F1.1", "E2.L+").cable("W6", 1.5, 1, "E2.L-", "XE9");
        ProtectionFixture study = ProtectionFixture.of(fixture);
        assertEquals(1, study.table.uncleared().size());
        UnclearedFault fault = study.table.uncleared().get(0);
        assertFalse(fault.fault().wayBack());
        assertNull(fault.culprit());
        assertEquals(Verdict.FAILS, study.row("W5").conditions().clears());
        assertFalse(study.row("W6").supply());
        assertNull(study.row("W6").heat());
    }

    /** Batteries at both ends of a cable, a fuse at one end only: the other end's feed has no device. */
    @Test
    void aCableBetweenTwoBatteriesIsFedFromBothEnds() {
        PlanFixture fixture = new PlanFixture().battery("G1", 12, 0.004, 0.012, 100).battery("G2", 12, 0.004, 0.012, 100)
                .box("F1", 1).fuse("F1", "1", 60).relay("K1").cable("WN", 25, 1, "G1.31", "G2.31")
                .cable("W1", 25, 0.15, "G1.30", "F1.30").cable("W2", 10, 4, "F1.1", "K1.30").cable("W3", 10, 1, "K1.87", "G2.30");
        ProtectionFixture study = ProtectionFixture.of(fixture);
        ConductorProtection middle = study.row("W2");
        assertTrue(middle.bothEndsLive());
        Feed fromFuse = middle.feeds().get(0);
        Feed fromOther = middle.feeds().get(1);
        assertEquals(List.of(study.element("F1#1")), fromFuse.next());
        assertEquals(0, fromFuse.bareA());
        assertTrue(fromOther.next().isEmpty());
        assertTrue(fromOther.bareA() > 100);
        assertEquals(Verdict.NO_DEVICE, middle.conditions().clears());
        assertFalse(fromFuse.fault(Extreme.SMALLEST, End.FAR, Target.RETURN).linked(), "one battery alone");
        assertTrue(fromOther.fault(Extreme.SMALLEST, End.FAR, Target.RETURN).linked(), "through the link");
        assertTrue(middle.overloadPossible());
    }

    /** With a fuse at each end both open, one after the other; the fault is cleared when the second has. */
    @Test
    void withAFuseAtEachEndBothHaveToOpen() {
        PlanFixture fixture = new PlanFixture().battery("G1", 12, 0.004, 0.012, 100).battery("G2", 12, 0.004, 0.012, 100)
                .box("F1", 1).fuse("F1", "1", 60).box("F2", 1).fuse("F2", "1", 100).cable("WN", 25, 1, "G1.31", "G2.31")
                .cable("W1", 25, 0.15, "G1.30", "F1.30").cable("W2", 25, 4, "F1.1", "F2.1")
                .cable("W3", 25, 0.15, "G2.30", "F2.30");
        ProtectionFixture study = ProtectionFixture.of(fixture);
        Fault far = study.row("W2").feeds().get(0).fault(Extreme.LARGEST, End.FAR, Target.RETURN);
        assertEquals(2, far.clearing().steps().size());
        assertEquals(0, far.clearing().remainingA());
        assertTrue(far.clearing().steps().get(0).atS() < far.clearing().steps().get(1).atS());
        assertEquals(far.clearing().seconds(), far.clearing().steps().get(1).atS());
        assertTrue(far.throughA() < far.totalA(), "part comes from the other end");
        assertTrue(study.row("W2").conditions().clears() == Verdict.HOLDS, study.row("W2").conditions().toString());
    }

    /** Two equal cores behind one fuse: each carries half of a far fault, the fuse all of it. */
    @Test
    void coresInParallelShareTheFault() {
        PlanFixture fixture = ProtectionFixture.lamp(15, 1.5, 4).cable("W9", 1.5, 4, "F1.1", "E1.L+");
        ProtectionFixture study = ProtectionFixture.of(fixture);
        Feed feed = study.feed("W2");
        Fault far = feed.fault(Extreme.SMALLEST, End.FAR, Target.RETURN);
        assertEquals(far.totalA() / 2, far.throughA(), 1e-6);
        assertEquals(1, feed.shares().get(0), 1e-9, "at the near end one core carries all");
    }

    @Test
    void aSourceThatCannotExceedTheRatingNeedsNoDevice() {
        PlanFixture fixture = new PlanFixture().device("G2", "charger", "L+:plus", "L-:minus").source("G2", "L+", "L-", 14, 10,
                "always").load("E1", "resistance", 10, 12).cable("W1", 2.5, 5, "G2.L+", "E1.L+")
                .cable("W2", 2.5, 5, "E1.L-", "G2.L-");
        ConductorProtection row = ProtectionFixture.of(fixture).row("W1");
        assertEquals(10, row.feeds().get(0).largestNear().throughA(), 1e-6);
        assertEquals(new Conditions(Verdict.NOT_NEEDED, Verdict.NOT_NEEDED, Verdict.NOT_NEEDED, Verdict.NOT_NEEDED),
                row.conditions());
    }

    @Test
    void breakingCapacityIsJudgedAtTheLoadTerminal() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4));
        DeviceProtection fuse = study.device("F1#1");
        assertEquals("F1.1", study.plan.terminals().get(fuse.loadTerminal()).id());
        double ohm = 0.004 + 0.0175 * 0.15 / 25 + 2 * 0.02e-3 + 0.0015;
        assertEquals(12.8 / ohm, fuse.breakingA(), 1e-3);
        assertEquals(12.8, fuse.highestV(), 1e-6);
        assertEquals(Verdict.FAILS, fuse.breakingVerdict(), "1000 A are stated");
        ProtectionFixture enough = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4)
                .set("F1#1", "breakingA", 12.8 / ohm + 1));
        assertEquals(Verdict.HOLDS, enough.device("F1#1").breakingVerdict());
        ProtectionFixture volts = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4).set("F1#1", "breakingA", 9e3)
                .set("F1#1", "ratedV", 12.0));
        assertEquals(Verdict.FAILS, volts.device("F1#1").breakingVerdict(), "12.8 V above 12 V");
        assertEquals(List.of(study.row("W2").conductor()), fuse.conductorsBelow());
    }

    @Test
    void selectivityNamesTheDeviceUpstream() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4).box("F3", 1).fuse("F3", "1", 5)
                .cable("W5", 6, 1, "F1.1", "F3.30").load("E2", "power", 20, 12).cable("W6", 1.5, 1, "F3.1", "E2.L+")
                .cable("W7", 1.5, 1, "E2.L-", "G1.31"));
        Selectivity found = study.device("F3#1").selectivity().get(0);
        assertEquals(study.element("F1#1"), found.upstream());
        assertEquals(1, found.share(), 1e-9);
        assertEquals(study.device("F3#1").breakingA(), found.largestA());
        // both have the test curve: upstream is at its last gate beyond 150 A, downstream beyond 50 A; 15 A and 5 A at -20 degC
        assertEquals(Selectivity.Kind.FULL, found.kind(), "(150 A)^2 x 0.01 s is above (50 A)^2 x 0.05 s");
        assertTrue(study.device("F1#1").selectivity().isEmpty());
    }

    @Test
    void aRestingSideIsJudgedInItsOwnPosition() {
        PlanFixture fixture = ProtectionFixture.lamp(15, 1.5, 4).device("S1", "switch", "C:plus", "N:plus", "P:plus")
                .element("S1#make", n -> new Plan.Contact("S1#make", n.device("S1"), "make", n.terminal("S1.C"),
                        n.terminal("S1.N"), 0.001, 30, 60, 30, 28, false, "hand", -1))
                .element("S1#break", n -> new Plan.Contact("S1#break", n.device("S1"), "break", n.terminal("S1.C"),
                        n.terminal("S1.P"), 0.001, 30, 60, 30, 28, true, "hand", -1))
                .cable("W5", 1.5, 1, "F1.1", "S1.C").load("E2", "power", 20, 12).load("E3", "power", 20, 12)
                .cable("W6", 1.5, 1, "S1.N", "E2.L+").cable("W7", 1.5, 1, "E2.L-", "G1.31")
                .cable("W8", 1.5, 1, "S1.P", "E3.L+").cable("W9", 1.5, 1, "E3.L-", "G1.31");
        ProtectionFixture study = ProtectionFixture.of(fixture);
        assertTrue(study.feed("W6").smallestFar().throughA() > 50);
        assertTrue(study.feed("W8").smallestFar().throughA() > 50);
        assertEquals(study.feed("W6").smallestFar().throughA(), study.feed("W8").smallestFar().throughA(), 1e-3);
    }

    @Test
    void aBatteryThatMayDisconnectItselfIsNamed() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4).set("G1#cell", "tripA", 100.0));
        assertEquals(List.of(study.element("G1#cell")),
                study.feed("W2").fault(Extreme.LARGEST, End.NEAR, Target.RETURN).trips());
        assertTrue(study.feed("W2").fault(Extreme.SMALLEST, End.FAR, Target.RETURN).trips().isEmpty());
    }

    @Test
    void everyRowExplainsItsFigures() {
        ProtectionFixture study = ProtectionFixture.of(ProtectionFixture.lamp(15, 1.5, 4));
        List<String> figures = study.table.explainer().explain("W2").stream()
                .flatMap(each -> each.derivations().stream()).map(each -> each.figure()).toList();
        assertTrue(figures.stream().anyMatch(figure -> figure.startsWith("smallest fault current at E1.L+")), figures.toString());
        assertTrue(figures.contains("peak temperature in a short circuit"), figures.toString());
        assertTrue(figures.contains("I2t that it withstands"), figures.toString());
        assertFalse(study.table.explainer().explain("F1").isEmpty());
        assertFalse(study.table.explainer().explain("W3").isEmpty());
        assertTrue(study.table.explainer().explain("nothing").isEmpty());
    }

    @Test
    void cancellingStopsTheStudy() {
        Plan plan = ProtectionFixture.lamp(15, 1.5, 4).build();
        BasicMonitor cancelled = new BasicMonitor();
        cancelled.setCanceled(true);
        assertThrows(CancellationException.class, () -> ProtectionStudy.of(plan, List.of(), cancelled));
    }
}
