// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** Potentials of bodies and currents of straps and contacts, worked out by hand. */
class BodyLevelsTest {

    @Test
    void twoBodiesByHand() {
        CheckContext context = EarthFixture.context(EarthFixture.twoBodies());
        EarthTable table = EarthStudy.of(context, new BasicMonitor());
        CaseEarth at = table.cases().get(0);
        Plan plan = table.plan();
        assertEquals("G1.31", plan.terminals().get(table.minus()).id());
        // minus cable 35 mm2, 1 m, at its temperature; two ends and the earth point of 0.2 milliohm each
        double cableOhm = 0.018 / 35 * Copper.factor(context.cases().get(0).running().conductorC(0));
        double chassisV = 50 * (cableOhm + 3 * 0.0002);
        assertEquals(chassisV, at.bodyV().get(0), 1e-9);
        // two earth points and the strap, 0.2 milliohm each
        assertEquals(chassisV + 50 * 0.0006, at.bodyV().get(1), 1e-9);
        assertEquals(-50, at.bondA().get(0), 1e-9);
        assertEquals(4, at.contacts().size());
        CaseEarth.ContactFlow strapEnd = at.contacts().get(2);
        assertEquals("XE3", plan.terminals().get(strapEnd.terminal()).id());
        assertEquals(-50, strapEnd.currentA(), 1e-9);
        assertEquals(-0.01, strapEnd.dropV(), 1e-12);
        assertEquals(0.5, strapEnd.heatW(), 1e-9);
    }

    @Test
    void seamsCarryAndBodyOhmsCount() {
        PlanFixture fixture = EarthFixture.twoBodies().body("cab").bodyLink("seam", "engine", "cab", 0.4).earthPoint("XE9", "cab")
                .set("cab", "ohm", 0.0006).load("E2", "current", 10, 12).cable("W10", 10, 1, "G1.30", "E2.L+")
                .cable("W11", 10, 1, "E2.L-", "XE9");
        CaseEarth at = EarthFixture.study(fixture).cases().get(0);
        assertEquals(-10, at.seamA().get(0), 1e-9);
        // half of the cab's 0.6 milliohm lies between its middle and the seam
        assertEquals(10 * (0.0004 + 0.0003), at.bodyV().get(2) - at.bodyV().get(1), 1e-9);
    }

    @Test
    void bodyThatNothingTiesToASourceHasNoPotential() {
        EarthTable table = EarthFixture.study(EarthFixture.twoBodies().body("rack").earthPoint("XE9", "rack"));
        assertTrue(Double.isNaN(table.cases().get(0).bodyV().get(2)));
    }

    @Test
    void potentialsAreGivenAgainstTheBatteryWhoseMinusLeadsIntoTheStructure() {
        // the upper battery of a 24 V pair comes first, its minus is the middle tap
        PlanFixture pair = new PlanFixture().domain("24V", 24, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .battery("G2", 12, 0.004, 0.012, 100).cable("W0", 35, 0.2, "G1.31", "G2.30").body("frame")
                .earthPoint("XE1", "frame").earthPoint("XE2", "frame").cable("W1", 35, 1, "G2.31", "XE1")
                .load("E1", "current", 10, 24).cable("W2", 4, 1, "G1.30", "E1.L+").cable("W3", 4, 1, "E1.L-", "XE2");
        EarthTable table = EarthFixture.study(pair);
        assertEquals("G2.31", table.plan().terminals().get(table.minus()).id());
        double frameV = table.cases().get(0).bodyV().get(0);
        assertTrue(frameV > 0 && frameV < 0.1, "frame at " + frameV + " V");
    }

    @Test
    void potentialIsDerivedAsASumOfStepsFromTheMinus() {
        EarthTable table = EarthFixture.study(EarthFixture.twoBodies());
        List<ElementFigures> figures = table.result().explainer().explain("engine");
        Derivation potential = figures.get(0).derivations().get(0);
        assertEquals(5, potential.inputs().size());
        assertEquals(potential.value().value(), potential.inputs().stream().mapToDouble(input -> input.value().value()).sum(),
                1e-12);
        assertEquals(List.of("-W1", "earth point XE1", "earth point XE2", "strap -WE1", "earth point XE3"),
                potential.inputs().stream().map(input -> input.name().replace("-XE", "XE")).toList());
    }
}
