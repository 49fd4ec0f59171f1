// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.files.Terminals;
import org.loomwright.model.vehicle.ArrangementStatus;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.ReturnBy;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Waiver;

/** Connecting, placing, renaming and the like: done completely, undone completely, or refused. */
class VehicleEditsTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
    }

    @Test
    void connectsToATerminalOfADevice() {
        Core core = fleet.get(Core.class, "central/W2/1");
        fleet.edit(() -> VehicleEdits.connect(core, CoreEnd.B, fleet.device("E2"), "L+"));
        assertTrue(fleet.saved().contains("<cores name=\"1\" a=\"G1.30\" b=\"E2.L+\"/>"));
    }

    @Test
    void connectsToAnEarthPointAndIsNoLongerSpare() {
        Core core = fleet.get(Core.class, "central/W1/RD");
        core.setSpare(true);
        fleet.edit(() -> VehicleEdits.connect(core, CoreEnd.A, fleet.get(EarthPoint.class, "XE2")));
        assertTrue(fleet.saved().contains("<cores name=\"RD\" a=\"XE2\" b=\"E1.L+\"/>"));
    }

    @Test
    void refusesConnectionsThatMakeNoSense() {
        Core core = fleet.get(Core.class, "central/W1/RD");
        Core shared = fleet.get(Core.class, "W0/1");
        fleet.refuses("has no terminal 7; its part box has 30, 1, 2, 3",
                () -> VehicleEdits.connect(core, CoreEnd.A, fleet.device("central/F1"), "7"));
        fleet.refuses("has no terminal 7",
                () -> VehicleEdits.connect(core, CoreEnd.A, Terminals.of(fleet.device("central/F1"), "7")));
        fleet.refuses("is in the arrangement spread",
                () -> VehicleEdits.connect(core, CoreEnd.A, fleet.device("spread/F1"), "1"));
        fleet.refuses("is in the arrangement central",
                () -> VehicleEdits.connect(shared, CoreEnd.B, fleet.device("central/F1"), "1"));
        fleet.refuses("both ends", () -> VehicleEdits.connect(core, CoreEnd.A, fleet.device("E1"), "L+"));
        fleet.refuses("no terminal or earth point given", () -> VehicleEdits.connect(core, CoreEnd.A, null));
        OpenFleet other = new OpenFleet(folder.resolve("other"));
        fleet.refuses("belongs to another vehicle", () -> VehicleEdits.connect(core, CoreEnd.A, other.device("E1"), "L-"));
    }

    @Test
    void disconnects() {
        Core core = fleet.get(Core.class, "central/W1/BK");
        core.setAOrder(2);
        fleet.edit(() -> VehicleEdits.disconnect(core, CoreEnd.A));
        assertTrue(fleet.saved().contains("<cores name=\"BK\" b=\"E1.L-\"/>"));
        assertSame(core.getB(), CoreEnd.A.other().of(core));
    }

    @Test
    void placesADeviceForAllArrangements() {
        fleet.edit(() -> VehicleEdits.place(fleet.device("E2"), fleet.get(Place.class, "hub")));
        assertTrue(fleet.saved().contains("<devices name=\"E2\" part=\"lamp\" place=\"hub\"/>"));
    }

    @Test
    void placesASharedDeviceInOneArrangementOnly() {
        Place nose = fleet.get(Place.class, "nose");
        fleet.edit(() -> VehicleEdits.place(fleet.arrangement("spread"), fleet.device("E1"), nose));
        assertTrue(fleet.saved().contains("<placements device=\"E1\" place=\"nose\"/>"));
        assertEquals("rear", fleet.device("E1").getPlace().getName());
        fleet.edit(() -> VehicleEdits.place(fleet.arrangement("central"), fleet.device("S1"), nose));
        assertEquals(1, fleet.arrangement("central").getPlacements().size());
        fleet.edit(() -> VehicleEdits.place(fleet.arrangement("central"), fleet.device("S1"), fleet.get(Place.class, "rear")));
        assertEquals(0, fleet.arrangement("central").getPlacements().size());
    }

    @Test
    void placesAnArrangementsOwnDevice() {
        fleet.edit(() -> VehicleEdits.place(fleet.arrangement("central"), fleet.device("central/F1"),
                fleet.get(Place.class, "hub")));
        assertEquals("hub", fleet.device("central/F1").getPlace().getName());
        fleet.refuses("is in the arrangement central",
                () -> VehicleEdits.place(fleet.arrangement("spread"), fleet.device("central/F1"), fleet.get(Place.class, "hub")));
    }

    @Test
    void placesADeviceOnARun() {
        Run run = fleet.get(Run.class, "R1");
        fleet.edit(() -> VehicleEdits.placeOnRun(fleet.device("E1"), run, new BigDecimal("120")));
        assertTrue(fleet.saved().contains("<devices name=\"E1\" part=\"lamp\" run=\"R1\" atMm=\"120\"/>"));
        fleet.refuses("1000 mm is not on the run R1, which is 900 mm long",
                () -> VehicleEdits.placeOnRun(fleet.device("E2"), run, new BigDecimal("1000")));
        fleet.refuses("-1 mm is not on the run", () -> VehicleEdits.placeOnRun(fleet.device("E2"), run, new BigDecimal("-1")));
    }

    @Test
    void renamingADeviceTakesEverythingAlong() {
        fleet.edit(() -> VehicleEdits.rename(fleet.device("central/F1"), "X20"));
        String text = fleet.saved();
        assertTrue(text.contains("a=\"X20.1\" b=\"E1.L+\""), text);
        assertTrue(text.contains("<waivers rule=\"terminal-fit\" element=\"central/X20.1\""), text);
        assertTrue(text.contains("<items element=\"central/X20\" x=\"30\""), text);
        assertTrue(text.contains("a=\"F1.2\" b=\"E2.L+\""), "the other arrangement's F1");
    }

    @Test
    void renamingAnArrangementTakesAllFragmentsAlong() {
        fleet.edit(() -> VehicleEdits.rename(fleet.arrangement("central"), "aft"));
        String text = fleet.saved();
        assertFalse(text.contains("\"central"), text);
        assertTrue(text.contains("element=\"aft/W1/RD\""));
        assertTrue(text.contains("adopted=\"aft\""));
    }

    @Test
    void renamingTwiceBackAndForthChangesNothing() {
        String before = fleet.saved();
        VehicleEdits.rename(fleet.device("central/F1"), "X20");
        VehicleEdits.rename(fleet.device("central/X20"), "F1");
        VehicleEdits.rename(fleet.device("central/F1"), "F1");
        assertEquals(before, fleet.saved());
    }

    @Test
    void refusesNamesThatAreNoneOrTaken() {
        fleet.refuses("'E 1' is no name", () -> VehicleEdits.rename(fleet.device("E1"), "E 1"));
        fleet.refuses("is no name", () -> VehicleEdits.rename(fleet.device("E1"), ""));
        fleet.refuses("is no name", () -> VehicleEdits.rename(fleet.device("E1"), null));
        fleet.refuses("has a dot", () -> VehicleEdits.rename(fleet.device("E1"), "E1.1"));
        fleet.refuses("'XE1' is already the name of an earth point in the same place",
                () -> VehicleEdits.rename(fleet.device("E1"), "XE1"));
        fleet.refuses("terminals are named by the device's part",
                () -> VehicleEdits.rename(Terminals.of(fleet.device("E1"), "L+"), "L9"));
        VehicleEdits.rename(fleet.get(Place.class, "hub"), "hub.2");
        assertEquals(1, fleet.saved().split("\"hub.2\" xMm").length - 1);
    }

    @Test
    void adoptsAnArrangement() {
        fleet.edit(() -> VehicleEdits.adopt(fleet.arrangement("spread")));
        assertEquals(ArrangementStatus.ADOPTED, fleet.arrangement("spread").getStatus());
        assertEquals(ArrangementStatus.DRAFT, fleet.arrangement("central").getStatus());
        assertTrue(fleet.saved().contains("adopted=\"spread\""));
    }

    @Test
    void statesHowALoadReturns() {
        fleet.edit(() -> VehicleEdits.setReturn(fleet.arrangement("central"), fleet.device("E2"), ReturnBy.STRUCTURE));
        assertTrue(fleet.saved().contains("<returns device=\"E2\" by=\"structure\"/>"));
        fleet.edit(() -> VehicleEdits.setReturn(fleet.arrangement("central"), fleet.device("E2"), ReturnBy.OWN));
        fleet.edit(() -> VehicleEdits.setReturn(fleet.arrangement("central"), fleet.device("E2"), null));
        assertEquals(1, fleet.arrangement("central").getReturns().size());
    }

    @Test
    void acceptsAFindingOnce() {
        fleet.edit(() -> VehicleEdits.waive(fleet.vehicle(), "drop-class", "central/W2", "short", "owner", "2026-06-01"));
        assertEquals(3, fleet.vehicle().getWaivers().size());
        Waiver again = VehicleEdits.waive(fleet.vehicle(), "drop-class", "central/W2", "still short", "owner", "2026-06-02");
        assertEquals(3, fleet.vehicle().getWaivers().size());
        assertEquals("still short", again.getReason());
        fleet.refuses("with a reason only", () -> VehicleEdits.waive(fleet.vehicle(), "x", "G1", " ", "owner", null));
        fleet.refuses("names a rule and an element", () -> VehicleEdits.waive(fleet.vehicle(), "x", null, "y", "owner", null));
    }

    @Test
    void nextFreeNames() {
        assertEquals("W3", NewNames.free(fleet.arrangement("central"), "W"));
        assertEquals("XE3", NewNames.free(fleet.vehicle(), "XE"));
        assertNull(fleet.resource().getEObject("XE3"));
    }
}
