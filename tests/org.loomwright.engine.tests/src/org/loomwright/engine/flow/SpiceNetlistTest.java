// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What stands in a netlist. */
class SpiceNetlistTest {
    private static final FlowOptions OPTIONS = FlowOptions.standard();

    @Test
    void idsCannotBreakOutOfTheirComment() {
        var at = new Wiring().emf("G1", "X1.3\n.include /etc/passwd", "0", 12, 0.1).solve();
        String deck = SpiceNetlist.deck(at.point(), OPTIONS);
        assertFalse(deck.lines().anyMatch(line -> line.startsWith(".include")), deck);
        assertTrue(deck.contains("* n1 is X1.3?.include /etc/passwd"), deck);
    }

    @Test
    void deckHasTitleOperatingPointAndEnd() {
        String deck = SpiceNetlist.deck(new Wiring().emf("G1", "a", "0", 12, 0.1).solve().point(), OPTIONS);
        assertTrue(deck.startsWith("* Network of 2 nodes and 1 items\n"), deck);
        assertTrue(deck.contains("\n.op\n") && deck.contains("\n.print op v(n1)\n") && deck.endsWith(".end\n"), deck);
        assertFalse(deck.contains("\r"));
    }

    @Test
    void cablesStandAtTheirTemperature() {
        var heat = new Network.WireHeat(30, 20, 30, 105, 0.00393);
        var at = new Wiring().emf("G1", "a", "0", 12, 0.01).wire("W1", "a", "b", 0.02, 0.001, heat).current("E1", "b", "0", 20)
                .solve();
        String line = SpiceNetlist.circuit(at.point(), OPTIONS, "").lines().filter(l -> l.startsWith("R1 "))
                .findFirst().orElseThrow();
        assertEquals(0.02 * (1 + 0.00393 * 85) + 0.001, Double.parseDouble(line.split(" ")[3]), 1e-9);
    }

    @Test
    void openContactsRestingSourcesAndDeadPartsAreLeftOut() {
        var at = new Wiring().emf("G1", "a", "0", 12.6, 0.01).regulator("G2", "a", "0", 12, 0.01, 50)
                .contact("Q1", "a", "b", 0.01, new Network.Fixed(false)).wire("W1", "b", "c", 0.1)
                .rectifier("V1", "0", "a", 0.5, 0.01).solve();
        String circuit = SpiceNetlist.circuit(at.point(), OPTIONS, "");
        assertEquals("R0 n1 i0 0.01\nV0 i0 0 12.6\n.nodeset v(n1)=12.5\n", circuit);
    }

    @Test
    void restingConverterTakesItsStandbyAlone() {
        var at = new Wiring().emf("G1", "a", "0", 24, 0.01).emf("G2", "b", "0", 13, 0.01)
                .converter("T1", "a", "0", "b", "0", 12, 0.01, 20, 0.9, 3).solve();
        String circuit = SpiceNetlist.circuit(at.point(), OPTIONS, "");
        assertTrue(circuit.contains("B2 n1 0 I=(v(n2,0)*0/0.9+3.0)*v(n1,0)/max(v(n1,0)*v(n1,0),0.25)"), circuit);
        assertFalse(circuit.contains("R2o") || circuit.contains("I2o"), circuit);
    }

    @Test
    void partsWithoutReferenceAreTiedToGround() {
        var at = new Wiring().emf("G1", "a", "0", 12, 0.1).emf("G2", "p", "m", 24, 0.1).solve();
        assertTrue(SpiceNetlist.circuit(at.point(), OPTIONS, "x").contains("Vxr2 nx2 0 0.0\n"));
    }

    @Test
    void prefixIsPlainLettersAndDigits() {
        var point = new Wiring().emf("G1", "a", "0", 12, 0.1).solve().point();
        assertThrows(IllegalArgumentException.class, () -> SpiceNetlist.circuit(point, OPTIONS, "a b"));
    }
}
