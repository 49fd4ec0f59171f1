// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.vehicle.BatteryState;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.CaseKind;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.Ignition;
import org.loomwright.model.vehicle.SwitchPosition;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.ZoneAmbient;

class CaseAssemblerTest {
    private final TestVehicle van = TestVehicle.simple();
    private final Case camp = van.state("camp");

    private Plan.Case read() {
        return PlanFind.state(van.plan(), "camp");
    }

    private void ambient(String zone, String celsius) {
        ZoneAmbient ambient = VehicleFactory.eINSTANCE.createZoneAmbient();
        ambient.setZone(TestVehicle.find(van.vehicle.getZones(), zone));
        ambient.setAmbientC(TestParts.number(celsius));
        camp.getAmbients().add(ambient);
    }

    private void position(String device, String contact, Boolean closed) {
        SwitchPosition position = VehicleFactory.eINSTANCE.createSwitchPosition();
        position.setDevice(van.device(device));
        position.setContact(contact);
        position.setClosed(closed);
        camp.getPositions().add(position);
    }

    private AssemblyProblem onlyProblem() {
        List<AssemblyProblem> problems = van.assembled().problems();
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    @Test
    void withoutAnyAmbientZonesAreAtTheirHighest() {
        assertEquals(80, PlanFind.ambientC(van.plan(), "camp", "bay"));
        assertEquals(45, PlanFind.ambientC(van.plan(), "camp", "cabin"));
        assertEquals(40, read().outsideC());
    }

    @Test
    void theOutsideAmbientHoldsInEveryZoneThatStatesNone() {
        camp.setAmbientC(TestParts.number("12"));
        ambient("bay", "55");
        assertEquals(55, PlanFind.ambientC(van.plan(), "camp", "bay"));
        assertEquals(12, PlanFind.ambientC(van.plan(), "camp", "cabin"));
        assertEquals(12, read().outsideC());
    }

    @Test
    void batteriesAreFullMiddleAgedAndAtTheirZonesAmbientUnlessStated() {
        assertEquals(new Plan.CellState(0, 1, 80, 0.5), PlanFind.cell(van.plan(), "camp", "G1#cell"));
        camp.setKind(CaseKind.CHARGING);
        assertEquals(0.5, PlanFind.cell(van.plan(), "camp", "G1#cell").charge());
        BatteryState state = VehicleFactory.eINSTANCE.createBatteryState();
        state.setDevice(van.device("G1"));
        state.setCharge(TestParts.number("0.3"));
        state.setTemperatureC(TestParts.number("7"));
        state.setAge(TestParts.number("0.8"));
        camp.getBatteries().add(state);
        assertEquals(new Plan.CellState(0, 0.3, 7, 0.8), PlanFind.cell(van.plan(), "camp", "G1#cell"));
    }

    @Test
    void whileCrankingTheBatteryIsColdUnlessAnAmbientIsStated() {
        camp.setIgnition(Ignition.START);
        assertEquals("cranking", read().kind());
        assertEquals(new Plan.CellState(0, 0.8, 0, 0.5), PlanFind.cell(van.plan(), "camp", "G1#cell"));
        camp.setAmbientC(TestParts.number("20"));
        assertEquals(20, PlanFind.cell(van.plan(), "camp", "G1#cell").temperatureC());
    }

    @Test
    void onlyWhatIsListedIsOn() {
        van.device("E2", "lamp", "rear");
        van.on(camp, "E2", null);
        assertEquals(List.of("E2#load"), PlanFind.on(van.plan(), "camp"));
        assertEquals(1, read().demands().get(0).factor());
        assertTrue(Double.isNaN(read().demands().get(0).onS()));
    }

    @Test
    void factorAndDutyAreKept() {
        DemandState on = van.on(camp, "E1", "0.6");
        on.setOnS(TestParts.number("20"));
        on.setPeriodS(TestParts.number("60"));
        Plan.DemandState read = read().demands().get(0);
        assertEquals(0.6, read.factor());
        assertEquals(20, read.onS());
        assertEquals(60, read.periodS());
    }

    @Test
    void allOnMeansEveryLoadButThoseTurnedOffAndTheStarter() {
        van.device("E2", "lamp", "rear");
        van.device("M1", "starter", "front");
        camp.setAllOn(true);
        assertEquals(List.of("E1#load", "E2#load"), PlanFind.on(van.plan(), "camp"));
        van.on(camp, "E1", "0");
        assertEquals(List.of("E2#load"), PlanFind.on(van.plan(), "camp"));
    }

    @Test
    void theStarterIsOnWhileTheIgnitionStandsAtStart() {
        van.device("M1", "starter", "front");
        camp.setIgnition(Ignition.START);
        assertEquals(List.of("M1#motor"), PlanFind.on(van.plan(), "camp"));
        assertEquals(10, read().demands().get(0).onS());
        assertEquals(60, read().demands().get(0).periodS());
    }

    @Test
    void handContactsRestUnlessStated() {
        van.device("S1", "switch", "rear");
        van.device("Q1", "isolator", "front");
        assertEquals(List.of("Q1#contact"), PlanFind.closed(van.plan(), "camp"));
        position("S1", null, true);
        position("Q1", "contact", false);
        assertEquals(List.of("S1#contact"), PlanFind.closed(van.plan(), "camp"));
    }

    @Test
    void aRunningEngineIdlesUnlessStated() {
        assertEquals(0, read().engineRpm());
        camp.setEngine(true);
        assertEquals(750, read().engineRpm());
        assertEquals("driving", read().kind());
        camp.setEngineRpm(TestParts.number("1800"));
        assertEquals(1800, read().engineRpm());
    }

    @Test
    void whatTheCaseStatesIsKept() {
        camp.setKind(CaseKind.WORKING);
        camp.setIgnition(Ignition.ACCESSORY);
        camp.setShore(true);
        camp.setSun(TestParts.number("0.4"));
        assertEquals("working", read().kind());
        assertEquals("accessory", read().ignition());
        assertTrue(read().shore());
        assertEquals(0.4, read().sun());
        assertFalse(read().byEngine());
    }

    @Test
    void aContactThatTheDeviceLacksIsTold() {
        van.device("S1", "switch", "rear");
        position("S1", "left", true);
        assertEquals("camp", onlyProblem().element());
        assertTrue(onlyProblem().message().contains("it has none named left"), onlyProblem()::message);
    }

    @Test
    void aDeviceWithoutLoadThatIsListedAsOnIsTold() {
        van.on(camp, "F1", null);
        assertEquals(new AssemblyProblem("camp", "F1 is listed as on, but has no load"), onlyProblem());
    }

    @Test
    void aLoadOfAnotherArrangementIsNoneOfThisOnesBusiness() {
        van.arrangement("central").device("E9", "lamp", "rear");
        van.on(camp, "E9", null);
        assertEquals(List.of("central/E9#load"), PlanFind.on(van.plan(), "camp"));
        AssemblyResult without = Assembly.assemble(van.vehicle, null, null);
        assertEquals(List.of(), without.problems());
        assertEquals(List.of(), PlanFind.on(without.plan(), "camp"));
    }
}
