// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

class DropBreakdownTest {

    /** A load over a fuse, returning through two bodies and a strap. */
    static PlanFixture structureReturn() {
        return new PlanFixture().domain("12V", 12, "G1.30").body("chassis").body("body")
                .earthPoint("XE1", "body").earthPoint("XE2", "chassis").earthPoint("XE3", "body").earthPoint("XE4", "chassis")
                .bond("WE1", "XE3", "XE4", 2).battery("G1", 12, 0.004, 0.012, 100).box("F1", 2).fuse("F1", "1", 15)
                .load("E1", "current", 10, 12).cable("W1", 6, 1, "G1.30", "F1.30").cable("W2", 2.5, 5, "F1.1", "E1.L+")
                .cable("W3", 2.5, 0.5, "E1.L-", "XE1").cable("W4", 16, 0.5, "G1.31", "XE2");
    }

    static DropBreakdown breakdown(CheckContext context, SolvedCase.Solved solved, String demand) {
        return DropBreakdown.of(context.plan(), context.names(), solved, CurrentPaths.of(context.plan(), solved),
                PlanIndex.element(context.plan(), demand));
    }

    static void assertSums(DropBreakdown parts) {
        double sum = parts.shares().stream().mapToDouble(DropBreakdown.Share::volts).sum();
        assertEquals(parts.dropV(), sum, 1e-12 * Math.max(1, parts.sourceV()));
    }

    @Test
    void namesEveryElementFromSourceToLoadAndBack() {
        CheckContext context = CheckFixture.context(structureReturn());
        DropBreakdown parts = breakdown(context, context.cases().get(0).design(), "E1#load");
        assertEquals(List.of(Part.CABLE, Part.END_JOINTS, Part.PROTECTOR, Part.CABLE, Part.END_JOINTS, Part.CABLE,
                Part.END_JOINTS, Part.EARTH_CONTACT, Part.EARTH_CONTACT, Part.BOND, Part.EARTH_CONTACT, Part.EARTH_CONTACT,
                Part.CABLE, Part.END_JOINTS), parts.shares().stream().map(DropBreakdown.Share::part).toList());
        assertEquals("G1", parts.source());
        assertSums(parts);
    }

    @Test
    void strapTakesTheCurrentTimesItsResistance() {
        CheckContext context = CheckFixture.context(structureReturn());
        DropBreakdown parts = breakdown(context, context.cases().get(0).design(), "E1#load");
        assertEquals(10 * 0.002, parts.ofElement("WE1"), 1e-9);
        assertEquals(10 * 0.0015, parts.ofElement("F1.1"), 1e-9);
    }

    @Test
    void sumsToTheDropInRandomLoopsOfCables() {
        Random random = new Random(7);
        for (int round = 0; round < 40; round++) {
            PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100);
            int boxes = 4;
            for (int b = 1; b <= boxes; b++) {
                fixture.box("X" + b, 1).load("E" + b, b % 2 == 0 ? "power" : "current", 1 + random.nextInt(20), 12)
                        .cable("WL" + b, 2.5, 0.1 + random.nextDouble(), "X" + b + ".30", "E" + b + ".L+")
                        .cable("WR" + b, 2.5, 0.1 + random.nextDouble(), "E" + b + ".L-", "G1.31")
                        .cable("WF" + b, 10, 0.2 + random.nextDouble(), b == 1 ? "G1.30" : "X" + (b - 1) + ".30", "X" + b
                                + ".30");
            }
            for (int extra = 0; extra < 3; extra++) {
                int a = 1 + random.nextInt(boxes);
                int b = 1 + random.nextInt(boxes);
                if (a != b) {
                    fixture.cable("WX" + extra, 4, 0.3 + random.nextDouble(), "X" + a + ".30", "X" + b + ".30");
                }
            }
            CheckContext context = CheckFixture.context(fixture);
            for (int b = 1; b <= boxes; b++) {
                assertSums(breakdown(context, context.cases().get(0).design(), "E" + b + "#load"));
                assertSums(breakdown(context, context.cases().get(0).running(), "E" + b + "#load"));
            }
        }
    }

    @Test
    void nothingForALoadThatIsOff() {
        CheckContext context = CheckFixture.context(structureReturn().state("rest", c -> { }));
        assertNull(breakdown(context, context.cases().get(0).design(), "E1#load"));
    }

    @Test
    void followsTheCurrentToTheSourceThatDelivers() {
        CheckContext context = CheckFixture.context(structureReturn().alternator("G2", 14.4, 90)
                .cable("W5", 16, 1, "G2.B+", "F1.30").cable("W6", 16, 1, "G2.B-", "XE2")
                .state("driving", c -> c.engine(2000).on("E1")));
        DropBreakdown parts = breakdown(context, context.cases().get(0).running(), "E1#load");
        assertNotNull(parts);
        assertEquals("G2", parts.source());
        assertTrue(parts.sourceV() > 13);
        assertSums(parts);
    }
}
