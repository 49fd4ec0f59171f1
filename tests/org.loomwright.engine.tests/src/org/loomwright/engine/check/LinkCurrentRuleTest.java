// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.TestTables;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Links between batteries. */
class LinkCurrentRuleTest {

    /** Two batteries joined by a relay whose coil follows the ignition, or the engine. */
    private static PlanFixture linked(String driver, double fuseA) {
        return new PlanFixture().domain("start", 12, "G1.30").domain("house", 12, "G2.30").battery("G1", 12, 0.004, 0.008, 80)
                .battery("G2", 12, 0.004, 0.008, 100).alternator("G3", 14.3, 70).cable("W1", 25, 1, "G3.B+", "G1.30")
                .cable("W2", 25, 1, "G3.B-", "G1.31").cable("W3", 35, 1, "G1.31", "G2.31").relay("K1")
                .drivenSwitch("S1", driver).cable("W4", 1, 1, "G1.30", "S1.30").cable("W5", 1, 1, "S1.15", "K1.86")
                .cable("W6", 1, 1, "K1.85", "G1.31").box("F1", 1).fuse("F1", "1", fuseA).cable("W7", 16, 0.2, "G1.30", "F1.30")
                .cable("W8", 16, 2, "F1.1", "K1.30").cable("W9", 16, 2, "K1.87", "G2.30")
                .device("M1", "starter", "30:plus", "31:minus").demand("M1", "load", "30", "31", "resistance", 0.03, 12)
                .cable("W10", 50, 1, "G1.30", "M1.30").cable("W11", 50, 1, "M1.31", "G1.31")
                .set("G1#cell", "chemistry", "liFePO4").set("G2#cell", "chemistry", "liFePO4")
                .set("K1#contact", "continuousA", 100.0).set("K1#contact", "makeA", 300.0)
                .state("drive", c -> c.engine(2000).battery("G2", 0.6, 20, 0.2))
                .state("start", c -> c.kind("cranking").ignition("start").on("M1").battery("G1", 0.8, 0, 0.3));
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new LinkCurrentRule(), fixture);
    }

    @Test
    void aLinkThatBearsItsCurrentPasses() {
        assertEquals(List.of(), findings(linked("engine", 100)));
    }

    @Test
    void theChargingCurrentIsHeldAgainstTheContact() {
        Finding finding = findings(linked("engine", 100).set("K1#contact", "continuousA", 20.0)).get(0);
        assertEquals("K1", finding.element());
        assertEquals("drive", finding.caseName());
        assertEquals(Severity.WARNING, finding.severity());
    }

    @Test
    void joinedWhileCrankingItBearsWhatTheOtherBatteryGives() {
        PlanFixture byIgnition = linked("ignition", 100).set("K1#contact", "makeA", 90.0);
        List<Finding> findings = findings(byIgnition);
        assertTrue(findings.stream().anyMatch(finding -> finding.title().contains("while cranking")), findings.toString());
        List<Finding> byEngine = findings(linked("engine", 100).set("K1#contact", "makeA", 90.0));
        assertFalse(byEngine.stream().anyMatch(finding -> finding.title().contains("while cranking")), byEngine.toString());
    }

    @Test
    void aFuseInItsLineIsNamedWhenItMayOpenWhileCranking() {
        List<Finding> findings = findings(linked("ignition", 40));
        Finding cranking = findings.stream().filter(finding -> finding.title().contains("while cranking")).findFirst()
                .orElseThrow();
        assertEquals("K1", cranking.element());
        assertEquals("F1.1", cranking.causes().get(0).element());
        assertEquals(40, cranking.wanted().value(), 0);
    }

    @Test
    void closingBetweenAFullAndALowBatteryIsHeldAgainstTheMakingCapacity() {
        List<Finding> findings = findings(linked("engine", 200).set("K1#contact", "makeA", 20.0));
        Finding closing = findings.stream().filter(finding -> finding.title().contains("closes on")).findFirst().orElseThrow();
        assertEquals(20, closing.wanted().value(), 0);
        double amps = closing.is().value();
        assertEquals(List.of(), findings(linked("engine", 200).set("K1#contact", "makeA", amps + 0.01)));
    }

    /**
     * Without a source and loads Ohm's law gives the current: (12.8 - 12.3) V over two batteries of 4 milliohm, contact 1,
     * and cables, new and cold: 0.0175 x (2 + 2) / 16 + 0.0175 x 1 / 35, six ends of 0.02 milliohm.
     */
    @Test
    void theCurrentOnClosingIsTheDifferenceOverTheLoop() {
        PlanFixture fixture = new PlanFixture().domain("start", 12, "G1.30").domain("house", 12, "G2.30")
                .battery("G1", 12, 0.004, 0.008, 80).battery("G2", 12, 0.004, 0.008, 100).handSwitch("S1", false)
                .cable("W1", 16, 2, "G1.30", "S1.1").cable("W2", 16, 2, "S1.2", "G2.30").cable("W3", 35, 1, "G1.31", "G2.31")
                .set("S1#contact", "makeA", 1.0).state("rest", c -> { });
        double ohm = 0.008 + 0.001 + 0.0175 * 4 / 16 + 0.0175 / 35 + 6 * 0.00002;
        assertEquals(0.5 / ohm, findings(fixture).get(0).is().value(), 1e-6);
    }

    @Test
    void aDiodeIsALinkToo() {
        PlanFixture fixture = linked("engine", 100).device("V1", "splitCharge", "IN:plus", "A:plus")
                .element("V1#diode", n -> new Plan.Diode("V1#diode", n.device("V1"), n.terminal("V1.IN"), n.terminal("V1.A"), 0.4,
                        0.001, 20))
                .battery("G4", 12, 0.004, 0.008, 60).set("G4#cell", "chemistry", "liFePO4").cable("W20", 16, 1, "G3.B+",
                "V1.IN").cable("W21", 16, 1, "V1.A", "G4.30")
                .cable("W22", 16, 1, "G4.31", "G1.31")
                .state("empty", c -> c.engine(2000).battery("G4", 0, 20, 0).battery("G2", 1, 20, 0));
        assertTrue(findings(fixture).stream().anyMatch(finding -> finding.element().equals("V1")), findings(fixture).toString());
        assertEquals(List.of(), findings(fixture.set("V1#diode", "currentMaxA", 120.0)));
    }

    /**
     * At first a lead battery takes what its resistance lets through; lasting it takes what it accepts, and the fuse sees that.
     */
    @Test
    void aLeadBatteryLimitsTheCurrentThatLasts() {
        PlanFixture lithium = linked("engine", 20);
        PlanFixture lead = linked("engine", 20).set("G1#cell", "chemistry", "agm").set("G2#cell", "chemistry", "agm")
                .set("G2#cell", "chargeMaxA", 15.0).set("K1#contact", "makeA", 25.0);
        assertTrue(findings(lithium).stream().anyMatch(finding -> finding.title().contains("in its line")));
        List<Finding> findings = findings(lead);
        assertTrue(findings.stream().noneMatch(finding -> finding.title().contains("in its line")), findings.toString());
        assertTrue(findings.stream().anyMatch(finding -> finding.title().contains("closes on")), findings.toString());
    }

    /** The test curve: fastest 1.5 x 10 s, 2 x 1 s, 4 x 0.05 s, 10 x 0.01 s. */
    @Test
    void aFuseOpensByItsFastestCurve() {
        Plan.Protector fuse = new Plan.Protector("F", 0, 0, 1, null, null, "fuse", null, 10, 32, 1000, 0.001, 0, 30,
                TestTables.fuseCurve(), false);
        assertFalse(FuseOpening.mayOpen(fuse, 14.9, 1e9));
        assertFalse(FuseOpening.mayOpen(fuse, 15, 9.99));
        assertTrue(FuseOpening.mayOpen(fuse, 15, 10.01));
        assertTrue(FuseOpening.mayOpen(fuse, 20, 1.01));
        assertFalse(FuseOpening.mayOpen(fuse, 20, 0.99));
        assertTrue(FuseOpening.mayOpen(fuse, 200, 0.00251));
        assertFalse(FuseOpening.mayOpen(fuse, 200, 0.00249));
    }

    @Test
    void aSoundVehiclePasses() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
