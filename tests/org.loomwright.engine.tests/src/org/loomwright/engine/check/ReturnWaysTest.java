// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

class ReturnWaysTest {

    /** Three loads each on a bar strapped to the body, on a bar that goes home by cable, and on nothing. */
    private static Plan plan() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("shell")
                .earthPoint("XE1", "shell").earthPoint("XE2", "shell").earthPoint("XE3", "shell").negativeBar("X1", 5)
                .negativeBar("X2", 5).negativeBar("X3", 5).cable("W1", 16, 1, "X1.31", "XE1").cable("W2", 16, 1, "X1.N5", "XE3")
                .cable("W3", 16, 1, "X2.31", "G1.31").cable("W4", 16, 1, "G1.31", "XE2");
        for (int i = 1; i <= 9; i++) {
            String bar = "X" + (1 + (i - 1) / 3);
            fixture.load("E" + i, "current", 1, 12).cable("WN" + i, 2.5, 1, "E" + i + ".L-", bar + ".N" + (1 + (i - 1) % 3));
        }
        return fixture.build();
    }

    @Test
    void everyLoadOfANetReturnsByTheSameEarthPoints() {
        Plan plan = plan();
        ReturnWays ways = new ReturnWays(plan);
        List<Integer> body = List.of(PlanIndex.terminal(plan, "XE1"), PlanIndex.terminal(plan, "XE3"));
        for (int i = 1; i <= 9; i++) {
            int terminal = PlanIndex.terminal(plan, "E" + i + ".L-");
            assertEquals(i <= 3 ? body : List.of(), ways.earthPoints(terminal), "E" + i);
            assertEquals(new ReturnWays(plan).earthPoints(terminal), ways.earthPoints(terminal), "E" + i);
        }
    }

    @Test
    void aNetIsWalkedOnceHoweverManyLoadsReturnByIt() {
        Plan plan = plan();
        ReturnWays ways = new ReturnWays(plan);
        assertSame(ways.earthPoints(PlanIndex.terminal(plan, "E1.L-")), ways.earthPoints(PlanIndex.terminal(plan, "E3.L-")));
    }
}
