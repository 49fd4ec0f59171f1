// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.vehicle.Vehicle;

/** Each fault of a vehicle file gives one message with file, line, column and element. */
class FaultsOfVehicleTest {
    @TempDir
    Path folder;
    private Fleet fleet;

    @BeforeEach
    void writeFleet() {
        fleet = new Fleet(folder.resolve("fleet"));
    }

    private ReadFile<Vehicle> open(String text) {
        fleet.write("heron.vehicle", text);
        return new VehicleFiles().openVehicle(fleet.vehicle());
    }

    /** The only fault of a text, found at the mark in it. */
    private ReadFault only(String marked) {
        Marked text = Marked.of(marked);
        List<ReadFault> faults = open(text.text()).faults();
        assertEquals(1, faults.size(), faults::toString);
        ReadFault fault = faults.get(0);
        assertEquals(fleet.vehicle().toString(), fault.file());
        assertEquals(text.line(), fault.line(), fault::toString);
        assertEquals(text.column(), fault.column(), fault::toString);
        return fault;
    }

    private static void assertSays(ReadFault fault, String element, String... parts) {
        assertEquals(element, fault.element());
        for (String part : parts) {
            assertTrue(fault.getMessage().contains(part), fault::toString);
        }
    }

    @Test
    void theFleetItselfIsSound() {
        ReadFile<Vehicle> opened = open(Fleet.VEHICLE);
        assertTrue(opened.isSound(), () -> opened.faults().toString());
        assertEquals("heron", opened.root().getName());
    }

    @Test
    void unknownElementNamesTheNearestKnownOne() {
        ReadFault fault = only(Fleet.with("  <zones ", "  §<zonse name=\"x\"><inner/></zonse>\n  <zones "));
        assertSays(fault, "vehicle heron", "unknown element 'zonse' in a vehicle", "probably zones");
    }

    @Test
    void unknownElementDeepInsideIsPlaced() {
        ReadFault fault = only(Fleet.with("      <ways name=\"1\"", "      §<fuses/>\n      <ways name=\"1\""));
        assertSays(fault, "vehicle heron > arrangement central > device F1", "unknown element 'fuses' in a device",
                "known are settings, ways");
    }

    @Test
    void unknownAttributeIsPlacedAtTheAttribute() {
        ReadFault fault = only(Fleet.with("xMm=\"200\"", "§sMm=\"200\""));
        assertSays(fault, "vehicle heron > place rear", "unknown attribute 'sMm' of a place", "probably xMm");
    }

    @Test
    void attributesOfXmlThatMeanNothingHereAreUnknown() {
        assertSays(only(Fleet.with("<places name=\"rear\"", "<places §xmi:id=\"a\" name=\"rear\"")),
                "vehicle heron > place rear", "unknown attribute 'xmi:id'");
    }

    @Test
    void attributeWrittenAsElementIsExplained() {
        ReadFault fault = only(Fleet.with("<days name=\"weekday\">", "<days name=\"weekday\">\n§<label>Monday</label>"));
        assertSays(fault, "vehicle heron > day weekday", "'label' is written as an element", "attribute label=\"...\"");
    }

    @Test
    void elementWrittenAsAttributeIsExplained() {
        ReadFault fault = only(Fleet.with("<days name=\"weekday\"", "<days name=\"weekday\" §steps=\"parked\""));
        assertSays(fault, "vehicle heron > day weekday", "'steps' is written as an attribute", "elements <steps .../>");
    }

    @Test
    void transientTerminalsAreNoElementsOfTheFile() {
        ReadFault fault = only(Fleet.with("      <ways name=\"1\"", "      §<terminals name=\"9\"/>\n      <ways name=\"1\""));
        assertSays(fault, "vehicle heron > arrangement central > device F1", "unknown element 'terminals'");
    }

    @Test
    void unknownWordListsTheKnownOnes() {
        ReadFault fault = only(Fleet.with("ignition=\"off\"", "§ignition=\"of\""));
        assertSays(fault, "vehicle heron > case parked", "ignition: 'of'", "probably off", "off, accessory, on, start");
    }

