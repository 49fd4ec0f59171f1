// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Fuses and switches in returns. */
class DeviceInReturnRuleTest {

    private static PlanFixture plain() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "current", 5, 12);
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new DeviceInReturnRule(), fixture);
    }

    private static PlanFixture fused(boolean inReturn) {
        PlanFixture fixture = plain().box("F1", 1).fuse("F1", "1", 10);
        return inReturn ? fixture.cable("W1", 2.5, 1, "G1.30", "E1.L+").cable("W2", 2.5, 1, "E1.L-", "F1.1")
                .cable("W3", 2.5, 1, "F1.30", "G1.31")
                : fixture.cable("W1", 2.5, 1, "G1.30", "F1.30").cable("W2", 2.5, 1, "F1.1", "E1.L+")
                        .cable("W3", 2.5, 1, "E1.L-", "G1.31");
    }

    @Test
    void aFuseInTheSupplyPassesOneInTheReturnNot() {
        assertEquals(List.of(), findings(fused(false)));
        Finding finding = findings(fused(true)).get(0);
        assertEquals("F1.1", finding.element());
        assertTrue(finding.title().contains("lies in a return"), finding.title());
    }

    @Test
    void thePracticeMayAllowIt() {
        assertEquals(List.of(), findings(fused(true).choice("device-in-return", "allowed")));
    }

    private static PlanFixture switched() {
        return plain().handSwitch("S1", false).cable("W1", 2.5, 1, "G1.30", "E1.L+").cable("W2", 2.5, 1, "E1.L-", "S1.1")
                .cable("W3", 2.5, 1, "S1.2", "G1.31");
    }

    @Test
    void aOnePoleSwitchInTheReturnIsAnError() {
        assertEquals(Severity.ERROR, findings(switched()).get(0).severity());
        assertEquals("S1", findings(switched()).get(0).element());
    }

    @Test
    void theBaseVehiclesOwnIsExempt() {
        assertEquals(List.of(), findings(switched().set("S1", "existing", true)));
    }

    @Test
    void aSecondPoleInTheSupplyMakesItRight() {
        PlanFixture fixture = plain().device("Q1", "isolator", "1:plus", "2:plus", "3:minus", "4:minus")
                .contact("Q1", "1", "2", true, "hand").element("Q1#second", n -> new Plan.Contact("Q1#second", n.device("Q1"),
                        "second", n.terminal("Q1.3"), n.terminal("Q1.4"), 0.001, 100, 100, 100, 32, true, "hand", -1))
                .cable("W1", 2.5, 1, "G1.30", "Q1.1").cable("W2", 2.5, 1, "Q1.2", "E1.L+").cable("W3", 2.5, 1, "E1.L-", "Q1.3")
                .cable("W4", 2.5, 1, "Q1.4", "G1.31");
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void aSwitchInTheReturnOfACoilIsAWarning() {
        PlanFixture fixture = plain().relay("K1").handSwitch("S1", false).cable("W1", 2.5, 1, "G1.30", "K1.30")
                .cable("W2", 2.5, 1, "K1.87", "E1.L+").cable("W3", 2.5, 1, "E1.L-", "G1.31").cable("W4", 1, 1, "G1.30", "K1.86")
                .cable("W5", 1, 1, "K1.85", "S1.1").cable("W6", 1, 1, "S1.2", "G1.31");
        assertEquals(Severity.WARNING, findings(fixture).get(0).severity());
    }

    @Test
    void aRelayInTheReturnIsNoMatterOfThisRule() {
        PlanFixture fixture = plain().relay("K1").cable("W1", 2.5, 1, "G1.30", "E1.L+").cable("W2", 2.5, 1, "E1.L-", "K1.30")
                .cable("W3", 2.5, 1, "K1.87", "G1.31").cable("W4", 1, 1, "G1.30", "K1.86").cable("W5", 1, 1, "K1.85", "G1.31");
        assertEquals(List.of(), findings(fixture));
    }
}
