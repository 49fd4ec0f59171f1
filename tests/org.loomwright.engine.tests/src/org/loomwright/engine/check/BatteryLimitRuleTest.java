// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;

/** Currents and temperatures of batteries. */
class BatteryLimitRuleTest {

    private static PlanFixture charged(double temperatureC, double sourceA) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).alternator("G2", 14.3, sourceA)
                .load("E1", "current", 30, 12).cable("W1", 25, 1, "G2.B+", "G1.30").cable("W2", 25, 1, "G2.B-", "G1.31")
                .cable("W3", 16, 1, "G1.30", "E1.L+").cable("W4", 16, 1, "E1.L-", "G1.31")
                .state("drive", c -> c.engine(2000).battery("G1", 0.5, temperatureC, 0.2));
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new BatteryLimitRule(), fixture);
    }

    @Test
    void chargingUpToTheLimitPasses() {
        assertEquals(List.of(), findings(charged(20, 50).set("G1#cell", "chargeMaxA", 50.0)));
        assertEquals(List.of(), findings(charged(20, 50)));
    }

    @Test
    void chargingBeyondItNamesTheSource() {
        Finding finding = findings(charged(20, 50).set("G1#cell", "chemistry", "liFePO4")
                .set("G1#cell", "chargeMaxA", 49.0)).get(0);
        assertEquals("G1", finding.element());
        assertEquals(50, finding.is().value(), 0.01);
        assertEquals(List.of("G2"), finding.causes().stream().map(Cause::element).toList());
    }

    @Test
    void dischargingHasItsLimit() {
        PlanFixture fixture = charged(20, 50).state("rest", c -> c.on("E1").battery("G1", 0.8, 20, 0.2));
        assertEquals(List.of(), findings(fixture.set("G1#cell", "dischargeMaxA", 30.0)));
        Finding finding = findings(fixture.set("G1#cell", "dischargeMaxA", 29.9)).get(0);
        assertTrue(finding.title().contains("gives 30 A"), finding.title());
        assertEquals("E1", finding.causes().get(0).element());
    }

    @Test
    void aStatedLowestTemperatureHolds() {
        assertEquals(List.of(), findings(charged(-5, 50).set("G1#cell", "chargeMinC", -5.0)));
        assertEquals(1, findings(charged(-5.1, 50).set("G1#cell", "chargeMinC", -5.0)).size());
    }

    @Test
    void lithiumTakesThePracticesWhereNoneIsStated() {
        assertEquals(List.of(), findings(charged(0, 50).set("G1#cell", "chemistry", "liFePO4")));
        Finding finding = findings(charged(-1, 50).set("G1#cell", "chemistry", "liFePO4")).get(0);
        assertEquals(0, finding.wanted().value(), 0);
        assertTrue(finding.why().get(0).contains("battery-limit.lithium-charge-min"), finding.why().toString());
        assertEquals(List.of(), findings(charged(-20, 50)));
    }

    @Test
    void aColdBatteryThatIsNotChargedPasses() {
        PlanFixture fixture = charged(20, 50).set("G1#cell", "chemistry", "liFePO4")
                .state("cold", c -> c.on("E1").battery("G1", 0.8, -10, 0.2)).state("still", c -> c.battery("G1", 0.8, -10, 0.2));
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void aSoundVehiclePasses() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
