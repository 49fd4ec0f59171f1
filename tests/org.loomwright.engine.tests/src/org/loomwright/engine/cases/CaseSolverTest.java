// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.heat.DutyCycle;
import org.loomwright.engine.heat.Ratings;

class CaseSolverTest {

    /** A battery, a fused feed and one load of 10 A with its own return, 5 m each way. */
    private static PlanFixture lamp(double sectionMm2, double lengthM) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 4).fuse("F1", "1", 15)
                .load("E1", "current", 10, 12).cable("W1", 16, 0.1, "G1.30", "F1.30")
                .cable("W2", sectionMm2, lengthM, "F1.1", "E1.L+").cable("W3", sectionMm2, lengthM, "E1.L-", "G1.31");
    }

    private static SolvedCase solve(Plan plan) {
        return CaseSolver.solve(plan, plan.cases().get(0), new BasicMonitor());
    }

    private static double loadV(SolvedCase solved, SolvedCase.Solved at, String device) {
        return at.voltage(PlanIndex.terminal(solved.plan(), device + ".L+"), PlanIndex.terminal(solved.plan(), device + ".L-"));
    }

    private static int conductor(SolvedCase solved, String id) {
        return PlanIndex.conductor(solved.plan(), id);
    }

    /** Drop of the design network over both conductors of the load alone, cold, V. */
    private static double cableDropV(double sectionMm2, double lengthM) {
        SolvedCase solved = solve(lamp(sectionMm2, lengthM).set("W2", "ampacity", null).set("W3", "ampacity", null)
                .set("W2@1", "jointsOhm", 1e-12).set("W3@1", "jointsOhm", 1e-12).build());
        Plan plan = solved.plan();
        return solved.design().voltage(PlanIndex.terminal(plan, "F1.1"), PlanIndex.terminal(plan, "E1.L+"))
                + solved.design().voltage(PlanIndex.terminal(plan, "E1.L-"), PlanIndex.terminal(plan, "G1.31"));
    }

    @Test
    void theOperatingPointIsTheOneOfOhmAndKirchhoff() {
        SolvedCase solved = solve(lamp(2.5, 5).build());
        assertEquals(OperatingPoint.Status.SOLVED, solved.running().point().status());
        double hotC = solved.running().conductorC(conductor(solved, "W2@1"));
        double feedC = solved.running().conductorC(conductor(solved, "W1@1"));
        double ohm = 0.004 + 0.0015 + 3 * 0.0004 + 2 * 5 * 0.018 / 2.5 * Copper.factor(hotC)
                + 0.1 * 0.018 / 16 * Copper.factor(feedC);
        assertEquals(12.8 - 10 * ohm, loadV(solved, solved.running(), "E1"), 1e-9);
        assertEquals(10, solved.running().conductorA(conductor(solved, "W3@1")), 1e-9);
        ConductorTemperature thermal = Ratings.thermal(solved.plan(), conductor(solved, "W2@1"), solved.ratings().get(1));
        assertEquals(thermal.steadyC(10), hotC, 1e-6);
    }

    @Test
    void theDropLeavesTheBatteryOutAndTakesNominalVoltage() {
        SolvedCase solved = solve(lamp(2.5, 5).set("E1#load", "law", "power").set("E1#load", "watts", 120.0).build());
        double hotC = solved.running().conductorC(conductor(solved, "W2@1"));
        double feedC = solved.running().conductorC(conductor(solved, "W1@1"));
        double ohm = 0.0015 + 3 * 0.0004 + 2 * 5 * 0.018 / 2.5 * Copper.factor(hotC) + 0.1 * 0.018 / 16 * Copper.factor(feedC);
        assertEquals(12 - 10 * ohm, loadV(solved, solved.design(), "E1"), 1e-4);
        assertEquals(10, solved.design().conductorA(conductor(solved, "W2@1")), 1e-9);
        assertEquals(hotC, solved.design().conductorC(conductor(solved, "W2@1")), 1e-6);
    }

    @Test
    void twiceTheRunAtTheSameDropNeedsTwiceTheSectionAndFourTimesTheCopper() {
        // common practice, and worked example CS13
        double wantedV = cableDropV(2.5, 5);
        double thin = 1;
        double thick = 100;
        for (int i = 0; i < 60; i++) {
            double middle = (thin + thick) / 2;
            if (cableDropV(middle, 10) > wantedV) {
                thin = middle;
            } else {
                thick = middle;
            }
        }
        assertEquals(2, thick / 2.5, 1e-9);
        assertEquals(4, thick * 10 / (2.5 * 5), 1e-9);
    }

    @Test
    void withoutDutiesTheBaseIsTheRunningNetwork() {
        SolvedCase solved = solve(lamp(2.5, 5).build());
        assertSame(solved.running(), solved.base());
    }

    @Test
    void conductorsOfADutyHaveThePeakOfTheCycle() {
        PlanFixture fixture = lamp(2.5, 5).fuse("F1", "2", 10).load("E2", "current", 4, 12).cable("W4", 2.5, 5, "F1.2", "E2.L+")
                .cable("W5", 2.5, 5, "E2.L-", "G1.31").set("E1#load", "amps", 25.0).set("E1#load", "standbyA", 0.5)
                .state("duty", c -> c.duty("E1", 30, 120).on("E2"));
        SolvedCase solved = solve(fixture.build());
        assertNotSame(solved.running(), solved.base());
        int supply = conductor(solved, "W2@1");
        int other = conductor(solved, "W4@1");
        int feed = conductor(solved, "W1@1");
        assertEquals(25, solved.running().conductorA(supply), 1e-9);
        assertEquals(0.5, solved.base().conductorA(supply), 1e-9);
        DutyCycle duty = new DutyCycle(30, 120);
        ConductorTemperature thermal = Ratings.thermal(solved.plan(), supply, solved.ratings().get(supply));
        assertEquals(duty.peakC(thermal, 25, 0.5), solved.running().conductorC(supply), 0.02);
        assertTrue(solved.running().conductorC(supply) < thermal.steadyC(25) - 10);
        ConductorTemperature feeding = Ratings.thermal(solved.plan(), feed, solved.ratings().get(feed));
        assertEquals(duty.peakC(feeding, 29, 4.5), solved.running().conductorC(feed), 0.02);
        ConductorTemperature steady = Ratings.thermal(solved.plan(), other, solved.ratings().get(other));
        assertEquals(steady.steadyC(4), solved.running().conductorC(other), 1e-6);
    }

    @Test
    void aStarterWarmsItsCablesByItsCycle() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("engine")
                .starter("M1", 0.03, "engine").earthPoint("XE1", "engine").cable("W1", 25, 1.5, "G1.30", "M1.30")
                .cable("W2", 25, 1, "G1.31", "XE1").drivenSwitch("S1", "start").cable("W3", 2.5, 1, "G1.30", "S1.30")
                .cable("W4", 2.5, 1, "S1.15", "M1.50")
                .state("crank", c -> c.kind("cranking").ignition("start").duty("M1#motor", 10, 60).ambient(0));
        SolvedCase solved = solve(fixture.build());
        for (String id : List.of("W1@1", "W2@1")) {
            int cable = conductor(solved, id);
            assertTrue(Math.abs(solved.running().conductorA(cable)) > 250);
            ConductorTemperature thermal = Ratings.thermal(solved.plan(), cable, solved.ratings().get(cable));
            assertEquals(new DutyCycle(10, 60).peakC(thermal, solved.running().conductorA(cable),
                    solved.base().conductorA(cable)), solved.running().conductorC(cable), 0.02);
        }
    }

    @Test
    void everyCycleEndsWithTheWarmthThatItsCurrentsCallFor() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .alternator("G2", 14.3, 60).cable("W1", 16, 2, "G2.B+", "G1.30").cable("W2", 16, 2, "G2.B-", "G1.31")
                .box("F1", 4).cable("W3", 10, 2, "G1.30", "F1.30").negativeBar("X1", 4).cable("W4", 10, 2, "G1.31", "X1.31");
        for (int i = 1; i <= 4; i++) {
            String load = "E" + i;
            fixture.fuse("F1", "" + i, 30).load(load, i == 4 ? "resistance" : "power", i == 4 ? 1.2 : 60 * i, 12)
                    .cable("WP" + i, 2.5, 3, "F1." + i, load + ".L+").cable("WN" + i, 2.5, 3, load + ".L-", "X1.N" + i);
        }
        fixture.state("rest", c -> c.duty("E1", 20, 60).duty("E3", 600, 1800).on("E2", "E4").battery("G1", 0.6, 10, 0.5))
                .state("drive", c -> c.engine(2000).duty("E1", 20, 60).duty("E3", 600, 1800).duty("E4", 5, 50).on("E2"))
                .state("short", c -> c.duty("E2", 1, 1000).duty("E4", 999, 1000))
                .state("full", c -> c.engine(2000).duty("E1", 30, 60).battery("G1", 1, 25, 0));
        Plan plan = fixture.build();
        for (SolvedCase solved : CaseSolver.solveAll(plan, new BasicMonitor())) {
            CycleHeat cycles = new CycleHeat(plan, solved.state());
            double[] peakC = cycles.peakC(solved.running(), solved.base(), solved.ratings());
            assertTrue(cycles.settled(solved.running(), peakC, solved.ratings()), solved.state().name());
            for (int c = 0; c < peakC.length; c++) {
                // the same conductor has the same warmth while the loads that come and go are off
                double offC = solved.base().conductorC(c);
                assertTrue(Double.isNaN(peakC[c]) || Math.abs(offC - peakC[c]) < 0.01, solved.state().name() + " " + offC);
            }
        }
    }

    @Test
    void aConductorOfACycleFollowsACurrentThatIsALittleDifferent() {
        PlanFixture fixture = lamp(2.5, 5).set("E1#load", "amps", 25.0).state("duty", c -> c.duty("E1", 30, 120));
        SolvedCase solved = solve(fixture.build());
        CycleHeat cycles = new CycleHeat(solved.plan(), solved.state());
        double[] peakC = cycles.peakC(solved.running(), solved.base(), solved.ratings());
        CycleHeat.Warming warming = cycles.warming(peakC, solved.running(), solved.ratings());
        int cable = conductor(solved, "W2@1");
        assertTrue(Double.isNaN(warming.heldC()[cable]));
        ConductorTemperature asWarm = Ratings.thermal(solved.plan(), cable, warming.ratings().get(cable));
        ConductorTemperature thermal = Ratings.thermal(solved.plan(), cable, solved.ratings().get(cable));
        assertEquals(peakC[cable], asWarm.steadyC(25), 1e-9);
        assertEquals(new DutyCycle(30, 120).peakC(thermal, 25.25, 0), asWarm.steadyC(25.25), 0.05);
    }

    @Test
    void theLinkBetweenBatteriesInSeriesHasTheCycleOfTheirLoadAndOtherReturnsHaveNot() {
        PlanFixture fixture = new PlanFixture().domain("24V", 24, "G2.30").battery("G1", 12, 0.004, 0.012, 100)
                .battery("G2", 12, 0.004, 0.012, 100).cable("W1", 4, 0.3, "G1.30", "G2.31").load("E1", "current", 60, 24)
                .load("E2", "current", 10, 24).cable("W2", 10, 3, "G2.30", "E1.L+").cable("W3", 10, 3, "E1.L-", "G1.31")
                .cable("W4", 2.5, 3, "G2.30", "E2.L+").cable("W5", 2.5, 3, "E2.L-", "G1.31")
                .state("duty", c -> c.duty("E1", 5, 60).on("E2"));
        SolvedCase solved = solve(fixture.build());
        int link = conductor(solved, "W1@1");
        ConductorTemperature thermal = Ratings.thermal(solved.plan(), link, solved.ratings().get(link));
        assertEquals(new DutyCycle(5, 60).peakC(thermal, 70, 10), solved.running().conductorC(link), 0.02);
        int other = conductor(solved, "W5@1");
        ConductorTemperature steady = Ratings.thermal(solved.plan(), other, solved.ratings().get(other));
        assertEquals(steady.steadyC(10), solved.running().conductorC(other), 1e-6);
    }

    @Test
    void bunchedLoadedCircuitsLowerEachOthersRating() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.002, 0.012, 100).body("chassis")
                .earthPoint("XE1", "chassis").cable("W9", 25, 0.3, "G1.31", "XE1").box("F1", 4)
                .cable("W0", 25, 0.3, "G1.30", "F1.30")
                .place("a", 0, 0, 0, null).place("b", 3000, 0, 0, null).run("R1", "a", "b", 3000, null, "chassis");
        for (int i = 1; i <= 4; i++) {
            String load = "E" + i;
            fixture.fuse("F1", "" + i, 15).load(load, "current", i == 4 ? 0.5 : 12, 12).earthPoint("XL" + i, "chassis")
                    .cable("WP" + i, 2.5, 3, "F1." + i, load + ".L+").lay("WP" + i, "R1")
                    .cable("WN" + i, 2.5, 0.2, load + ".L-", "XL" + i);
        }
        SolvedCase solved = solve(fixture.build());
        // three loaded circuits; the fourth carries next to nothing, and counts for itself only
        assertEquals(3, solved.ratings().get(conductor(solved, "WP1@1")).counted());
        assertEquals(0.7 * 30, solved.ratings().get(conductor(solved, "WP1@1")).atReferenceA(), 1e-9);
        assertEquals(4, solved.ratings().get(conductor(solved, "WP4@1")).counted());
        assertEquals(1, solved.ratings().get(conductor(solved, "W0@1")).counted());
    }

    @Test
    void circuitsThatTogetherCarryMuchCountThoughEachAloneCarriesLittle() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.002, 0.012, 100)
                .negativeBar("X1", 7).cable("W9", 25, 0.3, "G1.31", "X1.31").box("F1", 7)
                .cable("W0", 25, 0.3, "G1.30", "F1.30")
                .place("a", 0, 0, 0, null).place("b", 3000, 0, 0, null).run("R1", "a", "b", 3000, null, null);
        for (int i = 1; i <= 7; i++) {
            String load = "E" + i;
            fixture.fuse("F1", "" + i, 15).load(load, "current", 8, 12)
                    .cable("WP" + i, 2.5, 3, "F1." + i, load + ".L+").lay("WP" + i, "R1")
                    .cable("WN" + i, 2.5, 3, load + ".L-", "X1.N" + i);
        }
        SolvedCase solved = solve(fixture.state("hot", c -> c.allOn().ambient(40)).build());
        // 8 A is 27 % of the 30 A of one alone, but 53 % of the 15 A of each of seven
        for (int i = 1; i <= 7; i++) {
            assertEquals(7, solved.ratings().get(conductor(solved, "WP" + i + "@1")).counted());
            assertEquals(15, solved.ratings().get(conductor(solved, "WP" + i + "@1")).correctedA(), 1e-9);
            assertEquals(1, solved.ratings().get(conductor(solved, "WN" + i + "@1")).counted());
        }
        ConductorTemperature thermal = Ratings.thermal(solved.plan(), conductor(solved, "WP1@1"),
                solved.ratings().get(conductor(solved, "WP1@1")));
        assertEquals(thermal.steadyC(8), solved.running().conductorC(conductor(solved, "WP1@1")), 1e-6);
    }

    @Test
    void aChargingSourceReachesItsVoltageOnceTheBatteryTakesNoMore() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .alternator("G2", 14.4, 90).cable("W1", 16, 1, "G2.B+", "G1.30").cable("W2", 16, 1, "G2.B-", "G1.31")
                .state("half", c -> c.engine(2000).battery("G1", 0.5, 25, 0.5).ambient(25));
        SolvedCase solved = solve(fixture.build());
        int cell = PlanIndex.element(solved.plan(), "G1#cell");
        int item = solved.running().at().elementItem()[PlanIndex.element(solved.plan(), "G2#source")];
        double wayOhm = 2 * (0.018 / 16 * Copper.factor(solved.running().conductorC(conductor(solved, "W1@1"))) + 0.0004);
        // 25 A would flow at 14.4 V; the droop of 2 milliohm and the way lower it
        double amps = (14.4 - 12.3) / ((14.4 - 12.3) / 25 + 0.002 + wayOhm);
        assertEquals(amps, solved.running().elementA(cell), 1e-6);
        assertTrue(solved.running().point().on()[item] && !solved.running().point().limiting()[item]);
    }

    @Test
    void aCutOutThatOpensTakesItsLoadsOff() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .cutOut("Q1", 12.5, 12.0).load("E1", "current", 5, 12).cable("W1", 2.5, 1, "G1.30", "Q1.30")
                .cable("W2", 2.5, 1, "Q1.87", "E1.L+").cable("W3", 2.5, 1, "E1.L-", "G1.31").cable("W4", 1, 1, "Q1.31", "G1.31")
                .state("full", c -> c.on("E1")).state("empty", c -> c.on("E1").battery("G1", 0.1, 25, 0));
        Plan plan = fixture.build();
        List<SolvedCase> cases = CaseSolver.solveAll(plan, new BasicMonitor());
        int cable = PlanIndex.conductor(plan, "W1@1");
        assertEquals(5, cases.get(0).running().conductorA(cable), 1e-9);
        assertEquals(0, cases.get(1).running().conductorA(cable), 1e-9);
        assertEquals(0, cases.get(1).design().conductorA(cable), 1e-9);
    }

    @Test
    void sameInputSameBits() {
        Plan plan = lamp(2.5, 5).state("duty", c -> c.duty("E1", 30, 120)).build();
        SolvedCase first = solve(plan);
        SolvedCase second = solve(plan);
        assertArrayEquals(first.running().point().potentialV(), second.running().point().potentialV(), 0.0);
        assertArrayEquals(first.running().point().temperatureC(), second.running().point().temperatureC(), 0.0);
        assertArrayEquals(first.design().point().potentialV(), second.design().point().potentialV(), 0.0);
    }

    @Test
    void aCancelledMonitorStops() {
        BasicMonitor monitor = new BasicMonitor();
        monitor.setCanceled(true);
        Plan plan = lamp(2.5, 5).build();
        assertThrows(CancellationException.class, () -> CaseSolver.solveAll(plan, monitor));
    }

    @Test
    void aPlanWithoutAnythingSolves() {
        Plan plan = new PlanFixture().build();
        assertEquals(OperatingPoint.Status.SOLVED, solve(plan).running().point().status());
    }
}
