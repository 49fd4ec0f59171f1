// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** References, names, practices and files that cannot be had, and what happens to the sound vehicles beside them. */
class BadReferenceTest extends SpoiledYard {

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
            throw new UncheckedIOException(problem);
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
