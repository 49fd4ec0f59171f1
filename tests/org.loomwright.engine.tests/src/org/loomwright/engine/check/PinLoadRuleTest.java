// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;

/** Pins rated for 14 A alone, the practice's factor being 0.8. */
class PinLoadRuleTest {

    private static PlanFixture connected(double loadA, boolean returnToo) {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "current", loadA, 12).device("X1", "connector", "A1:signal", "A2:signal", "B1:signal", "B2:signal")
                .element("X1#J1", n -> new Plan.Joint("X1#J1", n.device("X1"), n.terminal("X1.A1"), n.terminal("X1.B1"), 0.002,
                14))
                .element("X1#J2", n -> new Plan.Joint("X1#J2", n.device("X1"), n.terminal("X1.A2"), n.terminal("X1.B2"), 0.002,
                14))
                .cable("W1", 2.5, 1, "G1.30", "X1.A1").cable("W2", 2.5, 1, "X1.B1", "E1.L+");
        for (String pin : List.of("X1.A1", "X1.A2", "X1.B1", "X1.B2")) {
            fixture.set(pin, "form", "pin").set(pin, "currentMaxA", 14.0);
        }
        return (returnToo ? fixture.cable("W3", 2.5, 1, "E1.L-", "X1.B2").cable("W4", 2.5, 1, "X1.A2", "G1.31")
                : fixture.cable("W3", 2.5, 1, "E1.L-", "G1.31")).state("on", c -> c.on("E1"));
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new PinLoadRule(), fixture);
    }

    @Test
    void aPinAloneBearsItsRating() {
        assertEquals(List.of(), findings(connected(14, false)));
        Finding finding = findings(connected(14.1, false)).get(0);
        assertEquals("X1.A1", finding.element());
        assertEquals(14, finding.wanted().value(), 1e-9);
    }

    @Test
    void aLoadedNeighbourTakesAShare() {
        assertEquals(List.of(), findings(connected(11.2, true)));
        List<Finding> findings = findings(connected(11.3, true));
        assertEquals(4, findings.size());
        assertEquals(14 * 0.8, findings.get(0).wanted().value(), 1e-9);
        assertTrue(findings.get(0).why().get(0).contains("14 A"), findings.get(0).why().get(0));
    }

    @Test
    void otherTerminalsBearTheirRatingWhole() {
        PlanFixture fixture = SoundVan.fixture().set("F2.30", "currentMaxA", 12.0);
        assertEquals(List.of(), findings(fixture));
        assertEquals("F2.30", findings(SoundVan.fixture().set("F2.30", "currentMaxA", 4.0)).get(0).element());
    }

    @Test
    void whatPassesFromLugToLugDoesNotCount() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.002, 0.004, 200).box("F1", 1)
                .fuse("F1", "1", 10).load("E1", "current", 5, 12).load("E2", "current", 80, 12)
                .cable("W1", 25, 1, "G1.30", "F1.30").cable("W2", 2.5, 1, "F1.1", "E1.L+").cable("W3", 2.5, 1, "E1.L-", "G1.31")
                .cable("W4", 25, 1, "F1.30", "E2.L+").cable("W5", 25, 1, "E2.L-", "G1.31").set("F1.30", "currentMaxA", 50.0)
                .state("on", c -> c.on("E1", "E2"));
        assertEquals(List.of(), findings(fixture));
    }

    @Test
    void onAPostAllOfItCounts() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.002, 0.004, 200)
                .device("X1", "busbar", "1:signal").load("E1", "current", 80, 12).cable("W1", 25, 1, "G1.30", "X1.1")
                .cable("W2", 25, 1, "X1.1", "E1.L+").cable("W3", 25, 1, "E1.L-", "G1.31").state("on", c -> c.on("E1"));
        assertEquals(List.of(), findings(fixture.set("X1.1", "currentMaxA", 80.0)));
        assertEquals(1, findings(fixture.set("X1.1", "currentMaxA", 79.0)).size());
    }
}
