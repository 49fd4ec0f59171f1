// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.files.Terminals;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/** Wiring, boxes and cases: done completely, undone completely, or refused. */
class WiringEditsTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    @Test
    void addsADevice() {
        fleet.edit(() -> WiringEdits.addDevice(fleet.arrangement("spread"), "F2", fleet.library().getDevices().get(2),
                fleet.get(Place.class, "rear")));
        assertTrue(fleet.saved().contains("<devices name=\"F2\" part=\"box\" place=\"rear\"/>"));
        fleet.refuses("'F1' is already the name of a device in the same place",
                () -> WiringEdits.addDevice(fleet.arrangement("spread"), "F1", null, null));
        fleet.refuses("belong to a vehicle or an arrangement",
                () -> WiringEdits.addDevice(fleet.get(Place.class, "rear"), "F9", null, null));
    }

    @Test
    void addsACableWithTheCoresOfItsPart() {
        CablePart twin = fleet.library().getCables().get(1);
        fleet.edit(() -> WiringEdits.addCable(fleet.arrangement("central"), "W3", twin,
                Terminals.of(fleet.device("central/F1"), "2"), Terminals.of(fleet.device("E2"), "L+")));
        assertTrue(fleet.saved().contains("""
                    <cables name="W3" part="twin">
                      <cores name="1" colour="RD" a="F1.2" b="E2.L+"/>
                      <cores name="2" colour="BK"/>
                    </cables>
                """), fleet.saved());
        fleet.refuses("is in the arrangement central", () -> WiringEdits.addCable(fleet.arrangement("spread"), "W3", twin,
                Terminals.of(fleet.device("central/F1"), "2"), null));
        fleet.refuses("both ends", () -> WiringEdits.addCable(fleet.arrangement("spread"), "W3", twin,
                fleet.get(EarthPoint.class, "XE1"), fleet.get(EarthPoint.class, "XE1")));
    }

    @Test
    void setsSectionsByPersonAndByStudy() {
        fleet.edit(() -> WiringEdits.setSection(fleet.cable("central/W2"), number("4"), ChosenBy.SIZING));
        assertTrue(fleet.saved().contains("<cables name=\"W2\" part=\"single\" sectionMm2=\"4\" sectionBy=\"sizing\">"));
        fleet.edit(() -> WiringEdits.setSection(fleet.cable("central/W2"), number("2.5"), ChosenBy.PERSON));
        fleet.refuses("the section of the vehicle heron > arrangement central > cable W2 was chosen by a person",
                () -> WiringEdits.setSection(fleet.cable("central/W2"), number("4"), ChosenBy.SIZING));
        fleet.edit(() -> WiringEdits.setSection(fleet.cable("central/W2"), null, ChosenBy.PERSON));
        fleet.edit(() -> WiringEdits.setSection(fleet.cable("central/W2"), number("4.00"), ChosenBy.SIZING));
        fleet.refuses("single is not made with 3 mm2",
                () -> WiringEdits.setSection(fleet.cable("central/W2"), number("3"), ChosenBy.PERSON));
        fleet.refuses("0 mm2 is no section",
                () -> WiringEdits.setSection(fleet.cable("central/W2"), number("0"), ChosenBy.PERSON));
        fleet.cable("W0").unsetSectionBy();
        fleet.refuses("belongs to the base vehicle",
                () -> WiringEdits.setSection(fleet.cable("W0"), number("2.5"), ChosenBy.SIZING));
    }

    @Test
    void setsPathsThatHangTogether() {
        Run first = fleet.get(Run.class, "R1");
        Run second = fleet.get(Run.class, "R2");
        fleet.edit(() -> WiringEdits.setPath(fleet.cable("central/W2"), List.of(second, first), ChosenBy.PERSON));
        assertTrue(fleet.saved().contains("path=\"R2 R1\" pathBy=\"person\""));
        fleet.edit(() -> WiringEdits.setPath(fleet.cable("central/W2"), List.of(first, second), ChosenBy.PERSON));
        fleet.refuses("was chosen by a person",
                () -> WiringEdits.setPath(fleet.cable("central/W2"), List.of(first), ChosenBy.SIZING));
        fleet.edit(() -> WiringEdits.setPath(fleet.cable("central/W2"), List.of(), ChosenBy.PERSON));
        assertFalse(fleet.cable("central/W2").isSetPathBy());
        fleet.refuses("a run is passed twice",
                () -> WiringEdits.setPath(fleet.cable("central/W2"), List.of(first, first), ChosenBy.PERSON));
        second.setTo(fleet.get(Place.class, "nose"));
        fleet.refuses("the run R2 does not begin where R1 ends",
                () -> WiringEdits.setPath(fleet.cable("central/W2"), List.of(first, second), ChosenBy.PERSON));
    }

    @Test
    void addsABond() {
        EarthPoint a = fleet.get(EarthPoint.class, "XE1");
        EarthPoint b = fleet.get(EarthPoint.class, "XE2");
        fleet.edit(() -> WiringEdits.addBond(fleet.vehicle(), "WE2", b, a, null));
        assertTrue(fleet.saved().contains("<bonds name=\"WE2\" a=\"XE2\" b=\"XE1\"/>"));
        fleet.refuses("not one with itself", () -> WiringEdits.addBond(fleet.vehicle(), "WE3", a, a, null));
        fleet.refuses("already the name", () -> WiringEdits.addBond(fleet.vehicle(), "WE1", a, b, null));
    }

    @Test
    void fitsProtectorsInTheOrderOfTheBox() {
        ProtectorPart blade = fleet.library().getProtectors().get(0);
        ProtectorPart strip = fleet.library().getProtectors().get(1);
        fleet.edit(() -> BoxEdits.fitProtector(fleet.device("central/F1"), "2", blade, ChosenBy.SIZING));
        assertEquals(List.of("1", "2", "3"),
                fleet.device("central/F1").getWays().stream().map(way -> way.getName()).toList());
        fleet.refuses("strip-60 (strip) does not fit way 1",
                () -> BoxEdits.fitProtector(fleet.device("central/F1"), "1", strip, ChosenBy.PERSON));
        fleet.refuses("has no way 9; there are 1, 2, 3",
                () -> BoxEdits.fitProtector(fleet.device("central/F1"), "9", blade, ChosenBy.PERSON));
        fleet.refuses("has no way 1; its part lamp has none",
                () -> BoxEdits.fitProtector(fleet.device("E1"), "1", blade, ChosenBy.PERSON));
        fleet.refuses("was chosen by a person",
                () -> BoxEdits.fitProtector(fleet.device("central/F1"), "3", blade, ChosenBy.SIZING));
        fleet.edit(() -> BoxEdits.fitProtector(fleet.device("central/F1"), "3", null, ChosenBy.PERSON));
        assertEquals(2, fleet.device("central/F1").getWays().size());
    }

    @Test
    void reservesAWayAndUsesItLater() {
        fleet.edit(() -> BoxEdits.reserveWay(fleet.device("central/F1"), "3"));
        assertTrue(fleet.saved().contains("<ways name=\"3\" spare=\"true\"/>"));
        fleet.edit(() -> BoxEdits.fitProtector(fleet.device("central/F1"), "3", fleet.library().getProtectors().get(0),
                ChosenBy.PERSON));
        assertTrue(fleet.saved().contains("<ways name=\"3\" protector=\"blade-10\" ratingBy=\"person\"/>"));
        fleet.device("central/F1").setPart(null);
        fleet.refuses("has no part yet", () -> BoxEdits.reserveWay(fleet.device("central/F1"), "2"));
    }

    @Test
    void setsLoadsOfACase() {
        Case parked = fleet.get(Case.class, "parked");
        fleet.edit(() -> CaseEdits.setLoad(parked, fleet.device("E1"), null, number("0.25"), number("30"), number("120")));
        assertTrue(fleet.saved().contains("<demands device=\"E1\" factor=\"0.25\" onS=\"30\" periodS=\"120\"/>"));
        fleet.edit(() -> CaseEdits.setLoad(parked, fleet.device("E1"), "D", null, null, null));
        assertEquals(3, parked.getDemands().size());
        fleet.edit(() -> CaseEdits.removeLoad(parked, fleet.device("E1"), "D"));
        fleet.refuses("is not listed in the case parked", () -> CaseEdits.removeLoad(parked, fleet.device("E1"), "D"));
        fleet.refuses("draws nothing: its part battery has no demand",
                () -> CaseEdits.setLoad(parked, fleet.device("G1"), null, null, null, null));
        fleet.refuses("has no demand X", () -> CaseEdits.setLoad(parked, fleet.device("E1"), "X", null, null, null));
        fleet.refuses("less than nothing", () -> CaseEdits.setLoad(parked, fleet.device("E1"), null, number("-1"), null, null));
        fleet.refuses("both the seconds on and the period",
                () -> CaseEdits.setLoad(parked, fleet.device("E1"), null, null, number("1"), null));
        fleet.refuses("70 s on in a period of 60 s is no duty",
                () -> CaseEdits.setLoad(parked, fleet.device("E1"), null, null, number("70"), number("60")));
    }

    @Test
    void setsPositionsOfSwitches() {
        Case parked = fleet.get(Case.class, "parked");
        fleet.edit(() -> CaseEdits.setPosition(parked, fleet.device("S1"), null, false));
        assertTrue(fleet.saved().contains("<positions device=\"S1\" closed=\"false\"/>"));
        fleet.edit(() -> CaseEdits.setPosition(parked, fleet.device("S1"), "S", true));
        assertEquals(2, parked.getPositions().size());
        fleet.edit(() -> CaseEdits.setPosition(parked, fleet.device("S1"), null, null));
        fleet.refuses("no contact that is moved by hand", () -> CaseEdits.setPosition(parked, fleet.device("E1"), null, true));
        fleet.refuses("has no hand contact Q", () -> CaseEdits.setPosition(parked, fleet.device("S1"), "Q", true));
    }
}
