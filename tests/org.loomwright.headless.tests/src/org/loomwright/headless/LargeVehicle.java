// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes sound vehicles of any size: a battery, a main fuse, a rail with a fused way for each box, boxes of six ways along a
 * row of places, and a small load on each way, all returns by conductors.
 */
final class LargeVehicle {
    private static final int WAYS = 6;
    private static final int PLACES = 40;
    private static final int TOTAL_A = 18;
    private final int loads;
    private final int boxes;
    private final int noteLength;

    /**
     * A vehicle.
     *
     * @param loads      number of loads
     * @param noteLength characters in the note of each load and cable
     */
    LargeVehicle(int loads, int noteLength) {
        this.loads = loads;
        this.boxes = (loads + WAYS - 1) / WAYS;
        this.noteLength = noteLength;
    }

    /** Number of cables: feeds and returns of boxes and loads, and the main lead. */
    int cables() {
        return 3 + 2 * boxes + 2 * loads;
    }

    /** Writes the vehicle and its library below a folder. */
    Path write(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("large.parts"), library());
            Path file = folder.resolve("large.vehicle");
            try (Writer out = Files.newBufferedWriter(file)) {
                vehicle(out);
            }
            return file;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private String library() {
        StringBuilder rail = new StringBuilder("""
                  <devices name="sensor" kind="sensor">
                    <terminals name="L+" role="plus"/>
                    <terminals name="L-" role="minus"/>
                    <demands name="D" a="L+" b="L-" law="current" amps="%s"/>
                  </devices>
                  <devices name="rail" kind="box">
                    <terminals name="IN" role="plus"/>
                    <terminals name="31" role="minus" bar="N"/>
                """.formatted(BigDecimal.valueOf(TOTAL_A).divide(BigDecimal.valueOf(loads), 6, RoundingMode.DOWN)));
        for (int i = 1; i <= boxes; i++) {
            rail.append("    <terminals name=\"P").append(i).append("\" role=\"plus\"/>\n");
            rail.append("    <terminals name=\"N").append(i).append("\" role=\"minus\" bar=\"N\"/>\n");
        }
        for (int i = 1; i <= boxes; i++) {
            rail.append("    <ways name=\"P").append(i).append("\" from=\"IN\" out=\"P").append(i)
                    .append("\" forms=\"blade\"/>\n");
        }
        rail.append("  </devices>\n");
        return Yard.original("parts/yard.parts").replace("  <devices name=\"lamp\"", rail + "  <devices name=\"lamp\"");
    }

    private void vehicle(Writer out) throws IOException {
        out.write("""
                <?xml version="1.0" encoding="UTF-8"?>
                <vehicle:Vehicle xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
                xmlns:vehicle="http://loomwright.org/vehicle/1" name="large" format="1.0" libraries="large.parts#/">
                  <domains name="house" nominalV="12" source="G1.30"/>
                  <zones name="inside" ambientMinC="-10" ambientMaxC="40"/>
                """);
        for (int i = 0; i < PLACES; i++) {
            out.write("  <places name=\"P" + i + "\" xMm=\"" + 200 * i + "\" yMm=\"0\" zMm=\"0\" zone=\"inside\"/>\n");
        }
        for (int i = 1; i < PLACES; i++) {
            out.write("  <runs name=\"R" + i + "\" from=\"P" + (i - 1) + "\" to=\"P" + i + "\" zone=\"inside\"/>\n");
        }
        out.write("""
                  <devices name="G1" part="battery" place="P0"/>
                  <devices name="F1" part="holder" place="P0">
                    <ways name="1" protector="strip-60"/>
                  </devices>
                  <devices name="X0" part="rail" place="P0">
                """);
        for (int box = 1; box <= boxes; box++) {
            out.write("    <ways name=\"P" + box + "\" protector=\"blade-10\"/>\n");
        }
        out.write("  </devices>\n");
        String note = noteLength == 0 ? "" : " note=\"" + "0123456789".repeat(1 + noteLength / 10).substring(0, noteLength)
                + "\"";
        for (int box = 1; box <= boxes; box++) {
            out.write("  <devices name=\"X" + box + "\" part=\"box\" place=\"P" + box % PLACES + "\">\n");
            for (int way = 1; way <= WAYS; way++) {
                out.write("    <ways name=\"" + way + "\" protector=\"blade-5\"/>\n");
            }
            out.write("  </devices>\n");
        }
        for (int load = 0; load < loads; load++) {
            out.write("  <devices name=\"B" + load + "\"" + note + " part=\"sensor\" place=\"P" + boxOf(load) % PLACES
                    + "\"/>\n");
        }
        cable(out, "WA", "16", 150, "G1.30", "F1.30", "");
        cable(out, "WB", "16", 200, "F1.1", "X0.IN", "");
        cable(out, "WC", "16", 200, "G1.31", "X0.31", "");
        for (int box = 1; box <= boxes; box++) {
            cable(out, "WF" + box, "2.5", 0, "X0.P" + box, "X" + box + ".30", "");
            cable(out, "WR" + box, "2.5", 0, "X" + box + ".31", "X0.N" + box, "");
        }
        for (int load = 0; load < loads; load++) {
            int way = load % WAYS + 1;
            cable(out, "WP" + load, "1.5", 0, "X" + boxOf(load) + "." + way, "B" + load + ".L+", note);
            cable(out, "WN" + load, "1.5", 0, "B" + load + ".L-", "X" + boxOf(load) + ".N" + way, note);
        }
        out.write("  <cases name=\"work\" kind=\"parked\" ignition=\"off\" allOn=\"true\"/>\n</vehicle:Vehicle>\n");
    }

    private int boxOf(int load) {
        return load / WAYS + 1;
    }

    private static void cable(Writer out, String name, String sectionMm2, int lengthMm, String a, String b, String note)
            throws IOException {
        out.write("  <cables name=\"" + name + "\"" + note + " part=\"single\" sectionMm2=\"" + sectionMm2 + "\""
                + (lengthMm > 0 ? " lengthMm=\"" + lengthMm + "\"" : "") + ">\n    <cores name=\"1\" a=\"" + a + "\" b=\"" + b
                + "\"/>\n  </cables>\n");
    }
}
