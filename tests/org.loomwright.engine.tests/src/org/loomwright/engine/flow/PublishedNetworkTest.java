// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Network problems whose figures were published; the source stands beside each. */
class PublishedNetworkTest {
    private static final double EXACT = 1e-9;

    @Test
    void twoSourcesAndAResistanceBetweenThem() {
        // Kuphaldt, Lessons in Electric Circuits, volume I DC, network analysis: 8 V; 5 A, 4 A, 1 A into the second source
        var at = new Wiring().emf("E1", "a", "0", 28, 4).resistor("R2", "a", "0", 2).emf("E2", "a", "0", 7, 1).solve();
        assertEquals(8, at.volt("a"), EXACT);
        assertEquals(-5, at.amps("E1"), EXACT);
        assertEquals(4, at.amps("R2"), EXACT);
        assertEquals(1, at.amps("E2"), EXACT);
    }

    @Test
    void nortonEquivalentOfTwoSources() {
        // Kuphaldt, Lessons in Electric Circuits, volume I DC, Norton's theorem: 14 A and 0.8 ohm
        var shorted = new Wiring().emf("E1", "a", "0", 28, 4).emf("E2", "a", "0", 7, 1).resistor("R", "a", "0", 1e-6).solve();
        assertEquals(14, shorted.amps("R"), 1e-4);
        var open = new Wiring().emf("E1", "a", "0", 28, 4).emf("E2", "a", "0", 7, 1).solve();
        assertEquals(0.8, open.volt("a") / 14, EXACT);
    }

    @Test
    void threeBranchesByMillman() {
        // a student's question, Millman's theorem; the question was published, the answer (4 V, 2 A) computed from it
        var at = new Wiring().emf("E1", "a", "0", 5, 1).emf("E2", "a", "0", 10, 6).resistor("R3", "a", "0", 2).solve();
        assertEquals(4, at.volt("a"), EXACT);
        assertEquals(2, at.amps("R3"), EXACT);
    }

    @Test
    void ladder() {
        // Boylestad, Introductory Circuit Analysis, ladder networks: 30 A from the source, 10 A and 20 V at the last resistor;
        // 1 microohm of source within
        var at = new Wiring().emf("E", "s", "0", 240, 1e-6).resistor("R1", "s", "a", 5).resistor("R2", "a", "0", 6)
                .resistor("R3", "a", "b", 4).resistor("R4", "b", "0", 6).resistor("R5", "b", "c", 1)
                .resistor("R6", "c", "0", 2).solve();
        assertEquals(30, at.amps("R1"), 1e-4);
        assertEquals(10, at.amps("R6"), 1e-4);
        assertEquals(20, at.volt("c"), 1e-4);
    }

    @Test
    void shortLadder() {
        // exercise of a circuits course of the Massachusetts Institute of Technology; the question was published, the answers
        // (6 ohm, 1/3 A, 2/3 V, 1/3 V) computed from it
        var at = new Wiring().emf("E", "s", "0", 2, 1e-6).resistor("R1", "s", "a", 4).resistor("R2", "a", "0", 4)
                .resistor("R3", "a", "b", 2).resistor("R4", "b", "0", 2).solve();
        assertEquals(1.0 / 3, at.amps("R1"), 1e-6);
        assertEquals(2.0 / 3, at.volt("a"), 1e-6);
        assertEquals(1.0 / 3, at.volt("b"), 1e-6);
    }

    @Test
    void starterMotor() {
        // OpenStax, College Physics, chapter 21: 12 V, 0.0100 ohm and 0.0500 ohm give 200 A, 10.0 V, 2.00 kW
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).resistive("M1", "a", "0", 0.05).solve();
        assertEquals(200, at.amps("M1"), EXACT);
        assertEquals(10, at.volt("a"), EXACT);
        assertEquals(2000, at.volt("a") * at.amps("M1"), 1e-6);
    }

    @Test
    void jumpStart() {
        // a student's question; the answers (20 A, 460 A the wrong way round, 20 W in all resistances) computed from it
        var at = new Wiring().emf("G1", "a", "0", 11, 0.01).emf("G2", "b", "0", 12, 0.01).resistor("W1", "a", "b", 0.03).solve();
        assertEquals(20, at.amps("G1"), EXACT);
        assertEquals(20, at.amps("G1") * at.amps("G1") * 0.05, EXACT);
        var reversed = new Wiring().emf("G1", "0", "a", 11, 0.01).emf("G2", "b", "0", 12, 0.01).resistor("W1", "b", "a", 0.03)
                .solve();
        assertEquals(460, reversed.amps("W1"), 1e-7);
    }

    @Test
    void batteryUnderLoadTellsItsResistance() {
        // answer of a physics site on a car battery: 12 V fall to 4 V at 40 A, hence 0.2 ohm
        assertEquals(4, new Wiring().emf("G1", "a", "0", 12, 0.2).current("E1", "a", "0", 40).solve().volt("a"), EXACT);
        // another: 12 V behind 1.0 ohm (1.009 by its own figures) and 10 ohm give 10.9 V and 1.09 A
        var at = new Wiring().emf("G1", "a", "0", 12, 1).resistive("E1", "a", "0", 10).solve();
        assertEquals(10.9, at.volt("a"), 0.01);
        assertEquals(1.09, at.amps("E1"), 0.01);
    }

    @Test
    void theveninSourceAndLoad() {
        // a page of worked examples on Millman's theorem: 6.27 V behind 2.72 ohm into 3 ohm give 1.09 A (1.096, cut off in print)
        var at = new Wiring().emf("E", "a", "0", 6.27, 2.72).resistor("R", "a", "0", 3).solve();
        assertEquals(1.09, at.amps("R"), 0.01);
    }
}
