// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.nets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

class NetFinderTest {
    /** A 12 V battery, minus on the chassis, and a fused lamp on it. */
    private final PlanFixture van = new PlanFixture().domain("12V", 12, "G1.30").body("chassis").earthPoint("XE1", "chassis")
            .battery("G1", 12, 0.004, 0.012, 100).cable("W1", 16, 0.5, "G1.31", "XE1").box("F1", 2).fuse("F1", "1", 15)
            .cable("W2", 16, 0.5, "G1.30", "F1.30");

    private static Nets.Net net(Plan plan, String terminal) {
        Nets nets = NetFinder.find(plan);
        return nets.nets().get(nets.netOf()[PlanIndex.terminal(plan, terminal)]);
    }

    private Nets.Kind kind(String terminal) {
        return net(van.build(), terminal).kind();
    }

    private int domain(String terminal) {
        return net(van.build(), terminal).domain();
    }

    private boolean joined(String a, String b) {
        Plan plan = van.build();
        Nets nets = NetFinder.find(plan);
        return nets.netOf()[PlanIndex.terminal(plan, a)] == nets.netOf()[PlanIndex.terminal(plan, b)];
    }

    @Test
    void plusLeadsThroughFuses() {
        assertEquals(Nets.Kind.PLUS, kind("F1.1"));
        assertEquals(0, domain("F1.1"));
        assertEquals(true, joined("G1.30", "F1.1"));
    }

    @Test
    void anEmptyWayIsDead() {
        assertEquals(Nets.Kind.DEAD, kind("F1.2"));
    }

    @Test
    void structureIsMinusWithItsBondsAndSeams() {
        van.body("engine").body("cab").earthPoint("XE2", "chassis").earthPoint("XE3", "engine").bond("WE1", "XE2", "XE3", 1)
                .bodyLink("BL1", "cab", "chassis", 0.1);
        assertEquals(Nets.Kind.MINUS, kind("XE3"));
        Nets nets = NetFinder.find(van.build());
        assertEquals(nets.bodyNet()[0], nets.bodyNet()[1]);
        assertEquals(nets.bodyNet()[0], nets.bodyNet()[2]);
        assertEquals(0, domain("XE3"));
    }

    @Test
    void aBodyThatNothingTouchesHasANetOfItsOwn() {
        van.body("trailer");
        Nets nets = NetFinder.find(van.build());
        assertNotEquals(nets.bodyNet()[0], nets.bodyNet()[1]);
        assertEquals(List.of(), nets.nets().get(nets.bodyNet()[1]).terminals());
    }

    @Test
    void aCaseTerminalTouchesItsBody() {
        van.starter("M1", 0.04, "chassis");
        assertEquals(true, joined("M1.case", "XE1"));
    }

    @Test
    void contactsJoinOpenOrClosed() {
        van.handSwitch("S1", false).cable("W3", 2.5, 1, "F1.1", "S1.1");
        assertEquals(true, joined("S1.2", "G1.30"));
    }

    @Test
    void aLoadJoinsNothing() {
        van.load("E1", "power", 60, 12).cable("W3", 2.5, 1, "F1.1", "E1.L+");
        assertEquals(Nets.Kind.PLUS, kind("E1.L+"));
        assertEquals(Nets.Kind.DEAD, kind("E1.L-"));
    }

    @Test
    void coilWiresThatNoSourceFeedsAreControl() {
        van.relay("K1").cable("W3", 2.5, 1, "K1.85", "XE1");
        assertEquals(Nets.Kind.CONTROL, kind("K1.86"));
        assertEquals(Nets.Kind.MINUS, kind("K1.85"));
        assertEquals(Nets.Kind.DEAD, kind("K1.30"));
    }

    @Test
    void theMiddleOfASeriesPairIsKnown() {
        van.domain("24V", 24, "G3.30").battery("G2", 12, 0.004, 0.012, 100).battery("G3", 12, 0.004, 0.012, 100)
                .cable("W5", 16, 0.3, "G2.31", "XE1").cable("W6", 16, 0.3, "G2.30", "G3.31");
        assertEquals(Nets.Kind.MIDDLE, kind("G2.30"));
        assertEquals(1, domain("G2.30"));
        assertEquals(Nets.Kind.PLUS, kind("G3.30"));
        assertEquals(1, domain("G3.30"));
        assertEquals(0, domain("G1.30"));
        assertEquals(-1, domain("XE1"));
    }

    @Test
    void aSecondBatteryTakesTheDomainOfItsVoltage() {
        van.domain("24V", 24, "G2.30").battery("G2", 24, 0.004, 0.012, 100).battery("G3", 24, 0.004, 0.012, 100);
        assertEquals(1, domain("G3.30"));
        assertEquals(1, domain("G3.31"));
    }

    @Test
    void aConvertersOutputTakesTheDomainNearestToItsVoltage() {
        van.domain("24V", 24, "G2.30").battery("G2", 24, 0.004, 0.012, 100).converter("T1", 27.6, 10)
                .cable("W5", 2.5, 1, "F1.1", "T1.IN+").cable("W6", 2.5, 1, "T1.IN-", "XE1");
        assertEquals(Nets.Kind.PLUS, kind("T1.OUT+"));
        assertEquals(1, domain("T1.OUT+"));
        assertEquals(true, joined("T1.OUT-", "XE1"));
        van.set("T1#converter", "isolated", true);
        assertEquals(false, joined("T1.OUT-", "XE1"));
        assertEquals(Nets.Kind.MINUS, kind("T1.OUT-"));
    }

