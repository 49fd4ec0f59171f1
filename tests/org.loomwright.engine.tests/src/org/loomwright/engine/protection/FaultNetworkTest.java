// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

/** Fault currents of small networks against loops worked out by hand. */
class FaultNetworkTest {

    /** All joints and contacts without resistance to speak of, so that a loop is what its test says. */
    private static PlanFixture plain() {
        PlanFixture fixture = new PlanFixture();
        for (String limit : new String[] {"joint.end-min", "joint.end-max", "joint.earth-point-min", "joint.earth-point-max",
            "joint.case-min", "joint.case-max", "contact.closed"}) {
            fixture.limit(limit, 0.001);
        }
        return fixture;
    }

    private static double fault(FaultNetwork network, Plan plan, String a, String b) {
        return network.fault(network.node(PlanIndex.terminal(plan, a)), network.node(PlanIndex.terminal(plan, b))).currentA();
    }

    /** 12.8 V / (4 mohm + 0.0175 x 5 / 2.5 ohm + two new joints of 0.02 mohm). */
    @Test
    void largestFaultIsFullNewAndCold() {
        Plan plan = new PlanFixture().battery("G1", 12, 0.004, 0.012, 100).box("F1", 1)
                .cable("W1", 2.5, 5, "G1.30", "F1.30").build();
        double wire = 0.0175 * 5 / 2.5 + 2 * 0.02e-3;
        assertEquals(12.8 / (0.004 + wire), fault(FaultNetwork.together(plan, Extreme.LARGEST), plan, "F1.30", "G1.31"), 1e-6);
        assertEquals(12.8 / 0.004, fault(FaultNetwork.together(plan, Extreme.LARGEST), plan, "G1.30", "G1.31"), 1e-6);
    }

    /** 12.3 V / (12 mohm + 0.018 x 5 / 2.5 ohm at 90 degC + two aged joints of 0.2 mohm). */
    @Test
    void smallestFaultIsHalfChargedAgedAndHot() {
        Plan plan = new PlanFixture().battery("G1", 12, 0.004, 0.012, 100).box("F1", 1)
                .cable("W1", 2.5, 5, "G1.30", "F1.30").build();
        double wire = 0.018 * 5 / 2.5 * (1 + 0.00393 * 70) + 2 * 0.2e-3;
        assertEquals(12.3 / (0.012 + wire), fault(FaultNetwork.apart(plan, Extreme.SMALLEST), plan, "F1.30", "G1.31"), 1e-6);
    }

    /** SC01, a published example: strings in parallel add, series does not; six 6 V batteries of 2400 A make 7200 A at 12 V. */
    @Test
    void stringsInParallelAddTheirShortCircuitCurrents() {
        PlanFixture fixture = plain().negativeBar("X1", 3).device("X2", "busbar", "P1:plus:P", "P2:plus:P", "P3:plus:P");
        for (int k = 1; k <= 3; k++) {
            String lower = "G" + k;
            String upper = "G" + k + "0";
            fixture.battery(lower, 6, 6.4 / 2400, 0.01, 200).battery(upper, 6, 6.4 / 2400, 0.01, 200)
                    .cable("WS" + k, 120, 0.001, lower + ".30", upper + ".31")
                    .cable("WN" + k, 120, 0.001, lower + ".31", "X1.N" + k)
                    .cable("WP" + k, 120, 0.001, upper + ".30", "X2.P" + k);
        }
        Plan plan = fixture.build();
        assertEquals(7200, fault(FaultNetwork.together(plan, Extreme.LARGEST), plan, "X2.P1", "X1.31"), 20);
    }

