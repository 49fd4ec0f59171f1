// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;

/** Plus, minus and voltages. */
class WrongNetRuleTest {

    private static PlanFixture plain(String loadPlus, String loadMinus) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2)
                .fuse("F1", "1", 10).load("E1", "current", 5, 12).cable("W1", 6, 1, "G1.30", "F1.30")
                .cable("W2", 2.5, 1, "F1.1", loadPlus).cable("W3", 2.5, 1, loadMinus, "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new WrongNetRule(), fixture);
    }

    @Test
    void plusOnPlusAndMinusOnMinusPass() {
        assertEquals(List.of(), findings(plain("E1.L+", "E1.L-")));
    }

    @Test
    void anExchangedLoadIsFoundAtBothTerminals() {
        List<Finding> findings = findings(plain("E1.L-", "E1.L+"));
        assertEquals(List.of("E1.L+", "E1.L-"), findings.stream().map(Finding::element).toList());
        assertEquals("W3", findings.get(0).causes().get(0).element());
    }

    @Test
    void aConductorBetweenPlusAndMinusIsNamed() {
        List<Finding> findings = findings(plain("E1.L+", "E1.L-").cable("W9", 2.5, 1, "F1.1", "E1.L-"));
        assertEquals("W9", findings.get(0).element());
        List<String> causes = findings.get(0).causes().stream().map(Cause::element).toList();
        assertTrue(causes.containsAll(List.of("W1", "W3", "G1")), causes.toString());
        assertTrue(findings.get(0).title().contains("plus with minus"), findings.get(0).title());
    }

    @Test
    void aBatteryOnTheBodyByItsPlusIsNamed() {
        PlanFixture fixture = plain("E1.L+", "E1.L-").body("chassis").earthPoint("XE1", "chassis")
                .cable("W9", 16, 1, "G1.30", "XE1");
        assertEquals("W9", findings(fixture).get(0).element());
    }

    private static PlanFixture lorry(String from) {
        return new PlanFixture().domain("24V", 24, "G1.30").domain("12V", 12, "T1.OUT+").battery("G1", 24, 0.008, 0.02, 100)
                .converter("T1", 13.6, 20).load("E1", "power", 20, 12).set("E1#load", "minV", 10.5).set("E1#load", "maxV", 15.5)
                .cable("W1", 6, 1, "G1.30", "T1.IN+").cable("W2", 6, 1, "T1.IN-", "G1.31").cable("W3", 2.5, 1, from, "E1.L+")
                .cable("W4", 2.5, 1, "E1.L-", "T1.OUT-");
    }

    @Test
    void aLoadInADomainOfItsVoltagePasses() {
        assertEquals(List.of(), findings(lorry("T1.OUT+")));
        assertEquals(List.of(), findings(lorry("G1.30").set("E1#load", "maxV", 32.0)));
    }

    @Test
    void aTwelveVoltLoadAtTwentyFourIsFound() {
        Finding finding = findings(lorry("G1.30")).get(0);
        assertEquals("E1", finding.element());
        assertEquals(24, finding.is().value(), 0);
        assertEquals(15.5, finding.wanted().value(), 0);
    }

    @Test
    void aTwentyFourVoltLoadAtTwelveIsFound() {
        PlanFixture fixture = lorry("T1.OUT+").set("E1#load", "minV", 21.0).set("E1#load", "maxV", 31.0);
        assertTrue(findings(fixture).get(0).title().contains("needs at least 21"), findings(fixture).get(0).title());
    }

    @Test
    void withoutARangeTheVoltageOfTheFiguresCounts() {
        PlanFixture fixture = lorry("G1.30").set("E1#load", "minV", Double.NaN).set("E1#load", "maxV", Double.NaN);
        assertEquals(1, findings(fixture).size());
        assertEquals(List.of(), findings(fixture.set("E1#load", "refV", 28.0)));
    }

    @Test
    void twoVoltagesOnOneNetAreFound() {
        List<Finding> findings = findings(lorry("T1.OUT+").cable("W9", 2.5, 1, "G1.30", "E1.L+"));
        assertTrue(findings.stream().anyMatch(finding -> finding.title().contains("two voltages")), findings.toString());
    }

    @Test
    void switchesAndPostsMayLieOnEitherSide() {
        PlanFixture fixture = plain("E1.L+", "X1.1").handSwitch("S1", true).device("X1", "busbar", "1:signal")
                .cable("W8", 2.5, 1, "X1.1", "S1.1").cable("W9", 2.5, 1, "S1.2", "E1.L-");
        assertEquals(List.of(), findings(fixture));
    }

    /** Two change-over relays turn a motor either way: its terminals lie now on plus, now on minus. */
    @Test
    void aMotorThatIsReversedPasses() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("M1", "current", 5, 12);
        for (String k : List.of("K1", "K2")) {
            fixture.device(k, "relay", "30:signal", "87:plus", "87a:minus", "85:control", "86:control").coil(k, "86", "85", 85,
                    8, 2)
                    .contact(k, "30", "87", false, "coil")
                    .element(k + "#rest", n -> new Plan.Contact(k + "#rest", n.device(k), "rest", n.terminal(k + ".30"),
                            n.terminal(k + ".87a"), 0.001, 30, 60, 30, 28, true, "coil", n.element(k + "#coil")))
                    .cable("W1" + k, 4, 1, "G1.30", k + ".87").cable("W2" + k, 4, 1, k + ".87a", "G1.31");
        }
        assertEquals(List.of(), findings(fixture.cable("W3", 4, 1, "K1.30", "M1.L+").cable("W4", 4, 1, "K2.30", "M1.L-")));
    }

    @Test
    void aSoundVehiclePasses() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
