// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Faults to the structure that a lost strap keeps from clearing. */
class FaultClearingTest {

    /** A fused cable that lies along a tray; the tray has a strap and, besides, a way of so many ohm to the battery. */
    private static PlanFixture tray(double detourOhm) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .zone("inside", 0, 40).place("front", 0, 0, 0, "inside").place("rear", 3000, 0, 0, "inside")
                .body("chassis").body("tray").run("R1", "front", "rear", 3000, "inside", "tray")
                .earthPoint("XE1", "chassis").earthPoint("XE2", "chassis").earthPoint("XE3", "tray").earthPoint("XE4", "tray")
                .cable("W1", 35, 1, "G1.31", "XE1").bond("WE1", "XE2", "XE3", 0.2)
                .device("R9", "resistor", "1:minus", "2:minus")
                .element("R9#joint", n -> new Plan.Joint("R9#joint", n.device("R9"), n.terminal("R9.1"), n.terminal("R9.2"),
                        detourOhm, Double.NaN))
                .cable("W7", 1, 0.5, "XE4", "R9.1").cable("W8", 1, 0.5, "R9.2", "G1.31")
                .box("F1", 1).fuse("F1", "1", 15).cable("W2", 25, 0.2, "G1.30", "F1.30")
                .load("E1", "current", 5, 12).cable("W3", 2.5, 3.5, "F1.1", "E1.L+").lay("W3", "R1").at("E1", "rear").at("F1",
                        "front")
                .earthPoint("XE5", "tray").at("XE5", "rear").cable("W4", 2.5, 0.3, "E1.L-", "XE5");
    }

    @Test
    void throughAHighResistanceTheFuseNoLongerOpensInTime() {
        // 12.3 V over more than 0.5 ohm are less than 1.5 times the 15 A of the fuse: its slowest time there exceeds 5 s
        EarthTable table = EarthFixture.study(tray(0.5));
        LossRow row = EarthFixture.loss(table, "WE1");
        LossRow.Uncleared fault = row.uncleared().stream()
                .filter(each -> table.plan().conductors().get(each.conductor()).id().equals("W3@1")).findFirst().orElseThrow();
        assertEquals("tray", table.plan().bodies().get(fault.body()).id());
        assertEquals("F1#1", table.plan().elements().get(fault.protector()).id());
        assertTrue(fault.beforeA() > 150 && fault.beforeS() < 5, fault.toString());
        assertTrue(fault.afterA() > 15 && fault.afterA() < 25 && fault.afterS() > 5, fault.toString());
        assertEquals(LossRank.DOES_NOT_CLEAR, row.rank());
        Finding finding = table.result().findings().stream().filter(each -> each.rule().equals("bond-loss")).findFirst()
                .orElseThrow();
        assertEquals(Severity.WARNING, finding.severity());
        assertTrue(finding.causes().stream().anyMatch(cause -> cause.element().equals("F1.1")), finding.causes().toString());
        assertEquals(5, finding.wanted().value());
    }

    @Test
    void throughAnEquallyGoodWayItStillOpens() {
        EarthTable table = EarthFixture.study(tray(0.001).set("W7", "sectionMm2", 1.0));
        assertEquals(List.of(), EarthFixture.loss(table, "WE1").uncleared());
    }

    @Test
    void faultToABodyThatIsCutOffPassesNothing() {
        PlanFixture alone = tray(0.5).set("W8@1", "b", 0).set("W8@1", "a", 1);
        assertEquals(List.of(), EarthFixture.loss(EarthFixture.study(alone), "WE1").uncleared());
    }
}