    @Test
    void returnThroughTheStructureCountsBothContactsAndTheBond() {
        Plan plan = new PlanFixture().body("cab").body("frame").earthPoint("XE1", "cab").earthPoint("XE2", "cab")
                .earthPoint("XE3", "frame").earthPoint("XE4", "frame").bond("WE1", "XE2", "XE3", 3)
                .battery("G1", 12, 0.004, 0.012, 100).cable("WN", 25, 1, "G1.31", "XE4").load("E1", "resistance", 1, 12)
                .cable("W1", 2.5, 5, "G1.30", "E1.L+").cable("W2", 2.5, 1, "E1.L-", "XE1").build();
        FaultNetwork network = FaultNetwork.apart(plan, Extreme.SMALLEST);
        double hot = 1 + 0.00393 * 70;
        double loop = 0.012 + hot * 0.018 * (1 / 25.0 + 5 / 2.5 + 1 / 2.5) + 6 * 0.2e-3 + 4 * 0.2e-3 + 0.003;
        assertEquals(12.3 / loop, fault(network, plan, "E1.L+", "E1.L-"), 1e-6);
        double toCab = loop - hot * 0.018 / 2.5 - 2 * 0.2e-3 - 0.2e-3;
        assertEquals(12.3 / toCab, network.faultA(network.node(PlanIndex.terminal(plan, "E1.L+")),
                network.bodyNode(PlanIndex.body(plan, "cab"))), 1e-6);
    }

