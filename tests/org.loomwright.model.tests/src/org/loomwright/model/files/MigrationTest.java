// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.vehicle.Vehicle;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Older files are rewritten step by step before they are read. The steps here are made up for the test. */
class MigrationTest {
    private static final FormatVersion OLD = new FormatVersion(0, 8);
    private static final FormatVersion LESS_OLD = new FormatVersion(0, 9);

    @TempDir
    Path folder;

    private record Step(FormatVersion from, FormatVersion to, java.util.function.Consumer<Document> change)
            implements Migration.Step {
        @Override
        public void apply(Document document) {
            change.accept(document);
        }
    }

    /** In version 0.8 places were called spots. */
    private static void spotsToPlaces(Document document) {
        List<Node> spots = new ArrayList<>();
        for (Node node = document.getDocumentElement().getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node.getNodeName().equals("spots")) {
                spots.add(node);
            }
        }
        spots.forEach(spot -> document.renameNode(spot, null, "places"));
    }

    /** In version 0.9 there was another namespace. */
    private static void namespace(Document document) {
        Element root = document.getDocumentElement();
        document.renameNode(root, "http://loomwright.org/vehicle/1", root.getTagName());
        root.setAttributeNS("http://www.w3.org/2000/xmlns/", "xmlns:vehicle", "http://loomwright.org/vehicle/1");
        root.setAttribute("format", "1.0");
    }

    private static Migration migration() {
        return new Migration(List.of(new Step(LESS_OLD, FormatVersion.CURRENT, MigrationTest::namespace),
                new Step(OLD, LESS_OLD, MigrationTest::spotsToPlaces)));
    }

    private static String old(String text) {
        return text.replace("loomwright.org/vehicle/1", "loomwright.org/vehicle/0").replace("format=\"1.0\"", "format=\"0.8\"")
                .replace("<places", "<spots");
    }

    private ReadFile<Vehicle> open(String text) {
        Fleet fleet = new Fleet(folder);
        fleet.write("heron.vehicle", text);
        return new VehicleFiles(AllowedFolders.aroundOpenedFiles(), migration()).openVehicle(fleet.vehicle());
    }

    @Test
    void oldFileIsReadAsIfItWereNewAndSavedAsNew() throws Exception {
        ReadFile<Vehicle> opened = open(old(Fleet.VEHICLE));
        assertEquals(List.of(), opened.faults());
        assertEquals("1.0", opened.root().getFormat());
        assertEquals(3, opened.root().getPlaces().size());
        assertEquals("Heron & crew", opened.root().getLabel());
        assertTrue(VehicleFiles.save(opened.resource()));
        String saved = Files.readString(folder.resolve("heron.vehicle"));
        assertTrue(new VehicleFiles().openVehicle(folder.resolve("heron.vehicle")).isSound());
        assertEquals(Fleet.VEHICLE.lines().skip(2).toList(), saved.lines().skip(2).toList());
    }

    @Test
    void faultsOfAnOldFileArePlacedInTheOldFile() {
        Marked text = Marked.of(old(Fleet.with("xMm=\"200\"", "§xMm=\"NaN\"")));
        ReadFile<Vehicle> opened = open(text.text());
        assertEquals(1, opened.faults().size());
        assertEquals(text.line(), opened.faults().get(0).line());
        assertEquals(text.column(), opened.faults().get(0).column());
        assertEquals("vehicle heron > place rear", opened.faults().get(0).element());
    }

    @Test
    void oldFileThatIsNotWellFormed() {
        ReadFile<Vehicle> opened = open(old(Fleet.VEHICLE).substring(0, 3000));
        assertEquals(1, opened.faults().size());
        assertTrue(opened.faults().get(0).message().contains("ends too early"), opened.faults()::toString);
    }

    @Test
    void wayThroughTheSteps() {
        assertEquals(Optional.of(List.of()), Migration.standard().way(FormatVersion.CURRENT));
        assertEquals(Optional.empty(), Migration.standard().way(LESS_OLD));
        assertEquals(2, migration().way(OLD).orElseThrow().size());
        assertEquals(1, migration().way(LESS_OLD).orElseThrow().size());
        assertEquals(Optional.empty(), migration().way(new FormatVersion(0, 1)));
    }

    @Test
    void versionsAreOrderedAsNumbers() {
        assertTrue(new FormatVersion(1, 10).compareTo(new FormatVersion(1, 9)) > 0);
        assertTrue(new FormatVersion(2, 0).compareTo(new FormatVersion(1, 9)) > 0);
        assertEquals(Optional.of(new FormatVersion(1, 0)), FormatVersion.parse("1.0"));
        for (String text : new String[] {"1", "1.", ".1", "01.0", "1.0.0", "a.b", "-1.0", "", "1.9999999"}) {
            assertEquals(Optional.empty(), FormatVersion.parse(text), text);
        }
        assertEquals("1.0", FormatVersion.CURRENT.toString());
    }
}
