// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.result.Finding;

/** What batteries accept, and what rules make of it. */
class BatteryAcceptanceTest {

    /** An alternator whose voltage rises in the cold above the absorption voltage of a lead battery that is nearly flat. */
    private static PlanFixture cold(String chemistry) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 180).alternator("G2", 14.4, 120)
                .set("G2#source", "temperatureVPerK", -0.01).cable("W1", 35, 1, "G2.B+", "G1.30")
                .cable("W2", 35, 1, "G2.B-", "G1.31").set("G1#cell", "chargeMaxA", 45.0).set("G1#cell", "chemistry", chemistry)
                .state("winter", c -> c.engine(2000).battery("G1", 0.1, -20, 0.5).ambient(-20));
    }

    @Test
    void aLeadBatteryLimitsItsChargingCurrentItself() {
        CheckContext context = CheckFixture.context(cold("flooded"));
        SolvedCase.Solved running = context.cases().get(0).running();
        assertTrue(running.elementA(PlanIndex.element(context.plan(), "G1#cell")) > 46);
        assertEquals(List.of(), CheckFixture.findings(new BatteryLimitRule(), cold("flooded")));
    }

    @Test
    void aLithiumBatteryDoesNot() {
        List<Finding> findings = CheckFixture.findings(new BatteryLimitRule(),
                cold("liFePO4").state("summer", c -> c.engine(2000).battery("G1", 0.1, 20, 0.5)));
        assertTrue(findings.stream().anyMatch(finding -> finding.wanted().value() == 45), findings.toString());
    }

    @Test
    void aRelayThatSensesTheChargingVoltageCloses() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .alternator("G2", 14.4, 90).cable("W1", 25, 1, "G2.B+", "G1.30").cable("W2", 25, 1, "G2.B-", "G1.31")
                .cutOut("K1", 13.3, 12.8).battery("G3", 12, 0.004, 0.012, 100).cable("W3", 25, 1, "G1.30", "K1.30")
                .cable("W4", 25, 1, "K1.87", "G3.30").cable("W5", 25, 1, "G3.31", "G1.31").cable("W6", 1, 1, "K1.31", "G1.31")
                .state("drive", c -> c.engine(2000).battery("G1", 0.8, 25, 0.5).battery("G3", 0.5, 25, 0.5));
        CheckContext context = CheckFixture.context(fixture);
        SolvedCase.Solved running = context.cases().get(0).running();
        assertTrue(running.elementA(PlanIndex.element(context.plan(), "K1#contact")) > 15);
        assertTrue(running.elementA(PlanIndex.element(context.plan(), "G3#cell")) < 25);
        assertEquals(List.of(), CheckFixture.findings(new StateCyclingRule(), fixture));
    }
}