    @Test
    void withoutAWayBackNothingFlows() {
        Plan plan = new PlanFixture().body("cab").body("rack").earthPoint("XE1", "rack").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "resistance", 1, 12).cable("W1", 2.5, 5, "G1.30", "E1.L+")
                .cable("W2", 2.5, 1, "E1.L-", "XE1").build();
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        FaultFlow flow = network.fault(network.node(PlanIndex.terminal(plan, "E1.L+")),
                network.bodyNode(PlanIndex.body(plan, "rack")));
        assertEquals(0, flow.currentA());
        assertEquals(Double.POSITIVE_INFINITY, flow.loopOhm());
        assertTrue(flow.shares().isEmpty());
    }

    /** A regulated source alone gives its limit, never more; its set voltage drives what is below. */
    @Test
    void aSourceAloneGivesNoMoreThanItsLimit() {
        Plan plan = plain().device("G2", "charger", "L+:plus", "L-:minus").source("G2", "L+", "L-", 14, 30, "always").box("F1", 1)
                .cable("W1", 2.5, 5, "G2.L+", "F1.30").cable("W2", 0.5, 50, "G2.L+", "F1.1").build();
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        assertEquals(30, fault(network, plan, "F1.30", "G2.L-"), 1e-6);
        double ohm = 0.002 + 0.0175 * 50 / 0.5 + 2e-6;
        assertEquals(14 / ohm, fault(network, plan, "F1.1", "G2.L-"), 1e-6);
    }

    /** The battery gives E - U over its resistance, the source its limit; U = 0 at the fault. */
    @Test
    void aSourceBesideABatteryAddsItsLimit() {
        Plan plan = plain().battery("G1", 12, 0.004, 0.012, 100).device("G2", "charger", "L+:plus", "L-:minus")
                .source("G2", "L+", "L-", 14, 30, "always").cable("W1", 10, 0.001, "G1.30", "G2.L+")
                .cable("W2", 10, 0.001, "G1.31", "G2.L-").build();
        FaultNetwork largest = FaultNetwork.together(plan, Extreme.LARGEST);
        FaultFlow flow = largest.fault(largest.node(PlanIndex.terminal(plan, "G1.30")),
                largest.node(PlanIndex.terminal(plan, "G1.31")));
        assertEquals(12.8 / 0.004 + 30, flow.currentA(), 1e-6);
        assertEquals(30, flow.sourceA(PlanIndex.element(plan, "G2#source")), 1e-9);
        assertEquals(12.8 / 0.004, flow.sourceA(PlanIndex.element(plan, "G1#cell")), 1e-6);
        FaultNetwork smallest = FaultNetwork.apart(plan, Extreme.SMALLEST);
        assertEquals(12.3 / 0.012, fault(smallest, plan, "G1.30", "G1.31"), 1e-6, "the battery alone");
    }

    @Test
    void aDiodeFeedsOneWayOnly() {
        Plan plan = plain().battery("G1", 12, 0.004, 0.012, 100).battery("G2", 12, 0.005, 0.012, 100)
                .cable("WN", 10, 0.001, "G1.31", "G2.31").device("V1", "splitCharge", "A:plus", "B:plus")
                .element("V1#diode", n -> new Plan.Diode("V1#diode", n.device("V1"), n.terminal("V1.A"), n.terminal("V1.B"), 0.5,
                        0.001, Double.NaN))
                .cable("W1", 10, 0.001, "G1.30", "V1.A").cable("W2", 10, 0.001, "V1.B", "G2.30").build();
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        double joints = 2e-6 + 0.0175 * 0.001 / 10;
        assertEquals(12.8 / 0.004, fault(network, plan, "G1.30", "G1.31"), 1e-4, "G2 does not feed back");
        assertEquals(12.8 / 0.005 + (12.8 - 0.5) / (0.004 + 0.001 + 3 * joints), fault(network, plan, "G2.30", "G2.31"), 1e-6);
    }

    /** Kuphaldt, Lessons in Electric Circuits, NW02: 28 V behind 4 ohm and 7 V behind 1 ohm, shorted: 14 A, 0.8 ohm. */
    @Test
    void twoSourcesShortedAgreeWithNorton() {
        Plan plan = plain().battery("G1", 12, 4, 4, 100).battery("G2", 12, 1, 1, 100)
                .set("G1#cell", "ocvV", List.of(28.0, 28.0, 28.0)).set("G2#cell", "ocvV", List.of(7.0, 7.0, 7.0))
                .cable("WP", 120, 0.001, "G1.30", "G2.30").cable("WN", 120, 0.001, "G1.31", "G2.31").build();
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        assertEquals(14, fault(network, plan, "G2.30", "G2.31"), 1e-4);
        assertEquals(0.8, network.resistanceOhm(network.node(PlanIndex.terminal(plan, "G2.30")),
                network.node(PlanIndex.terminal(plan, "G2.31"))), 1e-5);
    }

    /**
     * A ladder of n sections of series resistance r between rungs R, open at its end. The voltages of the rungs satisfy
     * V(k+1) - (2 + r / R) V(k) + V(k-1) = 0 with V(n+1) = V(n), so V(k) goes as cosh((n + 1/2 - k) gamma) with
     * cosh(gamma) = 1 + r / 2R, and the resistance seen is that of the first rung beside the first section.
     */
    @Test
    void aLadderOfSeamsHasTheResistanceOfItsClosedForm() {
        double section = 0.010;
        double rung = 0.050;
        int n = 12;
        PlanFixture fixture = plain();
        for (int k = 0; k <= n; k++) {
            fixture.body("a" + k).body("b" + k).earthPoint("XA" + k, "a" + k).earthPoint("XB" + k, "b" + k)
                    .bodyLink("rung" + k, "a" + k, "b" + k, 1000 * rung);
            if (k > 0) {
                fixture.bodyLink("ra" + k, "a" + (k - 1), "a" + k, 500 * section)
                        .bodyLink("rb" + k, "b" + (k - 1), "b" + k, 500 * section);
            }
        }
        Plan plan = fixture.battery("G1", 12, 0.004, 0.012, 100).build();
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        double gamma = acosh(1 + section / (2 * rung));
        double next = Math.cosh((n - 0.5) * gamma) / Math.cosh((n + 0.5) * gamma);
        double expected = 1 / (1 / rung + (1 - next) / section);
        assertEquals(expected, network.resistanceOhm(network.bodyNode(PlanIndex.body(plan, "a0")),
                network.bodyNode(PlanIndex.body(plan, "b0"))), 1e-12);
    }

    private static double acosh(double x) {
        return Math.log(x + Math.sqrt(x * x - 1));
    }

    @Test
    void currentsShareInAMeshAsTheirResistances() {
        Plan plan = plain().body("cab").body("frame").earthPoint("XE1", "cab").earthPoint("XE2", "frame").earthPoint("XE3", "cab")
                .earthPoint("XE4", "frame").bond("WE1", "XE1", "XE2", 1).bond("WE2", "XE3", "XE4", 3)
                .battery("G1", 12, 0.004, 0.012, 100).earthPoint("XE5", "frame").cable("WN", 25, 1, "G1.31", "XE5").box("F1", 1)
                .cable("W1", 2.5, 5, "G1.30", "F1.30").build();
        FaultNetwork network = FaultNetwork.together(plan, Extreme.LARGEST);
        FaultFlow flow = network.fault(network.node(PlanIndex.terminal(plan, "F1.30")),
                network.bodyNode(PlanIndex.body(plan, "cab")));
        double first = Math.abs(flow.bondA(PlanIndex.bond(plan, "WE1")));
        double second = Math.abs(flow.bondA(PlanIndex.bond(plan, "WE2")));
        assertEquals(flow.currentA(), first + second, 1e-6);
        assertEquals((0.003 + 2e-6) / (0.001 + 2e-6), first / second, 1e-7);
        assertEquals(flow.currentA(), Math.abs(flow.conductorA(PlanIndex.conductor(plan, "W1@1"))), 1e-6);
        double heat = flow.shares().stream().mapToDouble(LoopShare::watts).sum();
        double source = flow.currentA() * flow.currentA() * 0.004;
        assertEquals(flow.openV() * flow.currentA(), heat + source, 1e-6 * heat, "all that is fed becomes heat");
    }

    @Test
    void aChangeOverNeverShortsItsSides() {
        Plan plan = plain().battery("G1", 12, 0.004, 0.012, 100).device("K1", "relay", "30:plus", "87:plus", "87a:plus")
                .element("K1#make", n -> new Plan.Contact("K1#make", n.device("K1"), "make", n.terminal("K1.30"),
                        n.terminal("K1.87"), 0.001, 30, 60, 30, 28, false, "hand", -1))
                .element("K1#break", n -> new Plan.Contact("K1#break", n.device("K1"), "break", n.terminal("K1.30"),
                        n.terminal("K1.87a"), 0.001, 30, 60, 30, 28, true, "hand", -1))
                .load("M1", "resistance", 1, 12).cable("W1", 10, 0.001, "G1.30", "K1.87")
                .cable("W2", 10, 0.001, "G1.31", "K1.87a").cable("W3", 10, 0.001, "K1.30", "M1.L+")
                .cable("W4", 10, 0.001, "M1.L-", "G1.31").build();
        FaultNetwork first = FaultNetwork.together(plan, Extreme.LARGEST);
        FaultNetwork other = FaultNetwork.other(plan, Extreme.LARGEST);
        double working = fault(first, plan, "M1.L+", "G1.31");
        double resting = fault(other, plan, "M1.L+", "G1.31");
        assertTrue(working > 0 != resting > 0, working + " " + resting);
        assertEquals(12.8 / 0.004, fault(first, plan, "G1.30", "G1.31"), 1e-6);
        assertEquals(12.8 / 0.004, fault(other, plan, "G1.30", "G1.31"), 1e-6);
    }

    @Test
    void linksBetweenBatteriesAreOpenOnlyApart() {
        Plan plan = plain().battery("G1", 12, 0.004, 0.012, 100).battery("G2", 12, 0.004, 0.012, 100).relay("K1")
                .handSwitch("Q1", true).cable("WN", 10, 0.001, "G1.31", "G2.31").cable("W1", 10, 0.001, "G1.30", "Q1.1")
                .cable("W2", 10, 0.001, "Q1.2", "K1.30").cable("W3", 10, 0.001, "K1.87", "G2.30").build();
        assertEquals(12.8 / 0.004, fault(FaultNetwork.apart(plan, Extreme.LARGEST), plan, "G2.30", "G2.31"), 1e-6);
        double loop = 0.004 + 2 * 0.001 + 4 * (2e-6 + 0.0175 * 0.001 / 10);
        assertEquals(12.8 / 0.004 + 12.8 / loop, fault(FaultNetwork.together(plan, Extreme.LARGEST), plan, "G2.30", "G2.31"),
                1e-6);
        FaultNetwork apart = FaultNetwork.apart(plan, Extreme.LARGEST);
        assertTrue(apart.branch(FaultBranch.Kind.ELEMENT, PlanIndex.element(plan, "Q1#contact")) >= 0, "isolator closed");
        assertEquals(-1, apart.branch(FaultBranch.Kind.ELEMENT, PlanIndex.element(plan, "K1#contact")), "link open");
        assertNull(FaultNetwork.other(plan, Extreme.LARGEST));
    }
}
