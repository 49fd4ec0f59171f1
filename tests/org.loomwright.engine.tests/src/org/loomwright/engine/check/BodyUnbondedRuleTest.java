// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;

/** Bodies that carry return current. */
class BodyUnbondedRuleTest {

    private static PlanFixture twoBodies() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("chassis").body("engine")
                .earthPoint("XE1", "chassis").earthPoint("XE2", "chassis").earthPoint("XE3", "engine")
                .cable("W1", 35, 1, "G1.31", "XE1").alternator("G2", 14.3, 90, "engine").cable("W2", 25, 1, "G2.B+", "G1.30")
                .load("E1", "current", 2, 12).cable("W3", 2.5, 1, "G1.30", "E1.L+").cable("W4", 2.5, 1, "E1.L-", "XE3");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new BodyUnbondedRule(), fixture);
    }

    @Test
    void anEngineWithoutStrapNamesWhatReturnsIntoIt() {
        Finding finding = findings(twoBodies()).get(0);
        assertEquals("engine", finding.element());
        assertEquals(List.of("G2", "E1"), finding.causes().stream().map(Cause::element).toList());
        assertTrue(finding.title().contains("-E1"), finding.title());
    }

    @Test
    void aStrapOrASeamIsEnough() {
        assertEquals(List.of(), findings(twoBodies().bond("WE1", "XE2", "XE3", 0.2)));
        assertEquals(List.of(), findings(twoBodies().bodyLink("seam", "chassis", "engine", 0.5)));
    }

    @Test
    void theMinusCableIsAPath() {
        assertEquals(List.of(), findings(twoBodies().cable("W9", 35, 1, "G1.31", "XE3")));
    }

    @Test
    void aBodyThatCarriesNothingNeedsNone() {
        assertEquals(List.of(), findings(twoBodies().bond("WE1", "XE2", "XE3", 0.2).body("roof").earthPoint("XE9", "roof")));
    }

    @Test
    void twoBodiesBondedToEachOtherOnlyAreBothFound() {
        PlanFixture fixture = twoBodies().body("frame").earthPoint("XE4", "frame").bond("WE2", "XE3", "XE4", 0.2)
                .load("E2", "current", 2, 12).cable("W5", 2.5, 1, "G1.30", "E2.L+").cable("W6", 2.5, 1, "E2.L-", "XE4");
        assertEquals(List.of("engine", "frame"), findings(fixture).stream().map(Finding::element).toList());
    }
}
