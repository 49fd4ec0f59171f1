// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;

/** Sections, lugs and studs. */
class TerminalFitRuleTest {

    private static PlanFixture plain(double sectionMm2) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "current", 5, 12).cable("W1", sectionMm2, 1, "G1.30", "E1.L+")
                .cable("W2", 2.5, 1, "E1.L-", "G1.31").set("E1.L+", "sectionMinMm2", 1.5).set("E1.L+", "sectionMaxMm2", 4.0);
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new TerminalFitRule(), fixture);
    }

    @Test
    void sectionsWithinTheRangePassTheEndsIncluded() {
        assertEquals(List.of(), findings(plain(2.5)));
        assertEquals(List.of(), findings(plain(1.5)));
        assertEquals(List.of(), findings(plain(4)));
    }

    @Test
    void aThickConductorNamesTheTerminal() {
        Finding finding = findings(plain(6)).get(0);
        assertEquals("W1", finding.element());
        assertEquals("E1.L+", finding.causes().get(0).element());
        assertTrue(finding.title().contains("at most 4"), finding.title());
    }

    @Test
    void aThinConductorCanBeMadeThicker() {
        Finding finding = findings(plain(1)).get(0);
        assertEquals(List.of(new Mend.UseSection("W1", 1.5)), finding.mends().get(0).changes());
    }

    @Test
    void aLugFitsTheStud() {
        PlanFixture fixture = plain(2.5).set("G1.30", "studMm", 8.0);
        assertEquals(List.of(), findings(fixture.set("W1@1", "lugA", 8.0)));
        Finding loose = findings(fixture.set("W1@1", "lugA", 10.0)).get(0);
        assertTrue(loose.title().contains("M10") && loose.title().contains("M8"), loose.title());
        assertEquals("W1", loose.element());
        assertEquals(1, findings(fixture.set("W1@1", "lugA", 6.0)).size());
    }

    @Test
    void aLugWithoutAStatedStudIsNotJudged() {
        assertEquals(List.of(), findings(plain(2.5).set("W1@1", "lugA", 10.0)));
    }

    private static PlanFixture crowded(int cables) {
        PlanFixture fixture = plain(2.5).set("G1.31", "form", "stud");
        for (int i = 2; i <= cables; i++) {
            fixture.load("E" + i, "current", 1, 12).cable("W1" + i, 2.5, 1, "E" + i + ".L-", "G1.31");
        }
        return fixture;
    }

    @Test
    void fourLugsAreEnoughForAStud() {
        assertEquals(List.of(), findings(crowded(4)));
        Finding finding = findings(crowded(5)).get(0);
        assertEquals("G1.31", finding.element());
        assertEquals(5, finding.is().value(), 0);
        assertEquals(5, finding.causes().size());
    }

    @Test
    void thePartMayStateAnotherNumber() {
        assertEquals(List.of(), findings(crowded(5).set("G1.31", "lugsMax", 5)));
        assertEquals(1, findings(crowded(3).set("G1.31", "lugsMax", 2)).size());
    }

    @Test
    void strapsCountAtEarthPoints() {
        PlanFixture fixture = plain(2.5).body("chassis").body("engine").earthPoint("XE1", "chassis").earthPoint("XE2", "engine")
                .bond("WE1", "XE1", "XE2", 0.2).bond("WE2", "XE1", "XE2", 0.2).bond("WE3", "XE1", "XE2", 0.2)
                .cable("W3", 16, 0.5, "G1.31", "XE1").cable("W4", 16, 0.5, "G1.31", "XE1");
        List<Finding> findings = findings(fixture);
        assertEquals(List.of("XE1"), findings.stream().map(Finding::element).toList());
    }
}
