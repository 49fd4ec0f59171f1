// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Batteries side by side and in series. A battery of the fixture rests between 11.8 and 12.8 V. */
class BatteryMixRuleTest {

    private static PlanFixture bank(double crossMetres, double ah) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.004, 100)
                .battery("G2", 12, 0.004, 0.004, ah).cable("W1", 35, crossMetres, "G1.30", "G2.30")
                .cable("W2", 35, crossMetres, "G1.31", "G2.31").load("E1", "current", 60, 12).cable("W3", 25, 1, "G1.30", "E1.L+")
                .cable("W4", 25, 1, "E1.L-", "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new BatteryMixRule(), fixture);
    }

    private static PlanFixture on(PlanFixture fixture) {
        return fixture.state("on", c -> c.on("E1").ambient(20));
    }

    @Test
    void alikeBatteriesWithShortLinksPass() {
        assertEquals(List.of(), findings(on(bank(0.3, 100))));
    }

    @Test
    void aFarBatteryLeavesTheCurrentToTheNearOne() {
        Finding finding = findings(on(bank(3, 100))).get(0);
        assertEquals("G1", finding.element());
        assertEquals(Severity.WARNING, finding.severity());
        assertTrue(finding.is().value() > 1.2 && finding.is().value() < 2, finding.title());
    }

    /**
     * Link: R = 2 x (0.018 x 3 / 35 + 2 x 0.0002) ohm at 20 degrees; share 2 (0.004 + R) / (0.008 + R), a little more when warm.
     */
    @Test
    void theShareIsHeldAgainstTheLimit() {
        double ratio = findings(on(bank(3, 100))).get(0).is().value();
        double linkOhm = 2 * (0.018 * 3 / 35 + 2 * 0.0002);
        assertEquals(2 * (0.004 + linkOhm) / (0.008 + linkOhm), ratio, 0.01);
        assertEquals(1, findings(on(bank(3, 100)).limit("battery-mix.share", ratio - 0.001)).size());
        assertEquals(List.of(), findings(on(bank(3, 100)).limit("battery-mix.share", ratio + 0.001)));
    }

    @Test
    void aSmallCurrentSaysNothingOfTheShare() {
        assertEquals(List.of(), findings(on(bank(3, 100).set("E1#load", "amps", 9.0))));
    }

    @Test
    void sharesAreOfTheCapacity() {
        PlanFixture fixture = on(bank(0.1, 200).set("G2#cell", "rMinOhm", 0.0011).set("G2#cell", "rMaxOhm", 0.0011));
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void anotherChemistryIsAnError() {
        Finding finding = findings(on(bank(0.3, 100).set("G2#cell", "chemistry", "agm"))).get(0);
        assertEquals("G2", finding.element());
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals("G1", finding.causes().get(0).element());
    }

    private static PlanFixture lithium() {
        return bank(0.3, 100).set("G1#cell", "chemistry", "liFePO4").set("G2#cell", "chemistry", "liFePO4");
    }

    @Test
    void atRestBatteriesDoNotChargeEachOther() {
        PlanFixture alike = lithium().state("rest", c -> c.battery("G1", 0.9, 25, 0).battery("G2", 0.86, 25, 0));
        assertEquals(List.of(), findings(alike));
        PlanFixture apart = lithium().state("rest", c -> c.battery("G1", 1.0, 25, 0).battery("G2", 0.5, 25, 0));
        Finding finding = findings(apart).get(0);
        assertEquals("G2", finding.element());
        assertEquals(5, finding.wanted().value(), 1e-9);
        assertTrue(finding.is().value() > 40, finding.title());
    }

    @Test
    void aSwitchThatRestsOpenPartsBatteries() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.004, 100)
                .battery("G2", 12, 0.004, 0.004, 100).set("G2#cell", "chemistry", "agm").handSwitch("S1", false)
                .cable("W1", 35, 1, "G1.30", "S1.1").cable("W2", 35, 1, "S1.2", "G2.30").cable("W3", 35, 1, "G1.31", "G2.31");
        assertEquals(List.of(), findings(fixture));
        assertEquals(1, findings(fixture.set("S1#contact", "restClosed", true)).size());
    }

    private static PlanFixture series(double ah) {
        return new PlanFixture().domain("24V", 24, "G2.30").battery("G1", 12, 0.004, 0.004, 100)
                .battery("G2", 12, 0.004, 0.004, ah).cable("W1", 35, 0.3, "G1.30", "G2.31").load("E1", "current", 5, 24)
                .cable("W2", 2.5, 1, "G2.30", "E1.L+").cable("W3", 2.5, 1, "E1.L-", "G1.31");
    }

    @Test
    void aSeriesPairIsOfOneCapacityAndChemistry() {
        assertEquals(List.of(), findings(series(100)));
        assertEquals(1, findings(series(75)).size());
        assertEquals(1, findings(series(100).set("G2#cell", "chemistry", "gel")).size());
    }

    @Test
    void aSoundVehiclePasses() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
