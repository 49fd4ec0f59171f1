// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** Every element knows where its start tag was. */
class LocationsTest {
    @TempDir
    Path folder;

    @Test
    void everyElementIsFoundWhereItWasWritten() {
        Fleet fleet = new Fleet(folder);
        for (String text : new String[] {Fleet.VEHICLE, Fleet.VEHICLE.replace("\n", "\r\n"),
            Fleet.VEHICLE.replace("\" ", "\"\n\t   ").replace("&amp;", "&gt; ' >"),
            Fleet.VEHICLE.replace("  <", "<!-- <places name='no'/> -->  <?x <devices/> ?><")}) {
            fleet.write("heron.vehicle", text);
            ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
            String[] lines = text.split("\r\n|\n", -1);
            opened.root().eAllContents().forEachRemaining(object -> assertStartsThere(lines, object));
            Location root = Locations.of(opened.root());
            assertEquals("<vehicle:Vehicle", lines[root.line() - 1].substring(root.column() - 1).substring(0, 16));
        }
    }

    private static void assertStartsThere(String[] lines, EObject object) {
        if (object instanceof org.loomwright.model.vehicle.Terminal) {
            return;
        }
        Location location = Locations.of(object);
        String rest = lines[location.line() - 1].substring(location.column() - 1);
        String tag = "<" + object.eContainmentFeature().getName();
        assertEquals(tag, rest.substring(0, Math.min(tag.length(), rest.length())));
        if (object instanceof org.loomwright.model.parts.Named named && rest.contains("name=")) {
            assertEquals(named.getName(), rest.replaceFirst("^.*?name=\"([^\"]*)\".*$", "$1"));
        }
    }

    @Test
    void newElementsHaveNoLocation() {
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(new Fleet(folder).vehicle());
        EObject added = VehicleFactory.eINSTANCE.createPlace();
        assertEquals(Location.UNKNOWN, Locations.of(added));
        opened.root().getPlaces().add((org.loomwright.model.vehicle.Place) added);
        assertFalse(Locations.of(added).isKnown());
        assertEquals(folder.resolve("heron.vehicle").toString(), Locations.file(added));
    }

    @Test
    void elementsInWords() {
        Vehicle vehicle = new VehicleFiles().openVehicle(new Fleet(folder).vehicle()).root();
        assertEquals("vehicle heron > arrangement central > cable W1 > core RD",
                ElementPath.of(vehicle.getArrangements().get(0).getCables().get(0).getCores().get(0)));
        assertEquals("vehicle heron > earth point XE1", ElementPath.of(vehicle.getEarthPoints().get(0)));
        assertEquals("vehicle heron > case parked > demand state number 2",
                ElementPath.of(vehicle.getCases().get(0).getDemands().get(1)));
    }
}
