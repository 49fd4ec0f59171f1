// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.VehicleFactory;

class CableAssemblerTest {
    private final TestVehicle van = TestVehicle.simple();

    private static Plan.Cable cable(Plan plan, String id) {
        return plan.cables().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private static Plan.Conductor conductor(Plan plan, String id) {
        return plan.conductors().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private static List<String> runs(Plan plan, Plan.Cable cable) {
        return cable.path().stream().map(r -> plan.runs().get(r).id()).toList();
    }

    private AssemblyProblem onlyProblem() {
        List<AssemblyProblem> problems = van.assembled().problems();
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    @Test
    void lengthIsPathTailsAndSlack() {
        // R1 states 1000 mm, R2 is 3000 mm as the crow flies; two tails of 150 mm; slack 5 % of 4000 mm
        Plan.Cable w2 = cable(van.plan(), "W2");
        assertEquals(4000, w2.lengthParts().pathMm());
        assertEquals(200, w2.lengthParts().slackMm());
        assertEquals(4500, w2.lengthMm());
        assertTrue(Double.isNaN(w2.lengthParts().measuredMm()));
    }

    @Test
    void tailsOfTheCableGoBeforeThePractice() {
        van.cable("W2").setTailAMm(TestParts.number("0"));
        van.cable("W2").setTailBMm(TestParts.number("400"));
        assertEquals(4600, cable(van.plan(), "W2").lengthMm());
    }

    @Test
    void measuredLengthGoesBeforeTheComputedOne() {
        van.cable("W2").setLengthMm(TestParts.number("5120"));
        Plan.Cable w2 = cable(van.plan(), "W2");
        assertEquals(5120, w2.lengthMm());
        assertEquals(5120, w2.lengthParts().measuredMm());
        assertEquals(4000, w2.lengthParts().pathMm());
    }

    @Test
    void betweenDevicesAtOnePlaceThePathIsNothing() {
        Plan.Cable w1 = cable(van.plan(), "W1");
        assertEquals(List.of(), w1.path());
        assertEquals(300, w1.lengthMm());
    }

    @Test
    void betweenADeviceAndTheOneItIsMountedInThePathIsNothing() {
        van.device("F1").setPlace(null);
        van.device("F1").setMountedIn(van.device("G1"));
        assertEquals(300, cable(van.plan(), "W1").lengthMm());
        assertEquals(4500, cable(van.plan(), "W2").lengthMm());
    }

    @Test
    void mountedDevicesWithoutAnyPlaceStillJoinByTheirTails() {
        van.device("H1", "bar", null);
        van.device("H2", "lamp", null).setMountedIn(van.device("H1"));
        van.cable("W9", "1.5", "H1.N1", "H2.L-");
        assertEquals(300, cable(van.plan(), "W9").lengthMm());
    }

    @Test
    void theShortestWayIsTaken() {
        van.place("left", "2000 500 800", "cabin");
        van.run("R3", "front", "left", "900");
        van.run("R4", "left", "rear", "2000");
        Plan plan = van.plan();
        assertEquals(List.of("R3", "R4"), runs(plan, cable(plan, "W2")));
        assertEquals(List.of("R4", "R3"), runs(plan, cable(plan, "W3")));
    }

    @Test
    void aFixedPathIsKept() {
        van.run("R3", "front", "rear", "100");
        van.path("W2", "R1", "R2");
        Plan plan = van.plan();
        assertEquals(List.of("R1", "R2"), runs(plan, cable(plan, "W2")));
        assertEquals(List.of("R3"), runs(plan, cable(plan, "W3")));
    }

    @Test
    void aFixedPathMayBeGivenFromEitherEnd() {
        van.path("W3", "R1", "R2");
        Plan plan = van.plan();
        assertEquals(List.of("R2", "R1"), runs(plan, cable(plan, "W3")));
    }

    @Test
    void aFixedPathThatDoesNotJoinTheEndsIsTold() {
        van.path("W2", "R1");
        AssemblyResult result = van.assembled();
        assertEquals("W2", onlyProblem().element());
        assertTrue(onlyProblem().message().contains("path R1"), onlyProblem()::message);
        assertFalse(result.plan().conductors().stream().anyMatch(c -> c.id().equals("W2")));
    }

    @Test
    void aDeviceOnARunIsReachedFromItsNearerSide() {
        van.device("E1").setPlace(null);
        van.device("E1").setRun(TestVehicle.find(van.vehicle.getRuns(), "R2"));
        van.device("E1").setAtMm(TestParts.number("600"));
        Plan plan = van.plan();
        assertEquals(1600, cable(plan, "W2").lengthParts().pathMm());
        assertEquals(List.of("R1", "R2"), runs(plan, cable(plan, "W2")));
        assertEquals(List.of("R2", "R1"), runs(plan, cable(plan, "W3")));
    }

    @Test
    void noRunsBetweenTheEndsIsTold() {
        van.vehicle.getRuns().remove(1);
        List<AssemblyProblem> problems = van.assembled().problems();
        assertEquals(List.of("W2", "W3"), problems.stream().map(AssemblyProblem::element).toList());
        assertTrue(problems.get(0).message().contains("no runs lead"), problems::toString);
    }

    @Test
    void noRunsMatterNotWhenTheLengthWasMeasured() {
        van.vehicle.getRuns().clear();
        van.cable("W2").setLengthMm(TestParts.number("4300"));
        van.cable("W3").setLengthMm(TestParts.number("4300"));
        Plan plan = van.plan();
        assertEquals(4300, cable(plan, "W2").lengthMm());
        assertTrue(Double.isNaN(cable(plan, "W2").lengthParts().pathMm()));
    }

    @Test
    void aRunWithoutAnyLengthIsToldAndNotUsed() {
        van.vehicle.getPlaces().get(2).setXMm(null);
        List<AssemblyProblem> problems = van.assembled().problems();
        assertEquals("R2", problems.get(0).element());
    }

    @Test
    void aCableIsAsLongAsItsLongestCoreNeeds() {
        van.body("chassis");
        van.earthPoint("XE1", "chassis", "middle");
        van.cable("W9", "1.5", "XE1", "E1.L-", "F1.1", "E1.L+");
        assertEquals(4500, cable(van.plan(), "W9").lengthMm());
    }

    @Test
    void resistanceIsThatOfThePart() {
        // ISO 6722-1: 7.60 milliohm/m for 2.5 mm2, as the part states
        Plan.Conductor w2 = conductor(van.plan(), "W2");
        assertEquals(0.0076, w2.r20MaxOhmPerM());
        assertEquals(0.017241 / 2.5, w2.r20NominalOhmPerM());
    }

    @Test
    void jointsAreTheAgedEndsOfThePractice() {
        assertEquals(2 * 0.20 / 1000, conductor(van.plan(), "W2").jointsOhm());
    }

    @Test
    void aCoreMayHaveItsOwnSection() {
        van.cable("W9", "1.5", "F1.1", "E1.L+", "G1.31", "E1.L-").getCores().get(1).setSectionMm2(TestParts.number("2.50"));
        Plan plan = van.plan();
        assertEquals(1.5, conductor(plan, "W9#1").sectionMm2());
        assertEquals(2.5, conductor(plan, "W9#2").sectionMm2());
        assertEquals(0.0076, conductor(plan, "W9#2").r20MaxOhmPerM());
    }

    @Test
    void coresAreNamedByColourWhereTheyDiffer() {
        Cable w9 = van.cable("W9", "1.5", "F1.1", "E1.L+", "G1.31", "E1.L-");
        w9.getCores().get(0).setColour("RD");
        w9.getCores().get(1).setColour("BK");
        conductor(van.plan(), "W9#BK");
        w9.getCores().get(1).setColour("RD");
        conductor(van.plan(), "W9#2");
    }

    @Test
    void aSectionNotOnOfferIsTold() {
        van.cable("W2").setSectionMm2(TestParts.number("3"));
        assertEquals("W2", onlyProblem().element());
        assertTrue(onlyProblem().message().endsWith("expected one of 1.5, 2.5, 16"), onlyProblem()::message);
    }

    @Test
    void aCableWithoutSectionIsTold() {
        van.cable("W2").setSectionMm2(null);
        assertTrue(onlyProblem().message().contains("no section"), onlyProblem()::message);
    }

    @Test
    void aRowWithoutResistanceIsTold() {
        van.parts.cablePart("single").getRows().get(2).setR20MaxMilliohmPerM(null);
        assertEquals("W1", onlyProblem().element());
    }

    @Test
    void aCableWithoutPartIsTold() {
        van.cable("W2").setPart(null);
        assertEquals(new AssemblyProblem("W2", "the cable has no part; it is left out"), onlyProblem());
    }

    @Test
    void anUnknownTerminalIsToldWithThoseThatExist() {
        van.cable("W2").getCores().get(0).setB(van.attachment("E1.X7"));
        assertEquals(new AssemblyProblem("W2", "end b: part lamp of E1 has no terminal X7; expected one of L+, L-"),
                onlyProblem());
    }

    @Test
    void aCoreWithOneEndIsTold() {
        van.cable("W2").getCores().get(0).setB(null);
        assertTrue(onlyProblem().message().contains("one end only"), onlyProblem()::message);
    }

    @Test
    void aSpareCoreConductsNothing() {
        Cable w9 = van.cable("W9", "1.5", "F1.1", "E1.L+", "G1.31", "E1.L-");
        w9.getCores().get(1).setSpare(true);
        assertFalse(van.plan().conductors().stream().anyMatch(c -> c.id().equals("W9#2")));
    }

    @Test
    void aCableLiesInTheHottestZoneOfItsRunsAndEnds() {
        Plan plan = van.plan();
        assertEquals("bay", plan.zones().get(cable(plan, "W2").zone()).id());
        van.zone("exhaust", "-20", "120");
        TestVehicle.find(van.vehicle.getRuns(), "R2").setZone(TestVehicle.find(van.vehicle.getZones(), "exhaust"));
        plan = van.plan();
        assertEquals("exhaust", plan.zones().get(cable(plan, "W2").zone()).id());
        assertEquals("bay", plan.zones().get(cable(plan, "W1").zone()).id());
    }

    @Test
    void ductsAreToldForEachRunOfThePath() {
        Duct duct = VehicleFactory.eINSTANCE.createDuct();
        duct.setName("D1");
        duct.getRuns().add(TestVehicle.find(van.vehicle.getRuns(), "R2"));
        van.vehicle.getDucts().add(duct);
        van.cable("W2").getDucts().add(duct);
        Plan plan = van.plan();
        assertEquals(List.of("", "D1"), cable(plan, "W2").ducts());
        assertEquals(List.of("", ""), cable(plan, "W3").ducts());
    }

    @Test
    void aSectionThatSizingChoseIsMarked() {
        van.cable("W2").setSectionBy(ChosenBy.SIZING);
        Plan plan = van.plan();
        assertTrue(cable(plan, "W2").chosenBySizing());
        assertFalse(cable(plan, "W3").chosenBySizing());
    }

    @Test
    void sectionsOnOfferAndTheTableComeRising() {
        Plan.Cable w2 = cable(van.plan(), "W2");
        assertEquals(List.of(1.5, 2.5, 16.0), w2.options().stream().map(Plan.SectionOption::sectionMm2).toList());
        assertEquals(List.of(1.5, 2.5, 16.0), w2.ampacity().sectionsMm2());
        assertEquals(List.of(20.0, 30.0, 100.0), w2.ampacity().amps());
    }

    @Test
    void aCableOfAnArrangementBearsItsPath() {
        van.arrangement("central").device("F2", "box", "rear");
        van.cable("W20", "16", "G1.30", "F2.30");
        Plan plan = van.plan();
        assertEquals(4500, cable(plan, "central/W20").lengthMm());
        conductor(plan, "central/W20");
        assertTrue(plan.terminals().stream().anyMatch(t -> t.id().equals("central/F2.30")));
    }

    @Test
    void aDeviceOfAnotherArrangementIsNotThere() {
        van.arrangement("central").device("F2", "box", "rear");
        van.cable("W20", "16", "G1.30", "F2.30");
        List<AssemblyProblem> problems = Assembly.assemble(van.vehicle, null, null).problems();
        assertEquals(List.of(), problems);
        van.vehicle.getCables().add(van.arrangement().getCables().get(0));
        problems = Assembly.assemble(van.vehicle, null, null).problems();
        assertEquals("end b: central/F2 is not part of this arrangement", problems.get(0).message());
    }
}
