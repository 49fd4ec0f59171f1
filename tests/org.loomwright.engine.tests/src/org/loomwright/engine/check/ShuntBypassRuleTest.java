// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;

/** What the shunt does not see. */
class ShuntBypassRuleTest {

    private static PlanFixture measured(String loadReturn) {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100);
        return SoundVan.shunt(fixture, "R1").cable("W1", 35, 0.3, "G1.31", "R1.B-").negativeBar("X1", 4)
                .cable("W2", 35, 0.3, "R1.P-", "X1.31").load("E1", "current", 5, 12).cable("W3", 2.5, 1, "G1.30", "E1.L+")
                .cable("W4", 2.5, 1, "E1.L-", loadReturn);
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new ShuntBypassRule(), fixture);
    }

    private static List<String> causes(Finding finding) {
        return finding.causes().stream().map(Cause::element).toList();
    }

    @Test
    void loadsBehindTheShuntPass() {
        assertEquals(List.of(), findings(measured("X1.N1")));
        assertEquals(List.of(), findings(measured("R1.P-")));
    }

    @Test
    void aLoadAtTheBatterysPostIsFound() {
        for (String at : List.of("G1.31", "R1.B-")) {
            Finding finding = findings(measured(at)).get(0);
            assertEquals("R1", finding.element());
            assertEquals(List.of("E1"), causes(finding));
        }
    }

    @Test
    void aBodyOnTheBatterysSideTakesItsLoadsPast() {
        PlanFixture fixture = measured("XE1").body("chassis").earthPoint("XE1", "chassis").earthPoint("XE2", "chassis")
                .cable("W5", 16, 1, "G1.31", "XE2");
        assertEquals(List.of("E1"), causes(findings(fixture).get(0)));
    }

    @Test
    void aBodyBehindTheShuntPasses() {
        PlanFixture fixture = measured("XE1").body("chassis").earthPoint("XE1", "chassis").earthPoint("XE2", "chassis")
                .cable("W5", 16, 1, "X1.N2", "XE2");
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void aChargerOnTheBatterysSideIsFoundOneBehindItNot() {
        assertEquals(List.of(), findings(measured("X1.N1").alternator("G2", 14.3, 60).cable("W6", 10, 1, "G2.B-", "X1.N3")));
        PlanFixture fixture = measured("X1.N1").alternator("G2", 14.3, 60).cable("W6", 10, 1, "G2.B-", "G1.31");
        assertEquals(List.of("G2"), causes(findings(fixture).get(0)));
    }

    @Test
    void aConductorAroundTheShuntIsNamed() {
        Finding finding = findings(measured("X1.N1").cable("W9", 16, 1, "G1.31", "X1.N4")).get(0);
        assertTrue(finding.title().contains("bridged"), finding.title());
        assertEquals(List.of("W9"), causes(finding));
    }

    @Test
    void severalBatteriesOnTheBatterysSidePass() {
        PlanFixture fixture = measured("X1.N1").battery("G3", 12, 0.004, 0.012, 100).cable("W7", 35, 0.3, "G3.31", "G1.31")
                .cable("W8", 35, 0.3, "G3.30", "G1.30");
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void theMonitorsOwnSupplyDoesNotMatter() {
        PlanFixture fixture = measured("X1.N1").demand("R1", "own", "B-", "P-", "current", 0.01, 12);
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void anotherBatteryBehindTheShuntPasses() {
        PlanFixture fixture = measured("X1.N1").battery("G3", 12, 0.004, 0.012, 60).cable("W7", 35, 2, "G3.31", "X1.N4");
        assertEquals(List.of(), findings(fixture));
    }
}
