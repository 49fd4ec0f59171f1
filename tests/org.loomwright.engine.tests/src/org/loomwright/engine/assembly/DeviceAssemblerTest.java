// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Return;
import org.loomwright.model.vehicle.ReturnBy;
import org.loomwright.model.vehicle.VehicleFactory;

class DeviceAssemblerTest {
    private final TestVehicle van = TestVehicle.simple();

    private String place(Plan plan, String device) {
        return plan.places().get(PlanFind.device(plan, device).place()).id();
    }

    private String zone(Plan plan, String device) {
        return plan.zones().get(PlanFind.device(plan, device).zone()).id();
    }

    @Test
    void devicesOfTheVehicleComeBeforeThoseOfTheArrangement() {
        van.arrangement("central").device("F2", "box", "rear");
        assertEquals(List.of("G1", "F1", "E1", "central/F2"), van.plan().devices().stream().map(Plan.Device::id).toList());
        assertEquals("F2", PlanFind.device(van.plan(), "central/F2").designation());
        assertEquals("central", van.plan().arrangement());
    }

    @Test
    void idsAreTheFragmentsOfTheFile() {
        van.arrangement("central").device("F2", "box", "rear");
        Device device = van.device("F2");
        assertEquals(Fragments.of(device), ModelIds.of(device));
        assertEquals(Fragments.of(van.attachment("F2.30")), ModelIds.of(van.attachment("F2.30")));
        assertEquals(Fragments.of(van.vehicle), ModelIds.of(van.vehicle));
        van.cable("W9", "1.5", "F2.30", "G1.30");
        var core = van.arrangement().getCables().get(0).getCores().get(0);
        assertEquals(Fragments.of(core), ModelIds.of(core));
        assertEquals("central/W9/@cores.0", ModelIds.of(core));
    }

    @Test
    void terminalsOfDevicesComeBeforeEarthPoints() {
        van.body("chassis");
        van.earthPoint("XE1", "chassis", "middle");
        Plan plan = van.plan();
        List<String> ids = plan.terminals().stream().map(Plan.Terminal::id).toList();
        assertEquals(List.of("G1.30", "G1.31", "F1.30", "F1.1", "F1.2", "F1.3", "E1.L+", "E1.L-", "XE1"), ids);
        Plan.Terminal point = plan.terminals().get(8);
        assertEquals("earth", point.role());
        assertEquals(-1, point.device());
        assertEquals("chassis", plan.bodies().get(point.body()).id());
        assertEquals("middle", plan.places().get(point.place()).id());
    }

    @Test
    void anArrangementMayPlaceADeviceElsewhere() {
        van.arrangement("central");
        Placement placement = VehicleFactory.eINSTANCE.createPlacement();
        placement.setDevice(van.device("E1"));
        placement.setPlace(TestVehicle.find(van.vehicle.getPlaces(), "middle"));
        van.arrangement().getPlacements().add(placement);
        assertEquals("middle", place(van.plan(), "E1"));
        assertEquals(1000, PlanFind.byId(van.plan().cables(), Plan.Cable::id, "W2").lengthParts().pathMm());
        assertEquals("rear", place(Assembly.assemble(van.vehicle, null, null).plan(), "E1"));
    }

    @Test
    void aMountedDeviceSitsWhereItsHostSits() {
        van.device("K1", "relay", null).setMountedIn(van.device("F1"));
        van.device("K2", "relay", null).setMountedIn(van.device("K1"));
        Plan plan = van.plan();
        assertEquals("front", place(plan, "K2"));
        assertEquals("bay", zone(plan, "K2"));
        assertEquals("K1", plan.devices().get(PlanFind.device(plan, "K2").mountedIn()).id());
    }

    @Test
    void devicesMountedInEachOtherAreTold() {
        van.device("K1", "relay", null).setMountedIn(van.device("F1"));
        van.device("F1").setPlace(null);
        van.device("F1").setMountedIn(van.device("K1"));
        assertTrue(van.assembled().problems().stream().anyMatch(p -> p.message().contains("mounted in itself")));
    }

    @Test
    void aDeviceOnARunIsInTheRunsZone() {
        van.device("E1").setPlace(null);
        van.device("E1").setRun(TestVehicle.find(van.vehicle.getRuns(), "R1"));
        van.device("E1").setAtMm(TestParts.number("250"));
        Plan plan = van.plan();
        assertEquals("bay", zone(plan, "E1"));
        assertEquals(250, PlanFind.device(plan, "E1").atMm());
        assertEquals(-1, PlanFind.device(plan, "E1").place());
    }

    @Test
    void aDeviceBeyondTheEndOfItsRunIsTold() {
        van.device("E1").setPlace(null);
        van.device("E1").setRun(TestVehicle.find(van.vehicle.getRuns(), "R1"));
        van.device("E1").setAtMm(TestParts.number("1250"));
        AssemblyProblem problem = van.assembled().problems().get(0);
        assertEquals("E1", problem.element());
        assertTrue(problem.message().startsWith("atMm on run R1 is 1250; expected 0 to 1000 mm"), problem::message);
    }

    @Test
    void theOpenChoiceOfAReturnComesFromTheArrangement() {
        van.arrangement("central");
        Return choice = VehicleFactory.eINSTANCE.createReturn();
        choice.setDevice(van.device("E1"));
        choice.setBy(ReturnBy.STRUCTURE);
        van.arrangement().getReturns().add(choice);
        assertEquals("structure", PlanFind.device(van.plan(), "E1").returnPolicy());
        assertNull(PlanFind.device(van.plan(), "G1").returnPolicy());
    }

    @Test
    void whatADeviceSaysOfItselfIsKept() {
        van.device("E1").setExisting(true);
        van.device("E1").setPriority(2);
        van.device("E1").setMustStayLive(true);
        Plan.Device lamp = PlanFind.device(van.plan(), "E1");
        assertTrue(lamp.existing() && lamp.mustStayLive());
        assertEquals(2, lamp.priority());
        assertEquals("lamp", lamp.kind());
        assertEquals("lamp", lamp.part());
        assertEquals(0, PlanFind.device(van.plan(), "G1").priority());
    }
}
