// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Collapse, cycling, dips, relays, charging and straps. */
class StateRulesTest {

    private static PlanFixture power(double watts) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.05, 0.05, 100)
                .load("E1", "power", watts, 12).cable("W1", 16, 1, "G1.30", "E1.L+").cable("W2", 16, 1, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(20));
    }

    private static List<Finding> collapse(PlanFixture fixture) {
        return CheckFixture.findings(new NoOperatingPointRule(), fixture);
    }

    @Test
    void aLoadThatTheSupplyBearsPasses() {
        assertEquals(List.of(), collapse(power(300)));
    }

    @Test
    void moreThanTheLargestPowerCollapsesAndNamesTheLoad() {
        Finding finding = collapse(power(1200)).get(0);
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals("E1", finding.element());
        assertTrue(finding.is().value() < 1);
    }

    /**
     * The largest power through a resistance is E^2 / 4R (maximum power theorem); here 12.8 V and the battery's own 0.05 ohm
     * alone give 819 W.
     */
    @Test
    void littleRoomIsAWarningWithTheFactorOfTheTheorem() {
        double scale = collapse(power(1200)).get(0).is().value();
        double largestW = 1200 * scale;
        assertTrue(largestW < 12.8 * 12.8 / (4 * 0.05));
        assertEquals(Severity.WARNING, collapse(power(largestW / 1.1)).get(0).severity());
        assertEquals(1.1, collapse(power(largestW / 1.1)).get(0).is().value(), 0.01);
        assertEquals(List.of(), collapse(power(largestW / 1.25)));
    }

    @Test
    void theFactorIsTheOneOfTheMaximumPowerTheorem() {
        PlanFixture cold = power(1200);
        for (String cable : List.of("W1", "W2")) {
            cold.set(cable, "ampacity", null);
        }
        Finding finding = collapse(cold).get(0);
        CheckContext context = CheckFixture.context(power(1).set("W1", "ampacity", null).set("W2", "ampacity", null));
        SolvedCase.Solved one = context.cases().get(0).running();
        double amps = one.elementA(PlanIndex.element(context.plan(), "E1#load"));
        double openV = one.voltage(PlanIndex.terminal(context.plan(), "G1.30"), PlanIndex.terminal(context.plan(), "G1.31"))
                + amps * 0.05;
        double ohm = (openV - one.voltage(PlanIndex.terminal(context.plan(), "E1.L+"),
                PlanIndex.terminal(context.plan(), "E1.L-"))) / amps;
        assertEquals(openV * openV / (4 * ohm) / 1200, finding.is().value(), 1e-4);
    }

    /** A lamp over a normally closed contact of a relay whose coil hangs behind that contact. */
    private static PlanFixture buzzer() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.01, 0.01, 100).relay("K1")
                .set("K1#contact", "restClosed", true).cable("W1", 2.5, 1, "G1.30", "K1.30")
                .cable("W2", 2.5, 1, "K1.87", "K1.86").cable("W3", 2.5, 1, "K1.85", "G1.31").state("on", c -> { });
    }

    @Test
    void aRelayThatCutsItsOwnCoilCycles() {
        Finding finding = CheckFixture.findings(new StateCyclingRule(), buzzer()).get(0);
        assertEquals("K1", finding.element());
        assertEquals(List.of(), CheckFixture.findings(new StateCyclingRule(), buzzer().set("K1#contact", "restClosed", false)));
    }

    @Test
    void hysteresisAtItsEdgeComesToRest() {
        double[] margins = {0.02, 4};
        boolean[] cycles = new boolean[2];
        for (int i = 0; i < 2; i++) {
            PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.05, 0.05, 100)
                    .cutOut("Q1", 12.2, 12.2 - margins[i]).load("E1", "current", 20, 12).cable("W1", 6, 2, "G1.30", "Q1.30")
                    .cable("W2", 6, 1, "Q1.87", "E1.L+").cable("W3", 6, 2, "E1.L-", "G1.31").cable("W4", 1, 1, "Q1.31", "G1.31")
                    .state("on", c -> c.on("E1").ambient(20));
            cycles[i] = !CheckFixture.findings(new StateCyclingRule(), fixture).isEmpty();
        }
        assertTrue(cycles[0]);
        assertFalse(cycles[1]);
    }

    private static PlanFixture starting(double offV) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.01, 0.01, 100).box("F1", 2)
                .fuse("F1", "1", 40).fuse("F1", "2", 10).load("E1", "current", 15, 12).set("E1#load", "inrushA", 90.0)
                .set("E1#load", "inrushS", 0.3).load("E2", "current", 2, 12).set("E2#load", "offV", offV)
                .set("E2#load", "restartV", offV + 0.5).cable("W1", 6, 2, "G1.30", "F1.30").cable("W2", 4, 1, "F1.1", "E1.L+")
                .cable("W3", 4, 1, "E1.L-", "G1.31").cable("W4", 1.5, 1, "F1.2", "E2.L+").cable("W5", 1.5, 1, "E2.L-", "G1.31")
                .state("both", c -> c.on("E1", "E2").ambient(20));
    }

    private static List<Finding> dips(PlanFixture fixture) {
        return CheckFixture.findings(new StartDipRule(), fixture);
    }

    @Test
    void aLoadThatStaysAboveItsOffVoltageDuringAStartPasses() {
        assertEquals(List.of(), dips(starting(10.0)));
    }

    @Test
    void aDipBelowItNamesTheStartingLoad() {
        Finding finding = dips(starting(11.7)).get(0);
        assertEquals("E2", finding.element());
        assertEquals("E1", finding.causes().get(0).element());
        assertEquals(Severity.WARNING, finding.severity());
    }

    @Test
    void anInrushIsOverBeforeTheConductorsWarm() {
        // in time 92 A would bring the 6 mm2 of the feed, good for 50 A, to some 300 degrees Celsius
        PlanFixture fixture = starting(11.7);
        CheckContext context = CheckFixture.context(fixture);
        SolvedCase.Solved running = context.cases().get(0).running();
        double hotC = running.conductorC(PlanIndex.conductor(context.plan(), "W1@1"));
        double feedOhm = 2 * 0.018 / 6 * Copper.factor(hotC) + 0.0004;
        double smallOhm = 1 * 0.018 / 1.5 * Copper.factor(running.conductorC(PlanIndex.conductor(context.plan(), "W4@1")))
                + 0.0004;
        double expectedV = 12.8 - 92 * (0.01 + feedOhm) - 2 * (0.0015 + 2 * smallOhm);
        assertEquals(expectedV, dips(fixture).get(0).is().value(), 1e-3);
    }

    @Test
    void theOffVoltageItselfPasses() {
        double dip = dips(starting(11.7)).get(0).is().value();
        assertEquals(List.of(), dips(starting(dip)));
        assertEquals(1, dips(starting(dip + 1e-4)).size());
    }

    @Test
    void oneOfManyStartersIsFoundAndTheOthersAreNot() {
        PlanFixture fixture = starting(11.7);
        for (int i = 3; i < 8; i++) {
            fixture.load("E" + i, "current", 1, 12).set("E" + i + "#load", "inrushA", 4.0)
                    .cable("WP" + i, 4, 1, "F1.30", "E" + i + ".L+").cable("WN" + i, 4, 1, "E" + i + ".L-", "G1.31");
        }
        List<Finding> findings = dips(fixture.state("all", c -> c.on("E1", "E2", "E3", "E4", "E5", "E6", "E7").ambient(20)));
        assertEquals(List.of("E2"), findings.stream().map(Finding::element).toList());
        assertEquals(List.of("E1"), findings.get(0).causes().stream().map(cause -> cause.element()).toList());
    }

    @Test
    void noInrushNoDip() {
        assertEquals(List.of(), dips(starting(11.7).set("E1#load", "inrushA", Double.NaN)));
    }

    /** The coil needs 8 V at 20 degrees Celsius; at 60 of ambient and 40 K of rise 8 x (1 + 0.00393 x 80). */
    private static PlanFixture relay(double coilOhm, double lengthM, String kind) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.01, 0.01, 100).relay("K1")
                .set("K1#coil", "ohm", coilOhm).handSwitch("S1", true).cable("W1", 1, lengthM, "G1.30", "S1.1")
                .cable("W2", 1, 1, "S1.2", "K1.86").cable("W3", 1, 1, "K1.85", "G1.31")
                .state("on", c -> c.kind(kind).ambient(60));
    }

    private static List<Finding> pullIn(PlanFixture fixture) {
        return CheckFixture.findings(new RelayPullInRule(), fixture);
    }

    @Test
    void aCoilWithEnoughVoltagePasses() {
        assertEquals(List.of(), pullIn(relay(85, 2, "parked")));
    }

    @Test
    void aHotCoilOverALongThinWireDoesNotPullIn() {
        Finding finding = pullIn(relay(5, 100, "parked")).get(0);
        assertEquals("K1", finding.element());
        assertEquals(8 * (1 + 0.00393 * 80), finding.wanted().value(), 1e-9);
        assertEquals("W1", finding.causes().get(0).element());
    }

    @Test
    void whileCrankingHoldingIsEnough() {
        assertEquals(List.of(), pullIn(relay(5, 100, "cranking")));
        assertEquals(1, pullIn(relay(5, 100, "cranking").set("K1#coil", "dropOutV", 7.9)).size());
    }

    @Test
    void theNeededVoltageItselfPasses() {
        double coilV = pullIn(relay(5, 100, "parked")).get(0).is().value();
        double needed20 = coilV / (1 + 0.00393 * 80);
        assertEquals(List.of(), pullIn(relay(5, 100, "parked").set("K1#coil", "pickUpV", needed20)));
        assertEquals(1, pullIn(relay(5, 100, "parked").set("K1#coil", "pickUpV", needed20 + 1e-4)).size());
    }

    @Test
    void oneFindingARelayWhateverFeedsItInEachCase() {
        PlanFixture fixture = relay(5, 100, "parked").alternator("G2", 13.0, 50).cable("W8", 16, 1, "G2.B+", "G1.30")
                .cable("W9", 16, 1, "G2.B-", "G1.31").set("K1#coil", "pickUpV", 13.0)
                .state("driving", c -> c.engine(2000).ambient(60));
        List<Finding> findings = pullIn(fixture);
        assertEquals(1, findings.size());
        assertTrue(findings.get(0).why().contains("Also in one other case: driving."), findings.get(0).why().toString());
    }

    @Test
    void aCoilThatIsSwitchedOffIsNotJudged() {
        assertEquals(List.of(), pullIn(relay(5, 100, "parked").set("S1#contact", "restClosed", false)));
    }

    private static PlanFixture charging(double sectionMm2) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.005, 0.005, 100).alternator("G2", 14.4, 100)
                .cable("W1", sectionMm2, 3, "G2.B+", "G1.30").cable("W2", sectionMm2, 3, "G2.B-", "G1.31")
                .state("charging", c -> c.engine(2000).kind("charging").ambient(20));
    }

    private static List<Finding> charge(PlanFixture fixture) {
        return CheckFixture.findings(new ChargePathDropRule(), fixture);
    }

    @Test
    void aThickChargingCablePasses() {
        assertEquals(List.of(), charge(charging(50)));
    }

    @Test
    void aThinOneLosesTooMuchAtFullOutput() {
        Finding finding = charge(charging(16)).get(0);
        assertEquals("G2", finding.element());
        assertEquals(0.4, finding.wanted().value());
        assertTrue(finding.is().value() > 100 * 2 * 3 * 0.018 / 16);
        assertFalse(finding.mends().isEmpty());
    }

    @Test
    void theChargingLimitItselfPasses() {
        double drop = charge(charging(16)).get(0).is().value();
        assertEquals(List.of(), charge(charging(16).limit("charge-path-drop.12V", drop)));
        assertEquals(1, charge(charging(16).limit("charge-path-drop.12V", drop - 1e-6)).size());
    }

    private static List<Finding> straps(PlanFixture fixture) {
        return CheckFixture.findings(new BondLoadingRule(), fixture);
    }

    @Test
    void aStrapLosesUpToATenthOfAVolt() {
        assertEquals(List.of(), straps(DropBreakdownTest.structureReturn()));
        assertEquals(List.of(), straps(DropBreakdownTest.structureReturn().set("WE1", "ohm", 0.01)));
        Finding finding = straps(DropBreakdownTest.structureReturn().set("WE1", "ohm", 0.011)).get(0);
        assertEquals("WE1", finding.element());
        assertEquals(Severity.WARNING, finding.severity());
        assertFalse(finding.mends().isEmpty());
        assertEquals(List.of(), straps(DropBreakdownTest.structureReturn().set("WE1", "ohm", 0.02)
                .state("crank", c -> c.kind("cranking").on("E1"))));
    }

    @Test
    void aStrapCarriesNoMoreThanItsRating() {
        assertEquals(List.of(), straps(DropBreakdownTest.structureReturn().set("WE1", "currentMaxA", 10.0)));
        Finding finding = straps(DropBreakdownTest.structureReturn().set("WE1", "currentMaxA", 9.9)).get(0);
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals(10, finding.is().value(), 1e-6);
    }
}
