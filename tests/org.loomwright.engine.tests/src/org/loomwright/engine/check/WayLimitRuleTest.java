// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;

/** Ways, bars and boxes. A way of the fixture bears 30 A; fuse and seat have 1.5 milliohm. */
class WayLimitRuleTest {

    private static PlanFixture box(double firstA, double secondA) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2)
                .fuse("F1", "1", 40).fuse("F1", "2", 40).load("E1", "current", firstA, 12).load("E2", "current", secondA, 12)
                .cable("W1", 25, 0.15, "G1.30", "F1.30").cable("W2", 10, 1, "F1.1", "E1.L+").cable("W3", 10, 1, "E1.L-", "G1.31")
                .cable("W4", 10, 1, "F1.2", "E2.L+").cable("W5", 10, 1, "E2.L-", "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new WayLimitRule(), fixture.state("on", c -> c.on("E1", "E2")));
    }

    @Test
    void aWayUpToItsCurrentPasses() {
        assertEquals(List.of(), findings(box(20, 20)));
        assertEquals(List.of(), findings(box(30, 20)));
    }

    @Test
    void aWayBeyondItIsAnErrorThatNamesTheLoad() {
        Finding finding = findings(box(30.1, 20)).get(0);
        assertEquals("F1.1", finding.element());
        assertEquals(30.1, finding.is().value(), 1e-9);
        assertEquals("E1", finding.causes().get(0).element());
    }

    @Test
    void theBarCarriesTheSumOfTheWays() {
        assertEquals(List.of(), findings(box(20, 20).set("F1", "barMaxA", 40.0)));
        Finding finding = findings(box(20, 20).set("F1", "barMaxA", 39.0)).get(0);
        assertEquals("F1", finding.element());
        assertEquals(40, finding.is().value(), 1e-6);
    }

    /** Joule's law: 2 x 20^2 x 0.0015 = 1.2 W. */
    @Test
    void theHeatOfTheBoxIsTheSumOfItsFuses() {
        assertEquals(List.of(), findings(box(20, 20).set("F1", "dissipationMaxW", 1.2001)));
        Finding finding = findings(box(20, 20).set("F1", "dissipationMaxW", 1.1)).get(0);
        assertEquals(1.2, finding.is().value(), 1e-6);
        assertTrue(finding.title().contains("heat"), finding.title());
    }
}
