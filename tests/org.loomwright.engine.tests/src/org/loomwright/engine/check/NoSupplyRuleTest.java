// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Loads that a case wants. */
class NoSupplyRuleTest {

    private static PlanFixture fed(String way) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2)
                .fuse("F1", "1", 10).handSwitch("S1", false).load("E1", "current", 5, 12).cable("W1", 6, 1, "G1.30", "F1.30")
                .cable("W2", 2.5, 1, "F1." + way, "S1.1").cable("W3", 2.5, 1, "S1.2", "E1.L+")
                .cable("W4", 2.5, 1, "E1.L-", "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new NoSupplyRule(), fixture);
    }

    private static List<String> causes(Finding finding) {
        return finding.causes().stream().map(Cause::element).toList();
    }

    @Test
    void aClosedSwitchPasses() {
        assertEquals(List.of(), findings(fed("1").state("on", c -> c.on("E1").position("S1", true))));
    }

    @Test
    void anOpenSwitchIsNamed() {
        Finding finding = findings(fed("1").state("on", c -> c.on("E1"))).get(0);
        assertEquals("E1", finding.element());
        assertEquals("on", finding.caseName());
        assertEquals(List.of("S1"), causes(finding));
    }

    @Test
    void anEmptyWayIsNamed() {
        Finding finding = findings(fed("2").state("on", c -> c.on("E1").position("S1", true))).get(0);
        assertEquals(List.of("F1/2"), causes(finding));
        assertTrue(finding.why().get(0).contains("-F1:2"), finding.why().toString());
    }

    @Test
    void aLoadThatIsNotWantedPasses() {
        assertEquals(List.of(), findings(fed("1").state("off", c -> { })));
        assertEquals(List.of(), findings(fed("1").state("none", c -> c.share("E1", 0))));
    }

    @Test
    void aLoadThatNobodyWiredIsToldEvenWhenNoCaseWantsIt() {
        Finding finding = findings(fed("1").load("E2", "current", 1, 12).state("off", c -> { })).get(0);
        assertEquals(List.of("E2", Severity.WARNING), List.of(finding.element(), finding.severity()));
        assertEquals(List.of("No conductor ends at -E2:L+ and -E2:L-."), finding.why());
        Finding half = findings(fed("1").load("E2", "current", 1, 12).cable("W8", 1, 1, "E2.L-", "G1.31")
                .state("off", c -> { })).get(0);
        assertEquals(List.of("No conductor ends at -E2:L+."), half.why());
        assertEquals(List.of(), findings(fed("1").load("E2", "current", 1, 12).cable("W8", 1, 1, "E2.L-", "G1.31")
                .cable("W9", 1, 1, "E2.L+", "G1.30").state("off", c -> { })));
    }

    @Test
    void theCasesOfTheEngineWantNothing() {
        assertEquals(List.of(), findings(fed("1").state("engine:all-on", c -> c.on("E1").byEngine())));
    }

    @Test
    void theSwitchOfARelaysCoilIsNamedBehindTheRelay() {
        PlanFixture fixture = SoundVan.fixture().state("dark", c -> c.on("E1"));
        Finding finding = findings(fixture).get(0);
        assertEquals("E1", finding.element());
        assertEquals(List.of("K2", "S2"), causes(finding));
    }

    @Test
    void aReturnThatLeadsNowhereIsSaid() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "current", 5, 12).body("rack").earthPoint("XE1", "rack").cable("W1", 2.5, 1, "G1.30", "E1.L+")
                .cable("W2", 2.5, 1, "E1.L-", "XE1").state("on", c -> c.on("E1"));
        Finding finding = findings(fixture).get(0);
        assertTrue(finding.why().get(0).contains("minus"), finding.why().toString());
    }

    @Test
    void anAlternatorAtRestIsNoSupply() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G2.B+").alternator("G2", 14.3, 90)
                .load("E1", "current", 5, 12).cable("W1", 2.5, 1, "G2.B+", "E1.L+").cable("W2", 2.5, 1, "E1.L-", "G2.B-")
                .state("rest", c -> c.on("E1")).state("run", c -> c.on("E1").engine(2000));
        assertEquals(List.of("rest"), findings(fixture).stream().map(Finding::caseName).toList());
    }

    @Test
    void aMotorRunningBackwardsPasses() {
        PlanFixture fixture = fed("1").load("E2", "current", 1, 12).cable("W8", 2.5, 1, "F1.1", "E2.L-")
                .cable("W9", 2.5, 1, "E2.L+", "G1.31").state("on", c -> c.on("E2"));
        assertEquals(List.of(), findings(fixture));
    }

    /** A full battery rests at 12.8 V, a half-charged one at 12.3 V. */
    @Test
    void aCutOutBetweenItsVoltagesGivesANoteOnly() {
        for (double offAt : new double[] {11.5, 12.5}) {
            PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                    .cutOut("Q1", 12.6, offAt).load("E1", "current", 1, 12).cable("W1", 6, 1, "G1.30", "Q1.30")
                    .cable("W2", 6, 1, "Q1.87", "E1.L+").cable("W3", 6, 1, "E1.L-", "G1.31").cable("W4", 1, 1, "Q1.31", "G1.31")
                    .state("half", c -> c.on("E1").battery("G1", 0.5, 25, 0));
            findings(fixture).forEach(finding -> assertEquals(offAt < 12.3 ? Severity.NOTE : Severity.ERROR, finding.severity()));
            assertTrue(offAt < 12.3 || findings(fixture).size() == 1, Double.toString(offAt));
        }
    }
}