    @Test
    void aVoltageNearNoDomainHasNone() {
        van.converter("T1", 5, 3);
        assertEquals(Nets.Kind.PLUS, kind("T1.OUT+"));
        assertEquals(-1, domain("T1.OUT+"));
    }

    @Test
    void plusOnStructureIsMixed() {
        van.cable("W5", 2.5, 1, "F1.1", "XE1");
        assertEquals(Nets.Kind.MIXED, kind("G1.30"));
    }

    @Test
    void twoDomainsJoinedAreMixed() {
        van.domain("24V", 24, "G2.30").battery("G2", 24, 0.004, 0.012, 100).cable("W5", 16, 1, "G2.30", "G1.30");
        assertEquals(Nets.Kind.MIXED, kind("G2.30"));
    }

    @Test
    void aSourceOfAnotherVoltageMakesANetMixed() {
        van.alternator("G2", 28, 80).cable("W5", 16, 1, "G2.B+", "G1.30");
        van.domain("24V", 24, null);
        assertEquals(Nets.Kind.MIXED, kind("G1.30"));
    }

    @Test
    void anAlternatorOfTheSameVoltageDoesNot() {
        van.alternator("G2", 14.4, 80).cable("W5", 16, 1, "G2.B+", "G1.30");
        assertEquals(Nets.Kind.PLUS, kind("G1.30"));
    }

    @Test
    void twoBatteriesOfOneVoltageThatALinkCanJoinArePlus() {
        van.domain("house", 12, "G2.30").battery("G2", 12, 0.004, 0.012, 100).relay("K1")
                .cable("W5", 16, 1, "G1.30", "K1.30").cable("W6", 16, 1, "K1.87", "G2.30").cable("W7", 16, 1, "G2.31", "XE1");
        assertEquals(Nets.Kind.PLUS, kind("G2.30"));
        assertEquals(0, domain("G2.30"));
    }

    @Test
    void aBatteryPutInTheWrongWayRoundIsMixed() {
        van.battery("G2", 12, 0.004, 0.012, 100).cable("W5", 16, 1, "G2.31", "G1.30").cable("W6", 16, 1, "G2.30", "XE1");
        assertEquals(Nets.Kind.MIXED, kind("XE1"));
        assertEquals(Nets.Kind.MIXED, kind("G1.30"));
    }

    @Test
    void aReversingContactDoesNotJoinPlusWithMinus() {
        van.device("K2", "relay", "30:plus", "87:plus", "87a:plus", "85:control", "86:control").coil("K2", "86", "85", 85, 8, 2)
                .element("K2#rest", n -> new Plan.Contact("K2#rest", n.device("K2"), "rest", n.terminal("K2.30"),
                        n.terminal("K2.87a"), 0.001, 30, 60, 30, 28, true, "coil", n.element("K2#coil")))
                .element("K2#work", n -> new Plan.Contact("K2#work", n.device("K2"), "work", n.terminal("K2.30"),
                        n.terminal("K2.87"), 0.001, 30, 60, 30, 28, false, "coil", n.element("K2#coil")))
                .cable("W5", 2.5, 1, "F1.1", "K2.87").cable("W6", 2.5, 1, "K2.87a", "XE1");
        assertEquals(Nets.Kind.PLUS, kind("K2.87"));
        assertEquals(Nets.Kind.PLUS, kind("K2.30"));
        assertEquals(Nets.Kind.MINUS, kind("K2.87a"));
    }

    @Test
    void aDiodeOverACoilDoesNotJoinPlusWithMinus() {
        van.relay("K1").cable("W5", 2.5, 1, "F1.1", "K1.86").cable("W6", 2.5, 1, "K1.85", "XE1").element("K1#diode",
                n -> new Plan.Diode("K1#diode", n.device("K1"), n.terminal("K1.85"), n.terminal("K1.86"), 0.7, 0.01, 1));
        assertEquals(Nets.Kind.PLUS, kind("K1.86"));
        assertEquals(Nets.Kind.MINUS, kind("K1.85"));
    }

    @Test
    void aChargingDiodeLeadsOn() {
        van.device("V1", "splitCharge", "IN:plus", "A:plus").element("V1#a",
                n -> new Plan.Diode("V1#a", n.device("V1"), n.terminal("V1.IN"), n.terminal("V1.A"), 0.7, 0.001, 100))
                .cable("W5", 2.5, 1, "F1.1", "V1.IN");
        assertEquals(Nets.Kind.PLUS, kind("V1.A"));
    }

    @Test
    void aBarIsOneNet() {
        van.negativeBar("X31", 3).cable("W5", 16, 1, "X31.31", "XE1");
        assertEquals(Nets.Kind.MINUS, kind("X31.N3"));
    }

    @Test
    void netsAreNumberedByTheirFirstTerminal() {
        Plan plan = van.build();
        Nets nets = NetFinder.find(plan);
        int largest = -1;
        for (int net : nets.netOf()) {
            assertEquals(true, net <= largest + 1);
            largest = Math.max(largest, net);
        }
    }
}
