// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

class CircuitsTest {
    private static PlanFixture vehicle() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 1)
                .fuse("F1", "1", 15).load("E1", "power", 60, 12).cable("W1", 6, 0.5, "G1.30", "F1.30")
                .cable("W4", 6, 1, "E1.L-", "G1.31");
    }

    @Test
    void aConductorBehindABarHasTheDeviceBeforeTheBarUpstream() {
        Plan plan = vehicle().device("X1", "busbar", "P1:plus:P", "P2:plus:P").cable("W2", 6, 1, "F1.1", "X1.P1")
                .cable("W3", 2.5, 1, "X1.P2", "E1.L+").build();
        Circuits circuits = Circuits.of(plan);
        int fuse = PlanIndex.element(plan, "F1#1");
        assertEquals(List.of(fuse), circuits.upstreamOf(conductor(plan, "W3@1")));
        assertEquals(List.of(PlanIndex.element(plan, "E1#load")), circuits.consumersBelow(fuse));
    }

    @Test
    void barsOfTheSameNameInTwoDevicesAreTwoPiecesOfMetal() {
        Plan plan = vehicle().device("X1", "busbar", "P1:plus:P").device("X2", "busbar", "P2:plus:P")
                .cable("W2", 6, 1, "F1.1", "X1.P1").cable("W3", 2.5, 1, "X2.P2", "E1.L+").build();
        assertEquals(List.of(), Circuits.of(plan).upstreamOf(conductor(plan, "W3@1")));
    }

    private static int conductor(Plan plan, String id) {
        return plan.conductors().stream().map(Plan.Conductor::id).toList().indexOf(id);
    }
}
