// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Contacts of the fixture: 30 A continuous and on opening, 60 A on closing, 28 V. */
class ContactDutyRuleTest {

    private static PlanFixture switched(double loadA) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.002, 0.004, 200).handSwitch("S1", true)
                .load("E1", "current", loadA, 12).cable("W1", 16, 1, "G1.30", "S1.1").cable("W2", 16, 1, "S1.2", "E1.L+")
                .cable("W3", 16, 1, "E1.L-", "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new ContactDutyRule(), fixture);
    }

    @Test
    void aContactUpToItsRatingPasses() {
        assertEquals(List.of(), findings(switched(20).state("on", c -> c.on("E1"))));
        assertEquals(List.of(), findings(switched(30).state("on", c -> c.on("E1"))));
    }

    @Test
    void aContactBeyondItIsAnError() {
        Finding finding = findings(switched(30.1).state("on", c -> c.on("E1"))).get(0);
        assertEquals("S1", finding.element());
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals(30.1, finding.is().value(), 1e-9);
    }

    @Test
    void aLoadThatComesAndGoesMakesItAWarning() {
        assertEquals(Severity.WARNING, findings(switched(35).state("on", c -> c.duty("E1", 20, 600))).get(0).severity());
    }

    @Test
    void inrushIsHeldAgainstTheMakingCapacity() {
        PlanFixture fixture = switched(20).state("on", c -> c.on("E1")).set("E1#load", "inrushS", 0.1);
        assertEquals(List.of(), findings(fixture.set("E1#load", "inrushA", 60.0)));
        Finding finding = findings(fixture.set("E1#load", "inrushA", 61.0)).get(0);
        assertEquals("E1", finding.causes().get(0).element());
        assertEquals(60, finding.wanted().value(), 1e-9);
        assertTrue(finding.title().contains("closes on"), finding.title());
    }

    @Test
    void inrushOfALoadThatIsOffDoesNotCount() {
        assertEquals(List.of(), findings(switched(20).state("idle", c -> { }).set("E1#load", "inrushA", 90.0)));
    }

    @Test
    void openingHasARatingOfItsOwn() {
        Finding finding = findings(switched(20).state("on", c -> c.on("E1")).set("S1#contact", "breakA", 15.0)).get(0);
        assertTrue(finding.title().contains("opens 20 A"), finding.title());
        assertEquals(List.of(), findings(switched(15).state("on", c -> c.on("E1")).set("S1#contact", "breakA", 15.0)));
    }

    @Test
    void aContactForTwelveVoltsDoesNotSwitchTwentyFour() {
        PlanFixture fixture = new PlanFixture().domain("24V", 24, "G1.30").battery("G1", 24, 0.01, 0.02, 100)
                .handSwitch("S1", true).load("E1", "current", 5, 24).cable("W1", 4, 1, "G1.30", "S1.1")
                .cable("W2", 4, 1, "S1.2", "E1.L+").cable("W3", 4, 1, "E1.L-", "G1.31").state("on", c -> c.on("E1"));
        assertEquals(List.of(), findings(fixture));
        Finding finding = findings(fixture.set("S1#contact", "ratedV", 16.0)).get(0);
        assertEquals(16, finding.wanted().value(), 1e-9);
        assertTrue(finding.is().value() > 24 && finding.is().value() < 25.6, finding.title());
    }

    @Test
    void crankingIsHeldAgainstTheMakingCapacityOnly() {
        PlanFixture van = SoundVan.fixture().set("M1#contact", "continuousA", 50.0).set("M1#contact", "makeA", 800.0);
        assertEquals(List.of(), findings(van));
        List<Finding> findings = findings(van.set("M1#contact", "makeA", 100.0));
        assertEquals(List.of("M1"), findings.stream().map(Finding::element).toList());
        assertTrue(findings.get(0).title().contains("while cranking"), findings.get(0).title());
    }

    @Test
    void shuntsHaveARatingToo() {
        Finding finding = findings(SoundVan.fixture().set("R1#shunt", "currentMaxA", 5.0)).get(0);
        assertTrue(finding.title().startsWith("Shunt -R1 carries"), finding.title());
    }
}
