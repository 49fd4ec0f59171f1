// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;

/** Loads on the middle of a pair in series. */
class HalfTapRuleTest {

    private static PlanFixture pair(String plus, String minus) {
        return new PlanFixture().domain("24V", 24, "G2.30").battery("G1", 12, 0.004, 0.012, 100)
                .battery("G2", 12, 0.004, 0.012, 100).cable("W1", 35, 0.3, "G1.30", "G2.31").load("E1", "current", 5, 12)
                .cable("W2", 2.5, 1, plus, "E1.L+").cable("W3", 2.5, 1, "E1.L-", minus);
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new HalfTapRule(), fixture);
    }

    @Test
    void aLoadOverTheWholePairPasses() {
        assertEquals(List.of(), findings(pair("G2.30", "G1.31")));
    }

    @Test
    void aLoadOnTheLowerHalfNamesBothBatteries() {
        Finding finding = findings(pair("G1.30", "G1.31")).get(0);
        assertEquals("E1", finding.element());
        assertEquals(List.of("G1", "G2"), finding.causes().stream().map(Cause::element).toList());
    }

    @Test
    void aLoadOnTheUpperHalfIsFoundToo() {
        assertEquals(1, findings(pair("G2.30", "G1.30")).size());
    }

    @Test
    void aConverterThatFeedsTheMiddleBalances() {
        PlanFixture fixture = pair("G1.30", "G1.31").converter("T1", 13.6, 20).cable("W4", 6, 1, "G2.30", "T1.IN+")
                .cable("W5", 6, 1, "T1.IN-", "G1.31").cable("W6", 6, 1, "T1.OUT+", "G1.30");
        assertEquals(List.of(), findings(fixture));
    }
}
