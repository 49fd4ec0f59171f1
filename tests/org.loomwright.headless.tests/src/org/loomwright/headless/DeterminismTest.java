// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same files give the same output, byte by byte, whatever else is checked with them. */
class DeterminismTest {
    @TempDir
    Path temp;
    private Path wren;
    private Path twin;

    @BeforeEach
    void writeTwoVehicles() {
        Yard yard = new Yard(temp);
        wren = yard.vehicle();
        yard.edit(wren, "sectionMm2=\"16\" lengthMm=\"150\"", "sectionMm2=\"16\" lengthMm=\"1500\"");
        twin = yard.write("twin.vehicle", Yard.text(wren).replace("name=\"wren\" label=\"Wren, ", "name=\"twin\" label=\"Twin, ")
                .replace("sectionMm2=\"2.5\"", "sectionMm2=\"1.5\""));
    }

    @Test
    void twoRunsAreEqual() {
        for (String form : new String[] {"text", "json"}) {
            CommandRun first = CommandRun.of("check", "-a", "all", "-f", form, wren, twin);
            assertEquals(first, CommandRun.of("check", "-a", "all", "-f", form, wren, twin));
            assertEquals(1, first.code());
        }
        for (String command : new String[] {"bom", "cables"}) {
            for (String form : new String[] {"text", "csv", "json"}) {
                assertEquals(CommandRun.of(command, "-f", form, wren), CommandRun.of(command, "-f", form, wren));
            }
        }
    }

    @Test
    void textOfAVehicleDoesNotDependOnTheOthers() {
        String both = CommandRun.of("check", wren, twin).out();
        String turned = CommandRun.of("check", twin, wren).out();
        assertNotEquals(both, turned);
        String caution = both.substring(both.indexOf("Low-voltage wiring"));
        String ofWren = without(CommandRun.of("check", wren).out(), caution);
        String ofTwin = without(CommandRun.of("check", twin).out(), caution);
        assertEquals(ofWren + ofTwin + caution, both);
        assertEquals(ofTwin + ofWren + caution, turned);
    }

    private static String without(String text, String end) {
        assertEquals(end, text.substring(text.length() - end.length()));
        return text.substring(0, text.length() - end.length());
    }

    @Test
    void jsonOfAVehicleDoesNotDependOnTheOthers() {
        var both = Schemas.parsed(CommandRun.of("check", "-f", "json", "-e", "W4", wren, twin).out()).get("vehicles");
        var turned = Schemas.parsed(CommandRun.of("check", "-f", "json", "-e", "W4", twin, wren).out()).get("vehicles");
        assertEquals(both.get(0), turned.get(1));
        assertEquals(both.get(1), turned.get(0));
        assertNotEquals(both.get(0), both.get(1));
    }

    @Test
    void oneCaseSaysTheSameAloneAsAmongTheOthers() {
        var all = Schemas.parsed(CommandRun.of("check", "-f", "json", "-e", "W4", wren).out()).get("vehicles").get(0);
        var one = Schemas.parsed(CommandRun.of("check", "-f", "json", "-c", "evening", "-e", "W4", wren).out()).get("vehicles")
                .get(0);
        int found = 0;
        for (var element : all.get("explained")) {
            if (element.path("case").asText().equals("evening")) {
                assertEquals(element, one.get("explained").get(one.get("explained").size() - 1));
                found++;
            }
        }
        assertEquals(1, found);
    }
}