    @Test
    void badNumberSaysWhatANumberLooksLike() {
        assertSays(only(Fleet.with("xMm=\"200\"", "§xMm=\"2,00\"")), "vehicle heron > place rear",
                "xMm: '2,00' is not a plain decimal number", "write a point, not a comma");
        assertSays(only(Fleet.with("xMm=\"200\"", "§xMm=\"NaN\"")), "vehicle heron > place rear",
                "'NaN' is not a plain decimal number");
        assertSays(only(Fleet.with("xMm=\"200\"", "§xMm=\"1e3\"")), "vehicle heron > place rear",
                "'1e3' is not a plain decimal number");
        assertSays(only(Fleet.with("existing=\"true\"", "§existing=\"yes\"")), "vehicle heron > cable W0",
                "'yes' is neither true nor false");
    }

    @Test
    void danglingReferenceNamesKindAndSimilarName() {
        ReadFault fault = only(Fleet.with("part=\"lamp\" place=\"rear\"", "part=\"lamp\" §place=\"reer\""));
        assertSays(fault, "vehicle heron > device E1", "place: there is no place 'reer' here", "probably rear");
    }

    @Test
    void danglingReferenceTellsWhatTheNameIs() {
        assertSays(only(Fleet.with("part=\"lamp\" place=\"rear\"", "part=\"lamp\" §place=\"R1\"")),
                "vehicle heron > device E1", "there is no place 'R1' here; 'R1' is a run");
    }

    @Test
    void danglingPartIsLookedForInTheLibraries() {
        ReadFault fault = only(Fleet.with("name=\"G1\" part=\"battery\"", "name=\"G1\" §part=\"batery\""));
        assertSays(fault, "vehicle heron > device G1", "there is no device part 'batery' here", "probably battery");
    }

    @Test
    void danglingTerminalNamesTheDevice() {
        ReadFault fault = only(Fleet.with("a=\"F1.2\"", "§a=\"F7.2\""));
        assertSays(fault, "vehicle heron > arrangement spread > cable W1 > core 1", "there is no device 'F7' here",
                "DEVICE.TERMINAL", "probably F1.2");
        assertSays(only(Fleet.with("a=\"XE1\" b=\"E1.L-\"", "§a=\"XE9\" b=\"E1.L-\"")),
                "vehicle heron > arrangement central > cable W1 > core BK", "there is no earth point 'XE9' here", "probably XE1");
    }

    @Test
    void danglingNameInAListIsPlacedAtTheList() {
        assertSays(only(Fleet.with("path=\"R1 R2\"", "§path=\"R1 R9 R2\"")),
                "vehicle heron > arrangement central > cable W1", "path: there is no run 'R9' here");
    }

    @Test
    void elementsOfAnotherArrangementAreOutOfSight() {
        assertSays(only(Fleet.with("a=\"F1.2\"", "§a=\"W2.2\"")), "vehicle heron > arrangement spread > cable W1 > core 1",
                "there is no device 'W2' here");
    }

    @Test
    void nameListedTwiceIsAFault() {
        assertSays(only(Fleet.with("path=\"R1 R2\"", "§path=\"R1 R2 R1\"")),
                "vehicle heron > arrangement central > cable W1", "path: 'R1' is listed twice");
    }

    @Test
    void severalNamesWhereOneIsExpected() {
        assertSays(only(Fleet.with("part=\"lamp\" place=\"rear\"", "part=\"lamp\" §place=\"rear hub\"")),
                "vehicle heron > device E1", "place: 'rear hub' is more than one name");
    }

    @Test
    void duplicateNameIsAmbiguousAndNeverBoundToOneOfThem() {
        Marked text = Marked.of(Fleet.with("      <cores name=\"RD\" a=\"F1.1\"", "      <cores name=\"RD\" §a=\"F1.1\"")
                .replace("    <cables name=\"W1\" part=\"twin\"",
                        "    <devices name=\"F1\"/>\n    <cables name=\"W1\" part=\"twin\""));
        ReadFile<Vehicle> opened = open(text.text());
        ReadFault fault = opened.faults().get(0);
        assertEquals(text.line(), fault.line());
        assertEquals(text.column(), fault.column());
        assertSays(fault, "vehicle heron > arrangement central > cable W1 > core RD", "a: 'F1.1' is ambiguous",
                "device F1 or vehicle heron", "names that differ");
        assertNull(opened.root().getArrangements().get(0).getCables().get(0).getCores().get(0).getA());
    }

