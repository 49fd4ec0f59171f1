// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.VehicleFactory;

/** What is deleted takes along what makes no sense without it, and nothing else; undone, everything is back. */
class DeletionTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
    }

    private List<String> removed(String fragment) {
        return Deletion.of(fleet.get(EObject.class, fragment)).removed().stream().map(Fragments::of).toList();
    }

    private void delete(String fragment) {
        fleet.edit(() -> VehicleEdits.delete(fleet.get(EObject.class, fragment)));
    }

    @Test
    void planningChangesNothing() {
        String before = fleet.saved();
        assertEquals(List.of("E1", "parked/@demands.0", "central/@returns.0", "central/W1", "@waivers.0",
                "line-central/@items.2"), removed("E1"));
        assertEquals(before, fleet.saved());
    }

    @Test
    void deviceTakesItsCablesStatesReturnsAndMentions() {
        delete("E1");
        assertFalse(fleet.has("central/W1"));
        assertTrue(fleet.has("central/W2"));
        assertEquals(1, fleet.vehicle().getCases().get(0).getDemands().size());
        assertEquals(0, fleet.arrangement("central").getReturns().size());
        assertEquals(1, fleet.vehicle().getWaivers().size());
        String text = fleet.saved();
        assertFalse(text.contains("\"E1"), text);
        assertTrue(text.contains("<items element=\"parked/@demands.0\""), "positions of what stays are written anew");
    }

    @Test
    void boxTakesItsWaysItsFeedAndWaiversOfItsTerminals() {
        delete("central/F1");
        assertTrue(fleet.has("central/W1"), "its return is whole, so the feed can be connected elsewhere");
        assertNull(fleet.get(Core.class, "central/W1/RD").getA());
        assertFalse(fleet.has("central/W2"));
        assertFalse(fleet.saved().contains("terminal-fit"));
        assertTrue(fleet.has("spread/F1"));
    }

    @Test
    void cableThatKeepsAWholeCoreIsOnlyLoosened() {
        Core core = fleet.get(Core.class, "central/W1/RD");
        VehicleEdits.connect(core, CoreEnd.B, fleet.device("E2"), "L+");
        Core other = fleet.get(Core.class, "central/W1/BK");
        other.setBOrder(1);
        delete("E1");
        assertTrue(fleet.has("central/W1"));
        assertNull(other.getB());
        assertNull(other.getBOrder());
        assertEquals("XE1", other.getA().getName());
    }

    @Test
    void batteryTakesReadingsAndItsState() {
        delete("G1");
        assertNull(fleet.vehicle().getDomains().get(0).getSource());
        assertEquals(0, fleet.vehicle().getCases().get(0).getBatteries().size());
        assertEquals(0, fleet.vehicle().getReadingSets().get(0).getReadings().size());
        assertFalse(fleet.has("W0"));
        assertFalse(fleet.has("central/W2"));
    }

    @Test
    void placeTakesItsRunsAndPathsAreOpenAgain() {
        fleet.cable("central/W1").setPathBy(org.loomwright.model.vehicle.ChosenBy.PERSON);
        delete("nose");
        assertFalse(fleet.has("R2"));
        assertFalse(fleet.has("P1"));
        assertTrue(fleet.has("R1"));
        assertEquals(List.of(), fleet.cable("central/W1").getPath());
        assertFalse(fleet.cable("central/W1").isSetPathBy());
        assertEquals("D1", fleet.cable("central/W1").getDucts().get(0).getName(), "the duct still has a run");
        assertNull(fleet.get(EarthPoint.class, "XE2").getPlace());
    }

    @Test
    void ductGoesWithItsLastRun() {
        delete("R1");
        assertTrue(fleet.has("D1"));
        assertNull(fleet.device("E2").getRun());
        assertNull(fleet.device("E2").getAtMm());
        delete("R2");
        assertFalse(fleet.has("D1"));
        assertEquals(List.of(), fleet.cable("central/W1").getDucts());
    }

    @Test
    void bodyTakesLinksEarthPointsBondsAndCables() {
        delete("chassis");
        for (String gone : List.of("L1", "XE1", "WE1", "W0")) {
            assertFalse(fleet.has(gone), gone);
        }
        assertTrue(fleet.has("XE2"));
        assertNull(fleet.get(org.loomwright.model.vehicle.Run.class, "R1").getBody());
    }

    @Test
    void zoneIsLetGoOf() {
        delete("cabin");
        assertNull(fleet.vehicle().getPlaces().get(0).getZone());
        assertEquals(0, fleet.vehicle().getCases().get(0).getAmbients().size());
    }

    @Test
    void arrangementTakesItsDrawingsReadingsAndWaivers() {
        delete("central");
        assertNull(fleet.vehicle().getAdopted());
        assertNull(fleet.arrangement("spread").getBasedOn());
        assertEquals(0, fleet.vehicle().getSheets().size());
        assertEquals(0, fleet.vehicle().getReadingSets().size());
        assertEquals(0, fleet.vehicle().getWaivers().size());
        assertEquals(2, fleet.vehicle().getCases().get(0).getDemands().size());
    }

    @Test
    void caseTakesItsSteps() {
        delete("parked");
        assertEquals(0, fleet.vehicle().getDays().get(0).getSteps().size());
        assertEquals(3, fleet.vehicle().getSheets().get(0).getItems().size());
    }

    @Test
    void everyElementCanBeDeletedAndBroughtBack() {
        List<String> fragments = new java.util.ArrayList<>();
        fleet.vehicle().eAllContents().forEachRemaining(object -> {
            if (!(object instanceof org.loomwright.model.vehicle.Terminal)) {
                fragments.add(Fragments.of(object));
            }
        });
        for (String fragment : fragments) {
            OpenFleet fresh = new OpenFleet(folder);
            fresh.edit(() -> VehicleEdits.delete(fresh.get(EObject.class, fragment)));
        }
    }

    @Test
    void refusesRootsAndPartsInUse() {
        fleet.refuses("is the whole file", () -> VehicleEdits.delete(fleet.vehicle()));
        fleet.refuses("the parts library base > device part lamp is used by the vehicle heron > device E1",
                () -> VehicleEdits.delete(fleet.library().getDevices().get(0)));
        var unused = PartsFactory.eINSTANCE.createStrapPart();
        unused.setName("unused");
        fleet.library().getStraps().add(unused);
        VehicleEdits.delete(unused);
        assertEquals(1, fleet.library().getStraps().size());
    }

    @Test
    void elementsOutsideAnyFileCanBeDeletedToo() {
        var vehicle = VehicleFactory.eINSTANCE.createVehicle();
        var place = VehicleFactory.eINSTANCE.createPlace();
        vehicle.getPlaces().add(place);
        assertEquals(List.of(place), VehicleEdits.delete(place));
        assertEquals("place", ElementPath.of(place));
    }
}
