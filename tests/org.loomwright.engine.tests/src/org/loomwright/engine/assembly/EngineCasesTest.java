// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.Ignition;

class EngineCasesTest {
    private final TestVehicle van = TestVehicle.simple();

    /** An ignition switch on the battery, and a lamp on one of its terminals. */
    private void lampOn(String lamp, String ignitionTerminal) {
        if (van.vehicle.getDevices().stream().noneMatch(d -> d.getName().equals("S1"))) {
            van.device("S1", "ignition", "front");
            van.cable("W10", "2.5", "G1.30", "S1.30");
        }
        van.device(lamp, "lamp", "rear");
        van.cable("W" + lamp + "a", "2.5", "S1." + ignitionTerminal, lamp + ".L+");
        van.cable("W" + lamp + "b", "2.5", lamp + ".L-", "G1.31");
    }

    private void starter() {
        lampOn("E15", "15");
        van.body("engine");
        van.earthPoint("XE1", "engine", "front");
        van.device("M1", "starter", "front").setBody(van.vehicle.getBodies().get(0));
        van.cable("W11", "16", "G1.30", "M1.30");
        van.cable("W12", "2.5", "S1.50", "M1.50");
        van.cable("W13", "16", "G1.31", "XE1");
    }

    @Test
    void thereAreFiveAfterTheUsers() {
        van.state("camp");
        List<Plan.Case> cases = van.plan().cases();
        assertEquals(List.of("camp", "engine:all-on", "engine:cranking", "engine:parked-cold", "engine:charging-hot",
                "engine:charging-resting"), cases.stream().map(Plan.Case::id).toList());
        assertFalse(cases.get(0).byEngine());
        assertTrue(cases.stream().skip(1).allMatch(Plan.Case::byEngine));
    }

    @Test
    void batteriesHaveThePracticesAgeInAllOfThem() {
        Plan plan = van.plan();
        for (Plan.Case state : plan.cases()) {
            assertEquals(plan.practice().value("state.age"), PlanFind.cell(plan, state.name(), "G1#cell").age(), state.id());
        }
        assertEquals(0.5, plan.practice().value("state.age"));
    }

    @Test
    void allOnIsHotWithTheEngineIdling() {
        Plan plan = van.plan();
        Plan.Case allOn = PlanFind.state(plan, "engine:all-on");
        assertEquals("on", allOn.ignition());
        assertTrue(allOn.engineRunning());
        assertEquals(750, allOn.engineRpm());
        assertEquals(80, PlanFind.ambientC(plan, "engine:all-on", "bay"));
        assertEquals(1, PlanFind.cell(plan, "engine:all-on", "G1#cell").charge());
        assertEquals(List.of("E1#load"), PlanFind.on(plan, "engine:all-on"));
    }

    @Test
    void allOnWantsWhatTheIgnitionFeedsButNotTheStarter() {
        starter();
        lampOn("E75", "75");
        lampOn("E61", "61");
        assertEquals(List.of("E1#load", "E15#load", "E75#load", "E61#load"), PlanFind.on(van.plan(), "engine:all-on"));
    }

    @Test
    void aLoadWithoutAnySupplyIsWantedSoThatItShows() {
        van.device("E2", "lamp", "rear");
        assertEquals(List.of("E1#load", "E2#load"), PlanFind.on(van.plan(), "engine:all-on"));
        assertEquals(List.of("E1#load", "E2#load"), PlanFind.on(van.plan(), "engine:charging-resting"));
    }

    @Test
    void chargingRestingLeavesOutWhatOnlyTheEngineFeedsAndTheBaseVehicle() {
        lampOn("E15", "15");
        lampOn("E61", "61");
        van.device("E15").setExisting(true);
        Plan plan = van.plan();
        assertEquals(List.of("E1#load"), PlanFind.on(plan, "engine:charging-resting"));
        assertFalse(PlanFind.state(plan, "engine:charging-resting").engineRunning());
        assertEquals(0.5, PlanFind.cell(plan, "engine:charging-resting", "G1#cell").charge());
    }

