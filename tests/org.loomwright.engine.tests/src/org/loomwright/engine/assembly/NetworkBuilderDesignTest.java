// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;

/** What feeds the network of the drop. */
class NetworkBuilderDesignTest {

    private static SolvedCase solve(PlanFixture fixture) {
        Plan plan = fixture.build();
        SolvedCase solved = CaseSolver.solve(plan, plan.cases().get(0), new BasicMonitor());
        assertEquals(OperatingPoint.Status.SOLVED, solved.running().point().status());
        assertEquals(OperatingPoint.Status.SOLVED, solved.design().point().status());
        return solved;
    }

    private static double volts(SolvedCase solved, String plus, String minus) {
        return solved.design().voltage(PlanIndex.terminal(solved.plan(), plus), PlanIndex.terminal(solved.plan(), minus));
    }

    private static double amps(SolvedCase solved, String conductor) {
        return solved.design().conductorA(PlanIndex.conductor(solved.plan(), conductor));
    }

    private static PlanFixture starterBattery() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100);
    }

    private static PlanFixture withLoad(PlanFixture fixture, String name, String plus, String minus) {
        return fixture.load(name, "power", 24, 12).cable("WP" + name, 1.5, 2, plus, name + ".L+")
                .cable("WN" + name, 1.5, 2, name + ".L-", minus);
    }

    @Test
    void onlyTheDomainsSourceFeedsAndOthersRest() {
        SolvedCase solved = solve(withLoad(starterBattery().battery("G2", 12, 0.004, 0.012, 100).alternator("G3", 14.4, 100)
                .cable("W1", 16, 1, "G1.30", "G2.30").cable("W2", 16, 1, "G1.31", "G2.31").cable("W3", 16, 1, "G1.30", "G3.B+")
                .cable("W4", 16, 1, "G1.31", "G3.B-").state("run", c -> c.engine(2000).on("E1")), "E1", "G2.30", "G2.31"));
        assertEquals(12, volts(solved, "G1.30", "G1.31"), 1e-4);
        assertEquals(-1, solved.design().at().elementItem()[PlanIndex.element(solved.plan(), "G2#cell")]);
        assertEquals(2, amps(solved, "WPE1@1"), 1e-9);
        assertEquals(2, amps(solved, "W1@1"), 1e-9);
        assertEquals(0, amps(solved, "W3@1"), 1e-9);
    }

    @Test
    void aSeparateBatteryFeedsItsOwnPart() {
        PlanFixture fixture = starterBattery().battery("G2", 12.8, 0.004, 0.012, 100).handSwitch("S1", false)
                .cable("W1", 16, 1, "G1.30", "S1.1").cable("W2", 16, 1, "S1.2", "G2.30").cable("W3", 16, 1, "G1.31", "G2.31");
        SolvedCase solved = solve(withLoad(fixture, "E1", "G2.30", "G2.31"));
        assertEquals(12, volts(solved, "G2.30", "G2.31"), 1e-4);
        assertEquals(12, volts(solved, "G1.30", "G1.31"), 1e-4);
        assertEquals(2, amps(solved, "WPE1@1"), 1e-9);
        assertEquals(0, amps(solved, "W1@1"), 1e-9);
    }

    @Test
    void twoBatteriesInSeriesShareTheNominalVoltage() {
        PlanFixture fixture = new PlanFixture().domain("24V", 24, "G2.30").battery("G1", 12, 0.004, 0.012, 100)
                .battery("G2", 12, 0.004, 0.012, 100).cable("W1", 16, 0.3, "G1.30", "G2.31");
        SolvedCase solved = solve(withLoad(fixture, "E1", "G2.30", "G1.31"));
        assertEquals(1, amps(solved, "WPE1@1"), 1e-9);
        assertEquals(24, volts(solved, "G2.30", "G1.31"), 1e-3);
        assertEquals(12, volts(solved, "G2.30", "G2.31"), 1e-4);
    }

    @Test
    void aConverterFeedsItsDomainStifflyAndLoadsTheOtherAtNominalVoltage() {
        PlanFixture fixture = new PlanFixture().domain("24V", 24, "G1.30").domain("12V", 12, "T1.OUT+")
                .battery("G1", 24, 0.004, 0.012, 100).converter("T1", 13.6, 20).cable("W1", 6, 2, "G1.30", "T1.IN+")
                .cable("W2", 6, 2, "T1.IN-", "G1.31");
        SolvedCase solved = solve(withLoad(fixture, "E1", "T1.OUT+", "T1.OUT-"));
        assertEquals(12, volts(solved, "T1.OUT+", "T1.OUT-"), 1e-4);
        assertEquals(2, amps(solved, "WPE1@1"), 1e-9);
        int input = solved.running().at().elementItem()[PlanIndex.element(solved.plan(), "T1#converter")];
        Plan plan = solved.plan();
        double watts = solved.running().point().currentA()[input]
                * solved.running().voltage(PlanIndex.terminal(plan, "T1.IN+"), PlanIndex.terminal(plan, "T1.IN-"));
        assertEquals(watts / 24, amps(solved, "W1@1"), 1e-9);
        assertTrue(watts > 24 / 0.9);
    }

    @Test
    void aChargerRestsAtItsOutputAndLoadsItsInput() {
        PlanFixture fixture = starterBattery().battery("G2", 12, 0.004, 0.012, 100).converter("T1", 14.4, 20)
                .cable("W1", 6, 2, "G1.30", "T1.IN+").cable("W2", 6, 2, "T1.IN-", "G1.31")
                .cable("W3", 6, 2, "T1.OUT+", "G2.30").cable("W4", 6, 2, "T1.OUT-", "G2.31");
        SolvedCase solved = solve(withLoad(fixture.state("charge", c -> c.on("E1").battery("G2", 0.2, 25, 0)), "E1", "G2.30",
                "G2.31"));
        assertEquals(0, amps(solved, "W3@1"), 1e-9);
        assertTrue(amps(solved, "W1@1") > 20);
        assertEquals(2, amps(solved, "WPE1@1"), 1e-9);
    }

    @Test
    void contactsStayAsTheyWereWhenRunning() {
        PlanFixture fixture = starterBattery().relay("K1").cable("W1", 6, 1, "G1.30", "K1.30").cable("W2", 1, 1, "G1.30", "K1.86")
                .cable("W3", 1, 1, "K1.85", "G1.31");
        SolvedCase solved = solve(withLoad(fixture, "E1", "K1.87", "G1.31"));
        assertEquals(2, amps(solved, "WPE1@1"), 1e-9);
        Network.Item contact = solved.design().at().network().items()
                .get(solved.design().at().elementItem()[PlanIndex.element(solved.plan(), "K1#contact")]);
        assertEquals(new Network.Fixed(true), ((Network.Switch) contact).drive());
    }

    @Test
    void resistiveLoadsTakeTheCurrentOfNominalVoltage() {
        PlanFixture fixture = starterBattery().load("E1", "resistance", 3, 12).cable("W1", 1.5, 2, "G1.30", "E1.L+")
                .cable("W2", 1.5, 2, "E1.L-", "G1.31");
        assertEquals(4, amps(solve(fixture), "W1@1"), 1e-9);
    }
}
