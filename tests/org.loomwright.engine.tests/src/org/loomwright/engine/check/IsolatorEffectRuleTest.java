// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;

/** What an open isolator leaves alive. */
class IsolatorEffectRuleTest {

    /** Battery, isolator in plus, box behind it; the load between two points. */
    private static PlanFixture isolated(String from) {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2)
                .fuse("F1", "1", 60).fuse("F1", "2", 5).cable("W1", 16, 0.2, "G1.30", "F1.30");
        return SoundVan.isolator(fixture, "Q1", "1", "2").box("F2", 2).fuse("F2", "1", 10).cable("W2", 16, 0.5, "F1.1", "Q1.1")
                .cable("W3", 16, 0.5, "Q1.2", "F2.30").load("E1", "current", 1, 12).cable("W4", 1.5, 1, from, "E1.L+")
                .cable("W5", 1.5, 1, "E1.L-", "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new IsolatorEffectRule(), fixture);
    }

    private static PlanFixture parked(PlanFixture fixture) {
        return fixture.state("parked", c -> c.on("E1"));
    }

    @Test
    void aLoadBehindTheIsolatorPasses() {
        assertEquals(List.of(), findings(parked(isolated("F2.1"))));
    }

    @Test
    void aLoadThatBypassesItIsFound() {
        Finding finding = findings(parked(isolated("F1.2"))).get(0);
        assertEquals("E1", finding.element());
        assertEquals("Q1", finding.causes().get(0).element());
        assertTrue(finding.title().contains("stays live"), finding.title());
    }

    @Test
    void whatMustStayLiveAndTheBaseVehicleMayBypassIt() {
        assertEquals(List.of(), findings(parked(isolated("F1.2").set("E1", "mustStayLive", true))));
        assertEquals(List.of(), findings(parked(isolated("F1.2").set("E1", "existing", true))));
    }

    @Test
    void whatMustStayLiveIsNotBehindIt() {
        Finding finding = findings(parked(isolated("F2.1").set("E1", "mustStayLive", true))).get(0);
        assertEquals("E1", finding.element());
        assertTrue(finding.title().contains("is dead"), finding.title());
    }

    @Test
    void aLoadBehindAnOpenSwitchIsNotLive() {
        PlanFixture fixture = parked(isolated("S1.2").handSwitch("S1", false).cable("W6", 1.5, 1, "F1.2", "S1.1"));
        assertEquals(List.of(), findings(fixture));
        assertEquals(1, findings(isolated("S1.2").handSwitch("S1", false).cable("W6", 1.5, 1, "F1.2", "S1.1")
                .state("left on", c -> c.on("E1").position("S1", true))).size());
    }

    @Test
    void withTheIgnitionOnNothingIsSaidOfBypasses() {
        assertEquals(List.of(), findings(isolated("F1.2").state("drive", c -> c.on("E1").engine(2000))));
    }

    @Test
    void aLoadOnAnotherBatteryIsNoMatterOfThisIsolator() {
        PlanFixture fixture = parked(isolated("G2.30").battery("G2", 12, 0.004, 0.012, 60).cable("W9", 16, 1, "G2.31", "G1.31"));
        assertEquals(List.of(), findings(fixture));
    }

    private static PlanFixture running(String alternatorTo) {
        return isolated("F2.1").alternator("G2", 14.3, 60).cable("W7", 16, 1, "G2.B+", alternatorTo)
                .cable("W8", 16, 1, "G2.B-", "G1.31").state("drive", c -> c.on("E1").engine(2000));
    }

    @Test
    void anAlternatorOnTheBatterySidePasses() {
        assertEquals(List.of(), findings(running("F1.30")));
    }

    @Test
    void anAlternatorBehindTheIsolatorIsParted() {
        Finding finding = findings(running("F2.30")).get(0);
        assertEquals("Q1", finding.element());
        assertEquals("G2", finding.causes().get(0).element());
    }

    @Test
    void anAlternatorKeepsAnotherBattery() {
        PlanFixture fixture = running("F2.30").battery("G3", 12, 0.004, 0.012, 60).cable("W9", 16, 1, "G3.30", "F2.30")
                .cable("W10", 16, 1, "G3.31", "G1.31");
        assertEquals(List.of(), findings(fixture));
    }

    /** Isolator in the minus: a load that returns to the battery's post stays live, one that returns behind it does not. */
    @Test
    void anIsolatorInTheMinusIsJudgedByTheReturn() {
        for (String to : List.of("Q1.2", "Q1.1")) {
            PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100);
            SoundVan.isolator(fixture, "Q1", "1", "2").cable("W1", 16, 1, "G1.31", "Q1.1").load("E1", "current", 1, 12)
                    .cable("W2", 1.5, 1, "G1.30", "E1.L+").cable("W3", 1.5, 1, "E1.L-", to);
            assertEquals("Q1.1".equals(to) ? 1 : 0, findings(parked(fixture)).size(), to);
        }
    }

    @Test
    void aSoundVehiclePasses() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