    @Test
    void switchesAreClosedWhereLoadsAreWantedIsolatorsAndChangeOversRest() {
        DevicePart changeOver = van.parts.device("change-over", DeviceKind.SWITCH, "1", "2", "4");
        TestParts.contact(changeOver, "a", "1", "2", Driver.HAND, RestState.CLOSED);
        TestParts.contact(changeOver, "b", "1", "4", Driver.HAND, RestState.OPEN);
        van.device("S1", "switch", "rear");
        van.device("S2", "change-over", "rear");
        van.device("Q1", "isolator", "front");
        van.parts.devicePart("isolator").getContacts().get(0).setRest(RestState.OPEN);
        assertEquals(List.of("S1#contact", "S2#a"), PlanFind.closed(van.plan(), "engine:all-on"));
        assertEquals(List.of("S2#a"), PlanFind.closed(van.plan(), "engine:parked-cold"));
    }

    @Test
    void crankingIsColdWithTheStarterForSeconds() {
        starter();
        Plan plan = van.plan();
        Plan.Case cranking = PlanFind.state(plan, "engine:cranking");
        assertEquals("start", cranking.ignition());
        assertEquals("cranking", cranking.kind());
        assertFalse(cranking.engineRunning());
        assertEquals(List.of("M1#motor"), PlanFind.on(plan, "engine:cranking"));
        assertEquals(10, cranking.demands().get(0).onS());
        Plan.CellState cell = PlanFind.cell(plan, "engine:cranking", "G1#cell");
        assertEquals(0.8, cell.charge());
        assertEquals(0, cell.temperatureC());
        assertEquals(0, PlanFind.ambientC(plan, "engine:cranking", "bay"));
    }

    @Test
    void whileCrankingTheBaseVehiclesLoadsOnTerminal15StayOnThoseOn75DropOut() {
        starter();
        lampOn("E75", "75");
        van.device("E15").setExisting(true);
        van.device("E75").setExisting(true);
        assertEquals(List.of("E15#load", "M1#motor"), PlanFind.on(van.plan(), "engine:cranking"));
    }

    @Test
    void theUsersCrankingCaseSaysWhichBaseLoadsAreOn() {
        starter();
        van.device("E15").setExisting(true);
        Case start = van.state("start");
        start.setIgnition(Ignition.START);
        van.on(start, "E1", null);
        assertEquals(List.of("M1#motor"), PlanFind.on(van.plan(), "engine:cranking"));
        van.on(start, "E15", "0.5");
        assertEquals(List.of("E15#load", "M1#motor"), PlanFind.on(van.plan(), "engine:cranking"));
        assertEquals(0.5, PlanFind.state(van.plan(), "engine:cranking").demands().get(0).factor());
    }

    @Test
    void aLoadBehindARelayIsOnWhenItsCoilCanPullIn() {
        lampOn("E15", "15");
        van.device("K1", "relay", "front");
        van.cable("W20", "2.5", "S1.61", "K1.86");
        van.cable("W21", "2.5", "K1.85", "G1.31");
        van.cable("W22", "2.5", "G1.30", "K1.30");
        van.device("E2", "lamp", "rear");
        van.cable("W23", "2.5", "K1.87", "E2.L+");
        van.cable("W24", "2.5", "E2.L-", "G1.31");
        assertTrue(PlanFind.on(van.plan(), "engine:all-on").contains("E2#load"));
        assertFalse(PlanFind.on(van.plan(), "engine:charging-resting").contains("E2#load"));
    }

    @Test
    void parkedColdHasOnlyStandbyAndTheColdestAmbients() {
        Plan plan = van.plan();
        Plan.Case parked = PlanFind.state(plan, "engine:parked-cold");
        assertEquals(List.of(), parked.demands());
        assertEquals("off", parked.ignition());
        assertEquals(-20, PlanFind.ambientC(plan, "engine:parked-cold", "bay"));
        assertEquals(-10, PlanFind.ambientC(plan, "engine:parked-cold", "cabin"));
        assertEquals(-20, parked.outsideC());
        assertEquals(new Plan.CellState(0, 0.7, -20, 0.5), PlanFind.cell(plan, "engine:parked-cold", "G1#cell"));
    }

    @Test
    void chargingHotRunsTheSourcesIntoLowBatteries() {
        Plan plan = van.plan();
        Plan.Case hot = PlanFind.state(plan, "engine:charging-hot");
        assertTrue(hot.engineRunning());
        assertEquals(2000, hot.engineRpm());
        assertEquals(1, hot.sun());
        assertEquals(List.of(), hot.demands());
        assertEquals(new Plan.CellState(0, 0.5, 80, 0.5), PlanFind.cell(plan, "engine:charging-hot", "G1#cell"));
    }
}
