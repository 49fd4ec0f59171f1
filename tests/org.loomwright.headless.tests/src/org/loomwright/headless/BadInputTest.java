// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each fault in a file gives one line with place and element, exit code 2 and no stack trace. */
class BadInputTest {
    private static final String LIBRARIES = "libraries=\"parts/yard.parts#/\"";
    @TempDir
    Path temp;
    private Yard yard;
    private Path vehicle;

    @BeforeEach
    void copyYard() {
        yard = new Yard(temp);
        vehicle = yard.vehicle();
    }

    /** Checks the vehicle and compares every line of standard error. */
    private void assertFaults(String... lines) {
        CommandRun run = CommandRun.of("check", vehicle);
        List<String> expected = new ArrayList<>(List.of(lines));
        expected.add("loomwright: " + lines.length + (lines.length == 1 ? " fault" : " faults")
                + " in the files; nothing was analysed");
        assertEquals(String.join("\n", expected), String.join("\n", run.messages()));
        assertEquals(2, run.code());
        assertEquals("", run.out());
    }

    /** Spoils the vehicle's text at the mark and expects one fault there. */
    private void assertFault(String old, String marked, String message) {
        assertFaults(yard.edit(vehicle, old, marked) + " " + message);
    }

    private void assertOnlyFaultBegins(String begin) {
        CommandRun run = CommandRun.of("check", vehicle);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(2, run.messages().size(), run.err());
        assertTrue(run.messages().get(0).startsWith(begin), run.err());
        assertEquals("loomwright: 1 fault in the files; nothing was analysed", run.messages().get(1));
    }

    @Test
    void theYardItselfIsSound() {
        CommandRun run = CommandRun.of("check", "-a", "all", vehicle);
        assertEquals("", run.err());
        assertEquals(0, run.code(), run.out());
    }

    // ---- not a file of ours

    @Test
    void notXml() {
        assertFaults(yard.mark(vehicle, "§trailer = wren\n") + " not an XML file; expected text that starts with <?xml");
    }

    @Test
    void emptyFile() {
        assertFaults(yard.mark(vehicle, "§")
                + " the file is empty; expected an XML file with a root element such as vehicle:Vehicle");
    }

    @Test
    void truncated() {
        String text = Yard.text(vehicle);
        String begun = text.substring(0, text.indexOf(" a=\"X1.2\" b=\"K1.30\""));
        int line = (int) begun.lines().count() - 1;
        assertFaults(yard.mark(vehicle, begun + "§") + " vehicle wren > arrangement near > cable W7: the file ends too early:"
                + " the cable begun in line " + line + " is not closed; expected a file that was written to its end");
    }

    @Test
    void truncatedAnywhereIsOneFault() {
        String text = Yard.text(vehicle).stripTrailing();
        for (int at = 40; at < text.length(); at += 487) {
            yard.mark(vehicle, text.substring(0, at));
            assertOnlyFaultBegins(vehicle + ":");
        }
    }

    @Test
    void binaryGarbage() {
        byte[] bytes = new byte[5000];
        new Random(7).nextBytes(bytes);
        yard.write("wren.vehicle", bytes);
        assertFaults(vehicle + ":1:1: not a text in UTF-8; expected an XML file saved as UTF-8");
    }

    @Test
    void nothingButZeros() {
        yard.write("wren.vehicle", new byte[5000]);
        assertFaults(vehicle + ":1:1: not an XML file; expected text that starts with <?xml");
    }

