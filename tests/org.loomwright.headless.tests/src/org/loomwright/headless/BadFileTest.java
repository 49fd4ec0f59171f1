// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Files that are no vehicle, harmful XML, unknown elements, and values that cannot be meant. */
class BadFileTest extends SpoiledYard {

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
}
