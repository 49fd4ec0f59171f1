// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.vehicle.Vehicle;

/** Faults in files that a vehicle uses are told for those files, once. */
class FaultsOfLibrariesTest {
    @TempDir
    Path folder;
    private Fleet fleet;

    @BeforeEach
    void writeFleet() {
        fleet = new Fleet(folder.resolve("fleet"));
    }

    private static String library(String name, String attributes, String content) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<parts:PartsLibrary xmi:version=\"2.0\" "
                + "xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:parts=\"http://loomwright.org/parts/1\" name=\"" + name
                + "\" format=\"1.0\"" + attributes + ">\n" + content + "</parts:PartsLibrary>\n";
    }

    private static String practice(String name, String basedOn) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<practice:Practice xmi:version=\"2.0\" "
                + "xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:practice=\"http://loomwright.org/practice/1\" name=\"" + name
                + "\" format=\"1.0\" basedOn=\"" + basedOn + "\"/>\n";
    }

    private List<ReadFault> faults() {
        return new VehicleFiles().openVehicle(fleet.vehicle()).faults();
    }

    @Test
    void faultInALibraryIsToldForTheLibraryOnce() {
        Marked text = Marked.of(Fleet.replaced(Fleet.PARTS, "watts=\"20\"", "§watts=\"twenty\""));
        Path file = fleet.write("parts/base.parts", text.text());
        fleet.write("parts/more.parts", library("more", " uses=\"base.parts#/\"", ""));
        fleet.write("heron.vehicle", Fleet.with("parts/base.parts#/\"", "parts/base.parts#/ parts/more.parts#/\""));
        List<ReadFault> faults = faults();
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(new ReadFault(file.toString(), text.line(), text.column(),
                "parts library base > device part lamp > demand D",
                "watts: 'twenty' is not a plain decimal number such as 2.5", null), faults.get(0));
    }

    @Test
    void sharedLibraryOpenedWithSeveralVehiclesGivesEqualFaults() {
        fleet.write("parts/base.parts", Fleet.replaced(Fleet.PARTS, "watts=\"20\"", "watts=\"twenty\""));
        Path second = fleet.write("otter.vehicle", Fleet.with("name=\"heron\"", "name=\"otter\""));
        VehicleFiles files = new VehicleFiles();
        assertEquals(files.openVehicle(fleet.vehicle()).faults(), files.openVehicle(second).faults());
    }

    @Test
    void truncatedLibraryIsOneFaultAndThePartsAreNotMissed() {
        Path file = fleet.write("parts/base.parts", Fleet.PARTS.substring(0, Fleet.PARTS.indexOf("  <straps")));
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        assertEquals(1, opened.faults().size(), opened.faults()::toString);
        assertEquals(file.toString(), opened.faults().get(0).file());
        assertTrue(opened.faults().get(0).message().contains("ends too early"));
        assertNotNull(opened.root());
        assertTrue(assertThrows(RefusedFileException.class, () -> VehicleFiles.save(opened.resource())).getMessage()
                .contains("parts/base.parts could not be read"));
    }

    @Test
    void librariesThatUseEachOtherInACircle() {
        Marked text = Marked.of(library("more", " §uses=\"base.parts#/\"", ""));
        Path file = fleet.write("parts/more.parts", text.text());
        fleet.write("parts/base.parts", Fleet.replaced(Fleet.PARTS, "format=\"1.0\"", "format=\"1.0\" uses=\"more.parts#/\""));
        List<ReadFault> faults = faults();
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(file.toString(), faults.get(0).file());
        assertEquals(text.line(), faults.get(0).line());
        assertEquals(text.column(), faults.get(0).column());
        assertEquals("parts library more", faults.get(0).element());
        assertEquals("uses: libraries use each other in a circle: base.parts > more.parts > base.parts",
                faults.get(0).message());
    }

    @Test
    void libraryThatUsesItself() {
        fleet.write("parts/base.parts", Fleet.replaced(Fleet.PARTS, "format=\"1.0\"", "format=\"1.0\" uses=\"base.parts#/\""));
        List<ReadFault> faults = faults();
        assertEquals(1, faults.size(), faults::toString);
        assertEquals("uses: base.parts#/ is this file itself", faults.get(0).message());
    }

    @Test
    void practicesBasedOnEachOtherInACircle() {
        fleet.write("team.practice", practice("team", "house.practice#/"));
        fleet.write("house.practice", practice("house", "town.practice#/"));
        Path last = fleet.write("town.practice", practice("town", "team.practice#/"));
        List<ReadFault> faults = faults();
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(last.toString(), faults.get(0).file());
        assertEquals("basedOn: practices are based on each other in a circle: team.practice > house.practice > town.practice"
                + " > team.practice", faults.get(0).message());
    }

    @Test
    void twoUsersOfOneLibraryAreNoCircle() {
        fleet.write("parts/a.parts", library("a", " uses=\"base.parts#/\"", "  <cables name=\"x\" ampacity=\"open-air\"/>\n"));
        fleet.write("parts/b.parts", library("b", " uses=\"base.parts#/ a.parts#/\"", ""));
        fleet.write("heron.vehicle", Fleet.with("parts/base.parts#/\"", "parts/b.parts#/ parts/a.parts#/\""));
        assertEquals(List.of(), faults());
    }

    @Test
    void missingFileNamedByManyReferencesIsOneFault() {
        Path file = fleet.write("store.stock", """
                <?xml version="1.0" encoding="UTF-8"?>
                <parts:Stock xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
                xmlns:parts="http://loomwright.org/parts/1" name="store" format="1.0">
                  <cables cable="gone.parts#twin" metres="3"/>
                  <cables cable="gone.parts#single" metres="3"/>
                  <cables cable="parts/base.parts#twin" metres="2.50"/>
                </parts:Stock>
                """);
        ReadFile<Stock> opened = new VehicleFiles().openStock(file);
        assertEquals(1, opened.faults().size(), opened.faults()::toString);
        assertEquals("stock store > cable stock number 1", opened.faults().get(0).element());
        assertEquals(3, opened.faults().get(0).line());
        assertEquals("cable: gone.parts does not exist", opened.faults().get(0).message());
        assertEquals("twin", opened.root().getCables().get(2).getCable().getName());
    }

    @Test
    void emptyLibrary() {
        Path file = fleet.write("parts/base.parts", "");
        assertEquals(List.of(new ReadFault(file.toString(), 1, 1, null, "the file is empty",
                "an XML file with a root element such as vehicle:Vehicle")), faults());
    }
}