    @Test
    void utf16() {
        String text = Yard.text(vehicle);
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            yard.write("wren.vehicle", text.replace("UTF-8", "UTF-16").getBytes(charset));
            assertOnlyFaultBegins(vehicle + ":1:");
        }
    }

    @Test
    void wrongRoot() {
        assertFaults(yard.mark(vehicle, "§<plan xmlns=\"http://example.org/plan\"/>\n")
                + " the root element is 'plan' of http://example.org/plan; expected vehicle:Vehicle, parts:PartsLibrary,"
                + " parts:Stock or practice:Practice, for example xmlns:vehicle=\"http://loomwright.org/vehicle/1\"");
    }

    @Test
    void practiceGivenAsVehicle() {
        vehicle = yard.practice();
        assertFaults(yard.practice() + ":2:1: practice yard: this is a practice; expected a vehicle");
    }

    @Test
    void newerFormat() {
        assertFault("format=\"1.0\"", "§format=\"1.1\"",
                "format: the file is newer than this program: version 1.1; expected version 1.0 or older; use a newer program");
    }

    // ---- XML that would harm

    @Test
    void doctype() {
        assertFault("<vehicle:Vehicle ", "§<!DOCTYPE v SYSTEM \"file:///etc/passwd\">\n<vehicle:Vehicle ",
                "a DOCTYPE is not read: it could pull in other files or grow without end; expected a file without <!DOCTYPE>");
    }

    @Test
    void entityBomb() {
        StringBuilder bomb = new StringBuilder("§<!DOCTYPE v [\n<!ENTITY e0 \"ha\">\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("<!ENTITY e").append(i).append(" \"&e").append(i - 1).append(";&e").append(i - 1).append(";\">\n");
        }
        yard.edit(vehicle, "Wren, yard trailer", "&e39;");
        assertFault("<vehicle:Vehicle ", bomb + "]>\n<vehicle:Vehicle ",
                "a DOCTYPE is not read: it could pull in other files or grow without end; expected a file without <!DOCTYPE>");
    }

    @Test
    void deeplyNested() {
        String at = yard.edit(vehicle, "  <zones ", "  §" + "<a>".repeat(100_000) + "</a>".repeat(100_000) + "\n  <zones ");
        assertOnlyFaultBegins(at + " vehicle wren: unknown element 'a' in a vehicle; expected ");
    }

    @Test
    void deeplyNestedAndTruncated() {
        yard.edit(vehicle, "  <zones ", "<a>".repeat(100_000) + "<zones ");
        CommandRun run = CommandRun.of("check", vehicle);
        assertEquals(2, run.code());
        assertFalse(run.err().contains("\tat "), run.err());
        assertTrue(run.messages().stream().allMatch(line -> line.length() < 1000), run.err());
    }

    // ---- elements and attributes

    @Test
    void unknownElement() {
        String at = yard.edit(vehicle, "  <zones ", "  §<zonse name=\"x\"/>\n  <zones ");
        assertOnlyFaultBegins(at + " vehicle wren: unknown element 'zonse' in a vehicle; expected probably zones; known are ");
    }

    @Test
    void unknownAttribute() {
        assertFault("xMm=\"500\"", "§sMm=\"500\"", "vehicle wren > place bench: unknown attribute 'sMm' of a place;"
                + " expected probably xMm; known are name, label, note, xMm, yMm, zMm, zone");
    }

    @Test
    void notANumber() {
        for (String text : List.of("NaN", "1e400", "Infinity", "0x10", "--5", "1.2.3")) {
            yard = new Yard(temp);
            assertFault("xMm=\"500\"", "§xMm=\"" + text + "\"",
                    "vehicle wren > place bench: xMm: '" + text + "' is not a plain decimal number such as 2.5");
        }
    }

    @Test
    void negativeValues() {
        assertFault("<runs name=\"R1\" from=\"bench\" to=\"middle\" lengthMm=\"1050\"",
                "§<runs name=\"R1\" from=\"bench\" to=\"middle\" lengthMm=\"-1050\"",
                "vehicle wren > run R1: lengthMm of -1050 cannot be meant; expected 0 to 200000 mm");
    }

    @Test
    void negativeSectionIsOneFaultOnly() {
        assertFault("<cables name=\"W4\" part=\"single\" sectionMm2=\"2.5\"",
                "§<cables name=\"W4\" part=\"single\" sectionMm2=\"-2.5\"",
                "vehicle wren > arrangement near > cable W4: sectionMm2 of -2.5 cannot be meant; expected 0.01 to 1000 mm2");
    }

    @Test
    void absurdValues() {
        assertFault("<zones name=\"inside\" ambientMinC=\"-10\" ambientMaxC=\"40\"",
                "§<zones name=\"inside\" ambientMinC=\"-10\" ambientMaxC=\"5000\"",
                "vehicle wren > zone inside: ambientMaxC of 5000 cannot be meant; expected -100 to 1000 degC");
    }

    @Test
    void absurdValuesInTheLibraryAreToldOnce() {
        String at = yard.edit(yard.parts(), "<rows sectionMm2=\"2.5\" r20MaxMilliohmPerM=\"7.60\"",
                "§<rows sectionMm2=\"2.5\" r20MaxMilliohmPerM=\"-7.60\"");
        yard.write("twin.vehicle", Yard.text(vehicle).replace("name=\"wren\"", "name=\"twin\""));
        vehicle = yard.folder();
        assertFaults(at + " parts library yard > cable part single > cable row number 2: r20MaxMilliohmPerM of -7.60 cannot be"
                + " meant; expected 0.0001 to 100000 mohm/m");
    }

    @Test
    void severalFaultsAreToldInTheOrderOfTheFile() {
        String second = yard.edit(vehicle, "xMm=\"1500\"", "§xMm=\"x\"");
        String first = yard.edit(vehicle, "xMm=\"500\"", "§xMm=\"NaN\"");
        assertFaults(first + " vehicle wren > place bench: xMm: 'NaN' is not a plain decimal number such as 2.5",
                second + " vehicle wren > place middle: xMm: 'x' is not a plain decimal number such as 2.5");
    }

    @Test
    void veryLongNamesAreCutInMessages() {
        String text = Yard.text(vehicle).replace("\"inside\"", "\"" + "z".repeat(50_000) + "\"");
        String at = yard.mark(vehicle, text.replace("<zones ", "§<zones "));
        assertOnlyFaultBegins(at + " vehicle wren > zone " + "z".repeat(90) + "...: 'z");
        assertTrue(CommandRun.of("check", vehicle).messages().get(0).length() < at.length() + 400);
    }

    @Test
    void manyFaultsAreNotAllListed() {
        StringBuilder zones = new StringBuilder();
        for (int i = 0; i < 500; i++) {
            zones.append("  <zones name=\"Z").append(i).append("\" ambientMinC=\"0\" ambientMaxC=\"5000\"/>\n");
        }
        yard.edit(vehicle, "  <places ", zones + "  <places ");
        CommandRun run = CommandRun.of("check", vehicle);
        assertEquals(2, run.code());
        assertEquals(202, run.messages().size());
        assertEquals(200, run.messagesAbout(vehicle).size());
        assertEquals(List.of("loomwright: 300 more faults are not listed",
                "loomwright: 500 faults in the files; nothing was analysed"), run.messages().subList(200, 202));
    }

    // ---- references and names

    @Test
    void danglingReference() {
        assertFault("part=\"lamp\" place=\"rear\"", "part=\"lamp\" §place=\"reer\"", "vehicle wren > device E1: place:"
                + " there is no place 'reer' here; expected the name of a place; probably rear");
    }

    @Test
    void danglingTerminal() {
        assertFault("<cores name=\"1\" colour=\"RD\" a=\"X1.1\" b=\"S1.1\"/>",
                "§<cores name=\"1\" colour=\"RD\" a=\"X1.1\" b=\"S1.9\"/>", "vehicle wren > arrangement near > cable W4 > core 1:"
                        + " S1 (hand-switch) has no terminal 9; expected one of 1, 2");
    }

    @Test
    void ambiguousReference() {
        yard.write("parts/more.parts", """
                <parts:PartsLibrary xmlns:parts="http://loomwright.org/parts/1" name="more" format="1.0">
                  <devices name="lamp" kind="lamp"/>
                </parts:PartsLibrary>
                """);
        yard.edit(vehicle, LIBRARIES, "libraries=\"parts/yard.parts#/ parts/more.parts#/\"");
        assertFault("part=\"lamp\"", "§part=\"lamp\"", "vehicle wren > device E1: part: 'lamp' is ambiguous: it may be"
                + " parts library yard > device part lamp or parts library more > device part lamp;"
                + " expected yard/lamp or more/lamp");
    }

    @Test
    void missingLibrary() {
        assertFault(LIBRARIES, "§libraries=\"parts/gone.parts#/\"",
                "vehicle wren: libraries: parts/gone.parts does not exist; expected an existing file");
    }

    @Test
    void librariesThatUseEachOther() {
        String at = yard.mark(yard.folder().resolve("parts/more.parts"), """
                <parts:PartsLibrary xmlns:parts="http://loomwright.org/parts/1" name="more" format="1.0" §uses="yard.parts#/"/>
                """);
        yard.edit(yard.parts(), "label=\"Parts for tests\"", "label=\"Parts for tests\" uses=\"more.parts#/\"");
        assertFaults(at + " parts library more: uses: libraries use each other in a circle:"
                + " yard.parts > more.parts > yard.parts; expected files that depend on each other one way only");
    }

    @Test
    void duplicateDesignationThatNothingRefersTo() {
        assertFault("<cables name=\"W12\"", "§<cables name=\"W11\"", "vehicle wren > arrangement near > cable W11:"
                + " 'W11' is already the name of a cable in the same place; expected a name of its own");
    }

    @Test
    void duplicateDesignationIsToldWhereItIsReferredTo() {
        String at = yard.edit(vehicle, "<positions device=\"S2\"", "<positions §device=\"S2\"");
        yard.edit(vehicle, "  <cases ", "  <devices name=\"S2\" part=\"hand-switch\" place=\"rear\"/>\n  <cases ");
        CommandRun run = CommandRun.of("check", vehicle);
        assertEquals(2, run.code());
        // the position in the case, and two cables in each of two arrangements
        assertEquals(5, run.messagesAbout(vehicle).size(), run.err());
        assertEquals(6, run.messages().size(), run.err());
        assertTrue(run.messagesAbout(vehicle).stream().allMatch(line -> line.endsWith("is ambiguous: it may be"
                + " vehicle wren > device S2 or vehicle wren > device S2; expected names that differ")), run.err());
        String[] place = at.split(":");
        int line = Integer.parseInt(place[place.length - 2]) + 1;
        assertTrue(run.messages().get(0).startsWith(vehicle + ":" + line + ":" + place[place.length - 1] + ": "), run.err());
    }

    @Test
    void pathOutOfTheFolder() {
        assertFault(LIBRARIES, "§libraries=\"../../../etc/x.parts#/\"", "vehicle wren: libraries: ../../../etc/x.parts is outside"
                + " the folders this file may refer to; expected a file below " + realOf(temp));
    }

    private static Path realOf(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException problem) {
            throw new java.io.UncheckedIOException(problem);
        }
    }

    @Test
    void symbolicLinkOutOfTheFolder() throws IOException {
        Path outside = Files.createDirectories(temp.resolve("elsewhere"));
        Files.copy(yard.parts(), outside.resolve("yard.parts"));
        Yard inner = new Yard(temp.resolve("a/b"));
        Files.createSymbolicLink(inner.folder().resolve("parts/link.parts"), outside.resolve("yard.parts"));
        yard = inner;
        vehicle = inner.vehicle();
        assertFault(LIBRARIES, "§libraries=\"parts/link.parts#/\"", "vehicle wren: libraries: parts/link.parts is outside"
                + " the folders this file may refer to; expected a file below " + realOf(temp.resolve("a/b")));
    }

    @Test
    void relayThatFeedsItsOwnControlCircuit() {
        yard.edit(vehicle, "a=\"S2.2\"", "a=\"K1.87\"");
        assertFault("<devices name=\"K1\"", "§<devices name=\"K1\"", "vehicle wren > arrangement near > device K1:"
                + " the coil of K1 is fed only through its own contact and can never pull in;"
                + " expected a feed of the coil that does not pass the relay's contact");
    }

    // ---- practices

    @Test
    void practiceWithUnknownLimit() {
        assertFaults(yard.edit(yard.practice(), "<limits name=\"length.tail\"", "§<limits name=\"length.tial\"")
                + " practice yard > limit length.tial: no study knows a limit length.tial;"
                + " expected a limit that the common practice lists");
    }

    @Test
    void practiceWithUnknownRule() {
        assertFaults(yard.edit(yard.practice(), "</practice:P",
                "  §<ruleSettings rule=\"drop-clas\" enabled=\"false\"/>\n</practice:P")
                + " practice yard > rule setting number 1: there is no rule drop-clas;"
                + " expected the slug of a rule, as printed with a finding");
    }

    @Test
    void practiceGivenByOptionIsCheckedToo() {
        Path other = yard.write("other.practice", Yard.text(yard.practice()).replace("unit=\"mm\"", "unit=\"cm\""));
        CommandRun run = CommandRun.of("check", "-p", other, vehicle);
        assertEquals(2, run.code());
        assertEquals(List.of(other + ":3:3: practice yard > limit length.tail: length.tail is given in cm; expected mm",
                "loomwright: 1 fault in the files; nothing was analysed"), run.messages());
        assertEquals("", run.out());
    }

    // ---- files and folders

    @Test
    void missingFile() {
        CommandRun run = CommandRun.of("check", yard.folder().resolve("nobody.vehicle"));
        assertEquals(2, run.code());
        assertEquals(List.of("loomwright: no such file or folder: " + yard.folder().resolve("nobody.vehicle")), run.messages());
    }

    @Test
    void folderWithoutVehicles() {
        CommandRun run = CommandRun.of("check", yard.folder().resolve("parts"));
        assertEquals(2, run.code());
        assertEquals(List.of("loomwright: no vehicle file in " + yard.folder().resolve("parts")
                + "; expected files named *.vehicle"), run.messages());
    }

    @Test
    void folderInPlaceOfTheLibrary() {
        assertFault(LIBRARIES, "§libraries=\"parts#/\"", "vehicle wren: libraries: parts is a folder; expected a file");
    }

    /**
     * Root may read every file, and so must the program then; that refusals of the system are told in these words is also
     * tested with the model's files, without a file system.
     */
    @Test
    void noPermission() throws IOException {
        Files.setPosixFilePermissions(yard.parts(), Set.of());
        if (Files.isReadable(yard.parts())) {
            assertEquals(0, CommandRun.of("check", vehicle).code());
        } else {
            assertFault(LIBRARIES, "§" + LIBRARIES, "vehicle wren: libraries: parts/yard.parts may not be read: no permission;"
                    + " expected a file you may read");
        }
    }

    @Test
    void nameThatTheFileSystemRefuses() {
        assertFault(LIBRARIES, "§libraries=\"" + "p".repeat(400) + ".parts#/\"", "vehicle wren: libraries: " + "p".repeat(90)
                + "... does not exist; expected an existing file");
    }

    // ---- what else happens

    @Test
    void soundVehiclesAreStillAnalysed() {
        Path broken = yard.write("broken.vehicle", "no XML");
        CommandRun run = CommandRun.of("check", yard.folder());
        assertEquals(2, run.code());
        assertEquals(List.of(broken + ":1:1: not an XML file; expected text that starts with <?xml",
                "loomwright: 1 fault in the files; vehicles that use them were not analysed"), run.messages());
        assertTrue(run.out().startsWith("wren  Wren, yard trailer"), run.out());
    }

    @Test
    void faultOfASharedFileCountsForEveryVehicleThatUsesIt() {
        yard.edit(yard.practice(), "<limits name=\"length.tail\"", "<limits name=\"length.tial\"");
        yard.write("a.vehicle", Yard.text(vehicle).replace("name=\"wren\"", "name=\"a\""));
        yard.write("z.vehicle", Yard.text(vehicle).replace("name=\"wren\"", "name=\"z\"")
                .replace(" practice=\"yard.practice#/\"", ""));
        CommandRun run = CommandRun.of("check", yard.folder());
        assertEquals(2, run.code());
        assertEquals(2, run.messages().size(), run.err());
        assertTrue(run.out().startsWith("z  Wren"), run.out());
        assertFalse(run.out().contains("\nwren "), run.out());
        assertFalse(run.out().contains("\na "), run.out());
    }

    @Test
    void pathsAreShownTheWayTheyWereGiven() {
        yard.edit(vehicle, "a=\"S2.2\"", "a=\"K1.87\"");
        Path here = Path.of("").toAbsolutePath();
        Path relative = here.relativize(vehicle.toAbsolutePath());
        CommandRun run = CommandRun.of("check", relative);
        assertEquals(1, run.messagesAbout(relative).size(), run.err());
        yard = new Yard(temp);
        yard.edit(yard.practice(), "<limits name=\"length.tail\"", "<limits name=\"length.tial\"");
        run = CommandRun.of("check", relative);
        assertEquals(1, run.messagesAbout(here.relativize(yard.practice().toAbsolutePath())).size(), run.err());
    }

    @Test
    void listsRefuseTheSameFaults() {
        String at = yard.edit(vehicle, "xMm=\"500\"", "§xMm=\"NaN\"");
        for (String command : List.of("bom", "cables")) {
            CommandRun run = CommandRun.of(command, vehicle);
            assertEquals(2, run.code());
            assertEquals("", run.out());
            assertEquals(List.of(at + " vehicle wren > place bench: xMm: 'NaN' is not a plain decimal number such as 2.5"),
                    run.messages());
        }
    }
}