    @Test
    void partInTwoLibrariesIsAmbiguousAndSaysHowToWriteIt() {
        fleet.write("parts/more.parts", """
                <parts:PartsLibrary xmlns:parts="http://loomwright.org/parts/1" name="more" format="1.0">
                  <devices name="battery"/>
                </parts:PartsLibrary>
                """);
        ReadFault fault = only(Fleet.with("parts/base.parts#/\"", "parts/base.parts#/ parts/more.parts#/\"")
                .replace("name=\"G1\" part=", "name=\"G1\" §part="));
        assertSays(fault, "vehicle heron > device G1", "part: 'battery' is ambiguous",
                "parts library base > device part battery or parts library more > device part battery",
                "expected base/battery or more/battery");
    }

    @Test
    void missingLibraryGivesOneMessageAndNoDanglingParts() {
        ReadFault fault = only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"parts/gone.parts#/\""));
        assertSays(fault, "vehicle heron", "libraries: parts/gone.parts does not exist");
    }

    @Test
    void libraryOfTheWrongKind() {
        ReadFault fault = only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"team.practice#/\""));
        assertSays(fault, "vehicle heron", "libraries: team.practice#/ is a practice, not a parts library");
    }

    @Test
    void libraryThatIsAFolder() {
        assertSays(only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"parts#/\"")), "vehicle heron",
                "libraries: parts is a folder");
    }

    @Test
    void libraryWithoutFragmentIsExplained() {
        assertSays(only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"parts/base.parts\"")), "vehicle heron",
                "libraries: 'parts/base.parts' names no file", "for example parts/base.parts#/");
    }

    @Test
    void elementThatIsNotInTheOtherFile() {
        assertSays(only(Fleet.with("name=\"G1\" part=\"battery\"", "name=\"G1\" §part=\"parts/base.parts#accu\"")),
                "vehicle heron > device G1", "part: there is no 'accu' in parts/base.parts");
    }

    @Test
    void fileOutsideTheAllowedFolders() {
        assertSays(only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"../../../etc/x.parts#/\"")),
                "vehicle heron", "libraries: ../../../etc/x.parts is outside the folders this file may refer to");
        assertSays(only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"file:/etc/passwd#/\"")),
                "vehicle heron", "is outside the folders");
    }

    @Test
    void networkAndArchivesAreRefused() {
        for (String uri : List.of("http://example.org/x.parts", "jar:file:/tmp/x.jar!/x.parts", "ftp://example.org/x.parts")) {
            assertSays(only(Fleet.with("libraries=\"parts/base.parts#/\"", "§libraries=\"" + uri + "#/\"")), "vehicle heron",
                    "is not read: only plain files are");
        }
    }

    @Test
    void textBetweenElements() {
        Marked text = Marked.of(Fleet.with("  <zones ", "  stray words\n  <zones ").replace("  <domains", "  §<domains"));
        ReadFault fault = open(text.text()).faults().get(0);
        assertEquals(text.line(), fault.line());
        assertSays(fault, "vehicle heron", "text 'stray words' between elements", "attribute note");
    }

    @Test
    void notXml() {
        ReadFault fault = only("§name = heron\n");
        assertSays(fault, null, "not an XML file", "<?xml");
    }

    @Test
    void emptyFile() {
        assertSays(only("§"), null, "the file is empty");
        assertSays(only("§  \n \n"), null, "the file is empty");
    }

    @Test
    void truncatedBetweenTags() {
        int at = Fleet.VEHICLE.indexOf("  <cases");
        ReadFault fault = only(Fleet.VEHICLE.substring(0, at).stripTrailing() + "§");
        assertSays(fault, "vehicle heron", "the file ends too early", "the vehicle begun in line 2 is not closed");
    }

    @Test
    void truncatedInsideATagAtAnyPlace() {
        for (int at = 1; at < Fleet.VEHICLE.stripTrailing().length(); at += 37) {
            ReadFile<Vehicle> opened = open(Fleet.VEHICLE.substring(0, at));
            assertEquals(1, opened.faults().size(), opened.faults()::toString);
            assertNull(opened.root());
            String message = opened.faults().get(0).getMessage();
            assertTrue(message.contains("ends too early"), message);
        }
    }

    @Test
    void notWellFormed() {
        ReadFault fault = open(Fleet.with("</days>", "</day>")).faults().get(0);
        assertTrue(fault.message().startsWith("not well-formed XML: "), fault::toString);
        assertTrue(fault.message().contains("\"days\""), fault::toString);
        assertEquals("vehicle heron > day weekday", fault.element());
        int line = (int) Fleet.VEHICLE.substring(0, Fleet.VEHICLE.indexOf("</days>")).lines().count();
        assertEquals(line, fault.line());
    }

    @Test
    void messagesOfTheParserDoNotDependOnTheLanguageOfTheMachine() {
        Locale before = Locale.getDefault();
        try {
            String english = open(Fleet.with("</days>", "</day>")).faults().get(0).message();
            Locale.setDefault(Locale.GERMANY);
            assertEquals(english, open(Fleet.with("</days>", "</day>")).faults().get(0).message());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void notUtf8() {
        byte[] bytes = Fleet.VEHICLE.replace("cast iron", "Stahl\u00FC").getBytes(StandardCharsets.ISO_8859_1);
        fleet.write("heron.vehicle", bytes);
        ReadFault fault = new VehicleFiles().openVehicle(fleet.vehicle()).faults().get(0);
        int at = Fleet.VEHICLE.indexOf("cast iron") + "Stahl".length();
        assertEquals(Fleet.VEHICLE.substring(0, at).lines().count(), fault.line());
        assertSays(fault, null, "not a text in UTF-8");
    }

    @Test
    void otherEncodingDeclared() {
        assertSays(only(Fleet.with("encoding=\"UTF-8\"", "encoding=\"§ISO-8859-1\"")), null, "declared as ISO-8859-1", "UTF-8");
    }

    @Test
    void doctypeAndEntitiesAreRefusedBeforeAnythingIsExpanded() {
        StringBuilder bomb = new StringBuilder("§<!DOCTYPE v [\n<!ENTITY e0 \"ha\">\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("<!ENTITY e").append(i).append(" \"&e").append(i - 1).append(";&e").append(i - 1).append(";\">\n");
        }
        ReadFault fault = only(Fleet.with("<vehicle:Vehicle ", bomb.append("]>\n<vehicle:Vehicle ").toString())
                .replace("cast iron", "&e29;"));
        assertSays(fault, null, "a DOCTYPE is not read");
        fault = only(Fleet.with("<vehicle:Vehicle ",
                "<!-- first -->\n§<!DOCTYPE v SYSTEM \"file:///etc/passwd\">\n<vehicle:Vehicle "));
        assertSays(fault, null, "a DOCTYPE is not read");
    }

    @Test
    void unknownEntityIsNotWellFormed() {
        List<ReadFault> faults = open(Fleet.with("cast iron", "&iron;")).faults();
        assertEquals(1, faults.size());
        assertTrue(faults.get(0).message().contains("iron"), faults::toString);
    }

    @Test
    void wrongRoot() {
        assertSays(only("<?xml version=\"1.0\"?>\n§<plan xmlns=\"http://example.org/plan\"/>\n"), null,
                "the root element is 'plan' of http://example.org/plan", "vehicle:Vehicle");
        assertSays(only("§<Vehicle format=\"1.0\"/>\n"), null, "the root element is 'Vehicle'",
                "http://loomwright.org/vehicle/1");
    }

    @Test
    void practiceOpenedAsVehicle() {
        Path file = fleet.folder().resolve("team.practice");
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(file);
        assertNull(opened.root());
        assertEquals(1, opened.faults().size());
        assertSays(opened.faults().get(0), "practice team", "this is a practice", "expected a vehicle");
        assertEquals(2, opened.faults().get(0).line());
    }

    @Test
    void newerFormats() {
        assertSays(only(Fleet.with("format=\"1.0\"", "§format=\"1.3\"")), null,
                "format: the file is newer than this program: version 1.3", "use a newer program");
        assertSays(only(Fleet.with("loomwright.org/vehicle/1\"", "loomwright.org/vehicle/2\"")
                .replace("format=\"1.0\"", "§format=\"2.0\"")), null, "newer than this program: version 2.0");
        assertSays(only(Fleet.with("loomwright.org/vehicle/1\"", "loomwright.org/vehicle/2\"")
                .replace(" format=\"1.0\"", "").replace("<vehicle:V", "§<vehicle:V")), null, "newer than this program");
    }

    @Test
    void olderFormatWithoutAWayHere() {
        assertSays(only(Fleet.with("loomwright.org/vehicle/1\"", "loomwright.org/vehicle/0\"")
                .replace("format=\"1.0\"", "§format=\"0.9\"")), null, "version 0.9 cannot be brought to version 1.0");
    }

    @Test
    void formatMissingOrStrange() {
        assertSays(only(Fleet.with(" format=\"1.0\"", "").replace("<vehicle:V", "§<vehicle:V")), null,
                "the root element has no format version", "format=\"1.0\"");
        assertSays(only(Fleet.with("format=\"1.0\"", "§format=\"one\"")), null, "'one' is no format version");
        assertSays(only(Fleet.with("format=\"1.0\"", "§format=\"2.0\"")), null, "'2.0' is no format version of "
                + "http://loomwright.org/vehicle/1");
    }

    @Test
    void fileThatDoesNotExistOrIsAFolder() {
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.folder().resolve("nobody.vehicle"));
        assertNull(opened.root());
        assertEquals(List.of(new ReadFault(fleet.folder().resolve("nobody.vehicle").toString(), 1, 1, null,
                "the file does not exist", "an existing file")), opened.faults());
        assertEquals("the file is a folder", new VehicleFiles().openVehicle(fleet.folder()).faults().get(0).message());
    }

    @Test
    void fileWithoutPermission() throws IOException {
        RefusedFileException refused = RefusedFileException.because(new java.nio.file.AccessDeniedException("x"));
        assertEquals("may not be read: no permission", refused.getMessage());
        Files.setPosixFilePermissions(fleet.vehicle(), java.util.Set.of());
        if (!Files.isReadable(fleet.vehicle())) {
            assertEquals("the file may not be read: no permission",
                    new VehicleFiles().openVehicle(fleet.vehicle()).faults().get(0).message());
        }
    }

    @Test
    void manyFaultsAreSortedAndAtMostAHundredAreListed() {
        StringBuilder places = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            places.append("  <places name=\"p").append(i).append("\" xMm=\"x\" zone=\"nowhere\"/>\n");
        }
        List<ReadFault> faults = open(Fleet.with("  <places name=\"hub\"", places + "  <places name=\"hub\"")).faults();
        assertEquals(101, faults.size());
        assertEquals("500 more faults in this file are not listed", faults.get(100).message());
        for (int i = 1; i < 100; i++) {
            assertTrue(ReadFault.BY_POSITION.compare(faults.get(i - 1), faults.get(i)) <= 0);
        }
        assertEquals(50, faults.stream().filter(f -> f.message().startsWith("zone: there is no zone")).count());
        assertNotNull(faults.get(99).element());
    }

    @Test
    void faultsAreAmongTheErrorsOfTheResourceAndPreventSaving() throws IOException {
        ReadFile<Vehicle> opened = open(Fleet.with("xMm=\"200\"", "xMm=\"NaN\""));
        assertEquals(opened.faults(), opened.resource().getErrors());
        byte[] before = Files.readAllBytes(fleet.vehicle());
        opened.root().setLabel("changed");
        RefusedFileException refused = assertThrows(RefusedFileException.class, () -> VehicleFiles.save(opened.resource()));
        assertTrue(refused.getMessage().contains("would lose what could not be read"));
        assertThrows(RefusedFileException.class, () -> opened.resource().save(null));
        assertThrows(RefusedFileException.class,
                () -> opened.resource().save(new java.io.ByteArrayOutputStream(), null));
        assertThrows(RefusedFileException.class, () -> VehicleFiles.save(opened.resource()), "still refused afterwards");
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(fleet.vehicle()));
        assertFalse(opened.isSound());
    }

    @Test
    void relativePathsAreShownAsGiven() {
        Path here = Path.of("").toAbsolutePath();
        Path relative = here.relativize(fleet.write("heron.vehicle", Fleet.with("xMm=\"200\"", "xMm=\"NaN\"")));
        assertEquals(relative.toString(), new VehicleFiles().openVehicle(relative).faults().get(0).file());
    }
}
