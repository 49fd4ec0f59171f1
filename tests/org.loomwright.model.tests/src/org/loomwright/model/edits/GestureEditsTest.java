// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/** Edits that gestures make; each is undone and redone by the fleet. */
class GestureEditsTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
    }

    private DevicePart part(String name) {
        return DeviceEdits.part(fleet.vehicle(), name);
    }

    private WireEnd end(String id) {
        return WireEnd.find(fleet.vehicle(), id);
    }

    private Connections connections() {
        return Connections.of(fleet.vehicle(), fleet.arrangement("central"));
    }

    @Test
    void devicesAreNamedByTheirClassLetterAndHideNothing() {
        assertEquals("E", ClassLetters.of(part("lamp")));
        assertEquals("X", ClassLetters.of(part("base/box")));
        assertEquals("A", ClassLetters.of(null));
        // F1 and W1 of the arrangements are taken for the vehicle too
        assertEquals("F2", NewNames.unshadowed(fleet.vehicle(), "F"));
        assertEquals("W3", NewNames.unshadowed(fleet.vehicle(), "W"));
        assertEquals("W3", NewNames.unshadowed(fleet.arrangement("central"), "W"));
        assertEquals("W2", NewNames.unshadowed(fleet.arrangement("spread"), "W"));
    }

    @Test
    void devicesAreAddedAtAPlaceOnARunAndInABox() {
        Arrangement central = fleet.arrangement("central");
        assertSame(central, DeviceEdits.holder(fleet.vehicle(), central, part("box")));
        assertSame(fleet.vehicle(), DeviceEdits.holder(fleet.vehicle(), central, part("lamp")));
        fleet.edit(() -> DeviceEdits.add(fleet.vehicle(), part("lamp"), fleet.get(Place.class, "nose")));
        assertSame(fleet.get(Place.class, "nose"), fleet.device("E3").getPlace());
        fleet.edit(() -> DeviceEdits.addOnRun(fleet.vehicle(), part("lamp"), fleet.get(Run.class, "R1"), new BigDecimal("300")));
        assertEquals(new BigDecimal("300"), fleet.device("E4").getAtMm());
        fleet.edit(() -> DeviceEdits.addWithin(central, part("hand-switch"), fleet.device("central/F1")));
        assertSame(fleet.device("central/F1"), fleet.device("central/S2").getMountedIn());
        fleet.refuses("is not on the run", () -> DeviceEdits.addOnRun(fleet.vehicle(), part("lamp"), fleet.get(Run.class, "R1"),
                new BigDecimal("901")));
        fleet.refuses("no place given", () -> DeviceEdits.add(fleet.vehicle(), part("lamp"), null));
        fleet.refuses("no device teapot", () -> part("teapot"));
    }

    @Test
    void puttingADeviceElsewhereTakesItOutOfItsBox() {
        Device inner = DeviceEdits.addWithin(fleet.arrangement("central"), part("hand-switch"), fleet.device("central/F1"));
        fleet.edit(() -> VehicleEdits.place(inner, fleet.get(Place.class, "hub")));
        assertNull(inner.getMountedIn());
    }

    @Test
    void whatMayBeJoined() {
        assertTrue(connections().between(end("central/F1.3"), end("E2.L+")).possible());
        assertEquals("", connections().between(end("central/F1.3"), end("E2.L+")).text());
        refused("joins -F1:1 and -E1:L+ already", "central/F1.1", "E1.L+");
        refused("joins -E1:L+ and -F1:1 already", "E1.L+", "central/F1.1");
        refused("both ends would be", "E1.L+", "E1.L+");
        refused("strap", "XE1", "XE2");
        refused("another arrangement", "G1.30", "spread/F1.30");
        refused("has no terminal", "G1.30", "E1.L9");
        refused("with the structure", "G1.30", "XE1");
        refused("would short", "G1.30", "G1.31");
        assertFalse(connections().between(end("G1.30"), null).possible());
        Connections.Answer sides = connections().between(end("central/F1.3"), end("E2.L-"));
        assertTrue(sides.possible());
        assertTrue(sides.text().contains("plus terminal with a minus"), sides.text());
    }

    private void refused(String words, String a, String b) {
        Connections.Answer answer = connections().between(end(a), end(b));
        assertFalse(answer.possible(), a + " " + b);
        assertTrue(answer.text().contains(words), answer.text());
    }

    @Test
    void theLikelyTerminalIsFound() {
        assertEquals("L+", ((WireEnd.Pin) connections().natural(fleet.device("E2"), end("central/F1.3"))).terminal());
        assertEquals("L-", ((WireEnd.Pin) connections().natural(fleet.device("E2"), end("XE1"))).terminal());
        // way 3 is fitted and unused, way 2 is empty, way 1 is in use
        assertEquals("3", ((WireEnd.Pin) connections().natural(fleet.device("central/F1"), end("E2.L+"))).terminal());
        Device box = DeviceEdits.add(fleet.arrangement("central"), part("box"), fleet.get(Place.class, "hub"));
        assertEquals("30", ((WireEnd.Pin) connections().natural(box, end("G1.30"))).terminal(), "a source feeds the box");
        assertNull(connections().natural(fleet.device("central/F1"), end("XE1")));
    }

    @Test
    void cablesAreDrawnAndTheirEndsFixedElsewhere() {
        Arrangement central = fleet.arrangement("central");
        fleet.edit(() -> ConnectEdits.connect(fleet.vehicle(), central, end("central/F1.3"), end("E2.L+"), null));
        Cable cable = fleet.cable("central/W3");
        assertEquals("single", cable.getPart().getName());
        cable.setLengthMm(new BigDecimal("1200"));
        fleet.edit(() -> ConnectEdits.reconnect(fleet.vehicle(), central, cable.getCores().get(0), CoreEnd.A,
                end("central/F1.2")));
        assertEquals("2", cable.getCores().get(0).getA().getName());
        assertNull(cable.getLengthMm());
        fleet.refuses("both ends would be", () -> ConnectEdits.reconnect(fleet.vehicle(), central, cable.getCores().get(0),
                CoreEnd.B, end("central/F1.2")));
    }

    @Test
    void aShortestWayLeavesDuctsThatItDoesNotPass() {
        Cable cable = fleet.cable("central/W1");
        cable.setPathBy(ChosenBy.SIZING);
        cable.setLengthMm(new BigDecimal("2000"));
        Relocation plan = Relocation.of(fleet.arrangement("central"), List.of(fleet.device("E1")),
                fleet.get(Place.class, "nose"));
        assertEquals(List.of(cable), plan.following());
        assertEquals(List.of(cable), plan.remeasured());
        fleet.edit(() -> Relocation.of(fleet.arrangement("central"), List.of(fleet.device("E1")),
                fleet.get(Place.class, "nose")).apply());
        assertTrue(cable.getPath().isEmpty());
        assertEquals(1, cable.getDucts().size(), "it still passes both runs of the duct");
        assertNull(cable.getLengthMm());
        cable.setPathBy(ChosenBy.SIZING);
        fleet.edit(() -> Relocation.of(fleet.arrangement("central"), List.of(fleet.device("E1")),
                fleet.get(Place.class, "rear")).apply());
    }

    @Test
    void aDuctThatIsNotPassedAnyMoreIsLeft() {
        // the return core goes to XE1 at the hub: move both ends there
        Cable cable = fleet.cable("central/W1");
        cable.setPathBy(ChosenBy.SIZING);
        fleet.edit(() -> Relocation.of(fleet.arrangement("central"), List.of(fleet.device("E1"), fleet.device("central/F1")),
                fleet.get(Place.class, "hub")).apply());
        assertTrue(cable.getDucts().isEmpty());
    }

    @Test
    void aPathNobodySignedCountsAsAPersons() {
        Relocation plan = Relocation.of(fleet.arrangement("central"), List.of(fleet.device("E1")),
                fleet.get(Place.class, "nose"));
        assertEquals(List.of(fleet.cable("central/W1")), plan.pinned());
        assertTrue(plan.told().get(0).contains("R1 R2"), plan.told().toString());
    }

    @Test
    void theArrangementsOwnWordOnAPlaceChangesThereOnly() {
        fleet.edit(() -> Relocation.of(fleet.arrangement("central"), List.of(fleet.device("S1")),
                fleet.get(Place.class, "nose")).apply());
        assertSame(fleet.get(Place.class, "rear"), fleet.device("S1").getPlace());
        assertSame(fleet.get(Place.class, "nose"), Spot.of(fleet.device("S1"), fleet.arrangement("central")).place());
        fleet.refuses("a place only", () -> Relocation.onRun(fleet.arrangement("central"), List.of(fleet.device("S1")),
                fleet.get(Run.class, "R1"), BigDecimal.TEN));
    }

    @Test
    void severalElementsAreDeletedTogether() {
        fleet.edit(() -> Deletion.of(List.of(fleet.device("E1"), fleet.device("E2"))).apply());
        assertFalse(fleet.has("E1"));
        assertFalse(fleet.has("central/W1"));
        fleet.refuses("belongs to the device's part", () -> Deletion.of(List.of(end("G1.30").attachment())));
        fleet.refuses("nothing to delete", () -> Deletion.of(List.of()));
    }

    @Test
    void strapsRunsAndPlaces() {
        fleet.edit(() -> BondEdits.join(fleet.vehicle(), fleet.get(Body.class, "chassis"), fleet.get(Body.class, "engine")));
        assertEquals(3, fleet.vehicle().getEarthPoints().size() - 1, "both had their points in use");
        fleet.refuses("already", () -> BondEdits.join(fleet.vehicle(), fleet.get(EarthPoint.class, "XE1"),
                fleet.get(EarthPoint.class, "XE2")));
        fleet.edit(() -> StructureEdits.addPlace(fleet.vehicle(), null, BigDecimal.ONE, BigDecimal.ZERO, BigDecimal.TEN, null));
        assertEquals("P2", fleet.vehicle().getPlaces().get(3).getName(), "P1 is a passage");
        fleet.edit(() -> StructureEdits.addRun(fleet.vehicle(), fleet.get(Place.class, "rear"), fleet.get(Place.class, "nose")));
        assertEquals(3801.3, RunLengths.mm(fleet.get(Run.class, "R3")), 0.1);
        fleet.refuses("already", () -> StructureEdits.addRun(fleet.vehicle(), fleet.get(Place.class, "hub"),
                fleet.get(Place.class, "rear")));
        fleet.refuses("not back to", () -> StructureEdits.addRun(fleet.vehicle(), fleet.get(Place.class, "hub"),
                fleet.get(Place.class, "hub")));
    }
}
