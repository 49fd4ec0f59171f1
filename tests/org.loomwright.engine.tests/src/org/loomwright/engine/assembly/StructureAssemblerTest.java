// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.BondCondition;
import org.loomwright.model.vehicle.ReturnPolicy;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Waiver;

class StructureAssemblerTest {
    private final TestVehicle van = new TestVehicle();

    private Plan.Bond bond() {
        return van.plan().bonds().get(0);
    }

    private Bond twoBodiesAndABond() {
        van.body("chassis");
        van.body("engine");
        van.earthPoint("XE1", "chassis", null);
        van.earthPoint("XE2", "engine", null);
        return van.bond("WE1", "XE1", "XE2");
    }

    @Test
    void aRunWithoutLengthIsAsLongAsTheStraightWay() {
        van.place("a", "0 0 0", null);
        van.place("b", "300 400 1200", null);
        van.run("R1", "a", "b", null);
        van.run("R2", "a", "b", "1500");
        assertEquals(1300, van.plan().runs().get(0).lengthMm());
        assertEquals(1500, van.plan().runs().get(1).lengthMm());
    }

    @Test
    void aRunTakesTheHotterZoneOfItsEndsUnlessItStatesOne() {
        van.zone("cabin", "-10", "45");
        van.zone("bay", "-20", "80");
        van.place("a", "0 0 0", "cabin");
        van.place("b", "1 0 0", "bay");
        van.place("c", "2 0 0", null);
        van.run("R1", "a", "b", null);
        van.run("R2", "c", "a", null);
        van.run("R3", "a", "b", null).setZone(TestVehicle.find(van.vehicle.getZones(), "cabin"));
        Plan plan = van.plan();
        assertEquals(List.of("bay", "cabin", "cabin"),
                plan.runs().stream().map(run -> plan.zones().get(run.zone()).id()).toList());
    }

    @Test
    void aZoneThatStatesNoAmbientTakesThePractices() {
        van.zone("roof", null, null);
        assertEquals(-20, van.plan().zones().get(0).ambientMinC());
        assertEquals(40, van.plan().zones().get(0).ambientMaxC());
    }

    @Test
    void aStrapIsItsLengthAndTwoJoints() {
        // 1.2 milliohm/m over 0.35 m and two bolted joints of 0.10 milliohm: 0.42 + 0.20 = 0.62 milliohm
        Bond strap = twoBodiesAndABond();
        strap.setPart(van.parts.library.getStraps().get(0));
        strap.setLengthMm(TestParts.number("350"));
        strap.setCondition(BondCondition.WORN);
        assertEquals(0.00062, bond().ohm(), 1e-15);
        assertEquals(16, bond().sectionMm2());
        assertEquals("worn", bond().condition());
    }

    @Test
    void aStatedBondResistanceGoesBeforeTheComputedOne() {
        Bond strap = twoBodiesAndABond();
        strap.setPart(van.parts.library.getStraps().get(0));
        strap.setMilliohm(TestParts.number("2.4"));
        assertEquals(0.0024, bond().ohm());
    }

    @Test
    void aBoltedJointIsThePractices() {
        twoBodiesAndABond();
        assertEquals(0.0001, bond().ohm());
        assertTrue(Double.isNaN(bond().sectionMm2()));
        assertNull(bond().part());
    }

    @Test
    void aStrapWithoutLengthIsTold() {
        twoBodiesAndABond().setPart(van.parts.library.getStraps().get(0));
        AssemblyResult result = van.assembled();
        assertEquals("WE1", result.problems().get(0).element());
        assertEquals(List.of(), result.plan().bonds());
    }

    @Test
    void anEarthPointTakesThePracticesContactUnlessItStatesOne() {
        van.body("chassis");
        van.earthPoint("XE1", "chassis", null);
        van.earthPoint("XE2", "chassis", null).setMilliohm(TestParts.number("0.05"));
        assertEquals(0.0002, van.plan().terminals().get(0).contactOhm());
        assertEquals(0.00005, van.plan().terminals().get(1).contactOhm());
    }

    @Test
    void seamsAndBodiesKeepTheirFigures() {
        van.body("chassis").setMilliohm(TestParts.number("0.2"));
        van.body("cab").setReturnPolicy(ReturnPolicy.FORBIDDEN);
        BodyLink seam = VehicleFactory.eINSTANCE.createBodyLink();
        seam.setName("BL1");
        seam.setA(van.vehicle.getBodies().get(0));
        seam.setB(van.vehicle.getBodies().get(1));
        van.vehicle.getBodyLinks().add(seam);
        Plan plan = van.plan();
        assertEquals(0.0002, plan.bodies().get(0).ohm());
        assertNull(plan.bodies().get(0).policy());
        assertEquals(Plan.ReturnPolicy.FORBIDDEN, plan.bodies().get(1).policy());
        assertEquals(0.0001, plan.bodyLinks().get(0).ohm());
        seam.setMilliohm(TestParts.number("0.03"));
        assertEquals(0.00003, van.plan().bodyLinks().get(0).ohm());
    }

    @Test
    void aDomainWithoutVoltageIsToldAndLeftOut() {
        van.device("G1", "battery", null);
        van.domain("12V", null, "G1.30");
        AssemblyResult result = van.assembled();
        assertEquals("12V", result.problems().get(0).element());
        assertEquals(List.of(), result.plan().domains());
    }

    @Test
    void aDomainWithoutSourceIsToldAndKept() {
        van.domain("12V", "12", null);
        AssemblyResult result = van.assembled();
        assertEquals("12V", result.problems().get(0).element());
        assertEquals(-1, result.plan().domains().get(0).sourceTerminal());
    }

    @Test
    void waiversComeAlong() {
        Waiver waiver = VehicleFactory.eINSTANCE.createWaiver();
        waiver.setRule("drop-class");
        waiver.setElement("E1");
        waiver.setReason("seldom used");
        van.vehicle.getWaivers().add(waiver);
        assertEquals(List.of(new Plan.Waiver("drop-class", "E1", "seldom used", null, null)), van.plan().waivers());
    }
}
