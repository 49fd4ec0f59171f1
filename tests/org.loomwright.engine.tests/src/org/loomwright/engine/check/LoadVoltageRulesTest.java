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
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;

/** The smallest and the largest voltage at a load. */
class LoadVoltageRulesTest {

    private static double loadV(PlanFixture fixture) {
        CheckContext context = CheckFixture.context(fixture);
        SolvedCase.Solved running = context.cases().get(0).running();
        return running.voltage(PlanIndex.terminal(context.plan(), "E1.L+"), PlanIndex.terminal(context.plan(), "E1.L-"));
    }

    private static List<Finding> undervolt(double minV) {
        return CheckFixture.findings(new LoadUndervoltRule(),
                DropBreakdownTest.structureReturn().set("E1#load", "minV", minV));
    }

    @Test
    void enoughVoltagePasses() {
        assertEquals(List.of(), undervolt(11.0));
    }

    @Test
    void tooLittleIsAnErrorWithTheElementsThatLoseMost() {
        double volts = loadV(DropBreakdownTest.structureReturn());
        Finding finding = undervolt(volts + 0.05).get(0);
        assertEquals("E1", finding.element());
        assertEquals(volts, finding.is().value(), 1e-9);
        assertEquals("W2", finding.causes().get(0).element());
        assertTrue(finding.why().get(0).contains("lost on the way"), finding.why().get(0));
        assertTrue(finding.mends().get(0).changes().get(0) instanceof Mend.UseSection use && use.cable().equals("W2"));
    }

    @Test
    void theLimitItselfPasses() {
        double volts = loadV(DropBreakdownTest.structureReturn());
        assertEquals(List.of(), undervolt(volts));
        assertEquals(1, undervolt(volts + 1e-6).size());
    }

    @Test
    void aSourceBelowTheLimitIsNamedAndNoCableProposed() {
        Finding finding = undervolt(12.79).get(0);
        assertEquals("G1", finding.causes().get(0).element());
        assertTrue(finding.mends().isEmpty());
    }

    @Test
    void aLoadThatIsOffIsNotJudged() {
        assertEquals(List.of(), CheckFixture.findings(new LoadUndervoltRule(),
                DropBreakdownTest.structureReturn().set("E1#load", "minV", 15.0).state("rest", c -> { })));
    }

    @Test
    void aLockedOutLoadNeedsItsRestartVoltage() {
        PlanFixture fixture = DropBreakdownTest.structureReturn().load("E2", "current", 60, 12)
                .cable("W8", 2.5, 6, "F1.30", "E2.L+").cable("W9", 2.5, 6, "E2.L-", "XE1").set("E2#load", "offV", 11.5)
                .set("E2#load", "restartV", 14.0);
        Finding finding = CheckFixture.findings(new LoadUndervoltRule(), fixture).get(0);
        assertEquals("E2", finding.element());
        assertTrue(finding.title().contains("switched itself off"), finding.title());
        assertEquals(14.0, finding.wanted().value());
    }

    private static PlanFixture charging() {
        return DropBreakdownTest.structureReturn().alternator("G2", 14.4, 90).cable("W5", 16, 1, "G2.B+", "F1.30")
                .cable("W6", 16, 1, "G2.B-", "XE2").state("driving", c -> c.engine(2000).on("E1"));
    }

    private static List<Finding> overvolt(double maxV) {
        return CheckFixture.findings(new LoadOvervoltRule(), charging().set("E1#load", "maxV", maxV));
    }

    @Test
    void chargingVoltageWithinTheMakersFigurePasses() {
        assertEquals(List.of(), overvolt(15.0));
    }

    @Test
    void chargingVoltageAboveIsAnErrorThatNamesTheSource() {
        Finding finding = overvolt(13.0).get(0);
        assertEquals("E1", finding.element());
        assertEquals("G2", finding.causes().get(0).element());
        assertFalse(finding.mends().isEmpty());
    }

    @Test
    void theHighestPermittedVoltageItselfPasses() {
        assertEquals(List.of(), overvolt(14.4));
        assertEquals(14.4, overvolt(14.399).get(0).is().value(), 1e-9);
        assertTrue(loadV(charging()) < 14.3);
    }

    @Test
    void theChargingVoltageCountsAsItIsAtTheColdestOfItsZone() {
        // 14.4 V at 25 degrees Celsius, 10 mV less for each kelvin more: 14.9 V at -25
        PlanFixture cold = charging().zone("bay", -25, 80).place("front", 0, 0, 0, "bay").at("G2", "front")
                .set("G2#source", "temperatureVPerK", -0.01);
        assertEquals(List.of(), CheckFixture.findings(new LoadOvervoltRule(), cold.set("E1#load", "maxV", 14.901)));
        Finding finding = CheckFixture.findings(new LoadOvervoltRule(), cold.set("E1#load", "maxV", 14.899)).get(0);
        assertEquals(14.9, finding.is().value(), 1e-9);
        assertTrue(finding.why().get(0).contains("-25"), finding.why().toString());
        assertEquals(14.4, CheckFixture.findings(new LoadOvervoltRule(),
                cold.set("G2#source", "temperatureVPerK", 0.0).set("E1#load", "maxV", 14.0)).get(0).is().value(), 1e-9);
    }

    @Test
    void aLoadBehindAnOpenContactDoesNotSeeTheChargingVoltage() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .alternator("G2", 14.4, 90).handSwitch("S1", false).load("E1", "current", 2, 12).set("E1#load", "maxV", 14.0)
                .cable("W1", 16, 1, "G2.B+", "G1.30").cable("W2", 16, 1, "G2.B-", "G1.31").cable("W3", 2.5, 1, "G1.30", "S1.1")
                .cable("W4", 2.5, 1, "S1.2", "E1.L+").cable("W5", 2.5, 1, "E1.L-", "G1.31")
                .state("driving", c -> c.engine(2000));
        assertEquals(List.of(), CheckFixture.findings(new LoadOvervoltRule(), fixture));
        assertEquals(1, CheckFixture.findings(new LoadOvervoltRule(), fixture.set("S1#contact", "restClosed", true)).size());
    }

    @Test
    void theHighestVoltageIsTheOneWhileLoadsThatComeAndGoAreOff() {
        PlanFixture fixture = DropBreakdownTest.structureReturn().load("E2", "current", 60, 12)
                .cable("W8", 10, 2, "F1.30", "E2.L+").cable("W9", 10, 2, "E2.L-", "XE1")
                .state("night", c -> c.on("E1").duty("E2", 10, 100));
        CheckContext context = CheckFixture.context(fixture);
        int plus = PlanIndex.terminal(context.plan(), "E1.L+");
        int minus = PlanIndex.terminal(context.plan(), "E1.L-");
        double together = context.cases().get(0).running().voltage(plus, minus);
        double alone = context.cases().get(0).base().voltage(plus, minus);
        assertTrue(alone > together + 0.1);
        Finding finding = CheckFixture.findings(new LoadOvervoltRule(), fixture.set("E1#load", "maxV", (alone + together) / 2))
                .get(0);
        assertEquals(alone, finding.is().value(), 1e-9);
    }
}
