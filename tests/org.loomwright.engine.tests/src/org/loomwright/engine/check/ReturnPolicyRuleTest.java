// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;

/** Returns through the structure. */
class ReturnPolicyRuleTest {

    private static PlanFixture returning(String to) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("shell")
                .earthPoint("XE1", "shell").earthPoint("XE2", "shell").negativeBar("X1", 2).load("E1", "current", 5, 12)
                .cable("W1", 2.5, 1, "G1.30", "E1.L+").cable("W2", 2.5, 1, "E1.L-", to).cable("W3", 16, 1, "G1.31", "XE2");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new ReturnPolicyRule(), fixture);
    }

    @Test
    void structureReturnPassesWhereItIsAllowed() {
        assertEquals(List.of(), findings(returning("XE1")));
    }

    @Test
    void aVehicleThatForbidsItIsHeldTo() {
        Finding finding = findings(returning("XE1").choice("return-policy", "forbidden")).get(0);
        assertEquals("E1", finding.element());
        assertEquals("XE1", finding.causes().get(0).element());
    }

    @Test
    void theBodysOwnPolicyGoesFirst() {
        assertEquals(1, findings(returning("XE1").set("shell", "policy", Plan.ReturnPolicy.FORBIDDEN)).size());
        assertEquals(List.of(), findings(returning("XE1").choice("return-policy", "forbidden")
                .set("shell", "policy", Plan.ReturnPolicy.ALLOWED)));
    }

    @Test
    void listedLoadsMayTheOthersNot() {
        PlanFixture fixture = returning("XE1").choice("return-policy", "listedLoads");
        assertEquals(1, findings(fixture).size());
        assertEquals(List.of(), findings(fixture.set("E1", "returnPolicy", "structure")));
    }

    @Test
    void aSettledOwnReturnIsHeldTo() {
        assertEquals(1, findings(returning("XE1").set("E1", "returnPolicy", "own")).size());
        assertEquals(List.of(), findings(returning("G1.31").set("E1", "returnPolicy", "own")));
    }

    @Test
    void aBarThatIsStrappedToTheBodyButGoesHomeByCableIsAnOwnReturn() {
        PlanFixture fixture = returning("X1.N1").choice("return-policy", "forbidden").cable("W4", 16, 1, "X1.31", "G1.31")
                .cable("W5", 16, 1, "X1.N2", "XE1");
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void aBarThatOnlyGoesToTheBodyIsNone() {
        PlanFixture fixture = returning("X1.N1").choice("return-policy", "forbidden").cable("W5", 16, 1, "X1.N2", "XE1");
        assertEquals(List.of("E1"), findings(fixture).stream().map(Finding::element).toList());
    }

    @Test
    void theBaseVehicleIsExempt() {
        assertEquals(List.of(), findings(returning("XE1").choice("return-policy", "forbidden").set("E1", "existing", true)));
    }

    @Test
    void aCaseThatTakesTheReturnCountsAsStructure() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("shell")
                .earthPoint("XE2", "shell").cable("W3", 16, 1, "G1.31", "XE2").device("P1", "load", "L+:plus", "case:case")
                .bolted("P1", "shell").demand("P1", "load", "L+", "case", "current", 5, 12).cable("W1", 2.5, 1, "G1.30", "P1.L+");
        assertEquals(List.of(), findings(fixture));
        assertEquals("P1.case", findings(fixture.choice("return-policy", "forbidden")).get(0).causes().get(0).element());
    }
}
