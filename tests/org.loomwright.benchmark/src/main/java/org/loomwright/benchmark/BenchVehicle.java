// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A vehicle file with any number of loads, made for measuring: starter battery, alternator and starter on the structure, a second
 * battery behind a voltage-sensing link, fuse boxes of ten loads along a row of places, every second load returning through the
 * structure, chassis, body and engine with straps, and three states of its own. Uses the general library of the samples.
 */
final class BenchVehicle {
    private static final int PER_BOX = 10;
    private static final List<String> PARTS = List.of("work-light-led-20", "water-pump-60", "fridge-45", "usb-socket-36",
            "fan-10", "radio-car", "interior-light-led-5", "socket-12-10", "laptop-supply-90", "router-15");
    private final StringBuilder text = new StringBuilder();
    private final int loads;
    private final int boxes;

    private BenchVehicle(int loads) {
        this.loads = loads;
        this.boxes = (loads + PER_BOX - 1) / PER_BOX;
    }

    /** Opens a vehicle of so many loads; run in the folder of this module. */
    static Vehicle open(int loads) {
        try {
            Path folder = Files.createTempDirectory("loomwright-benchmark");
            Path parts = Path.of("../../bundles/org.loomwright.samples/fleet/parts/base.parts");
            Files.createDirectory(folder.resolve("parts"));
            Files.copy(parts, folder.resolve("parts/base.parts"));
            Path file = folder.resolve("bench.vehicle");
            Files.writeString(file, new BenchVehicle(loads).written());
            ReadFile<Vehicle> read = new VehicleFiles().openVehicle(file);
            if (!read.isSound()) {
                throw new IllegalStateException(read.faults().toString());
            }
            return read.root();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private String written() {
        line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        line("<vehicle:Vehicle xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\" "
                + "xmlns:vehicle=\"http://loomwright.org/vehicle/1\" name=\"bench\" format=\"1.0\" "
                + "libraries=\"parts/base.parts#/\">");
        line("<domains name=\"main\" nominalV=\"12\" source=\"G1.30\"/>");
        line("<zones name=\"inside\" ambientMinC=\"-10\" ambientMaxC=\"45\"/>");
        line("<places name=\"front\" xMm=\"4000\" yMm=\"300\" zMm=\"800\" zone=\"inside\"/>");
        for (int b = 0; b < boxes; b++) {
            line("<places name=\"b%d\" xMm=\"%d\" yMm=\"300\" zMm=\"800\" zone=\"inside\"/>", b, 3500 - 3500 * b / boxes);
            line("<places name=\"l%d\" xMm=\"%d\" yMm=\"-300\" zMm=\"1600\" zone=\"inside\"/>", b, 3500 - 3500 * b / boxes);
        }
        for (String body : List.of("chassis", "shell", "engine")) {
            line("<bodies name=\"%s\" milliohm=\"0.1\"/>", body);
        }
        for (int b = 0; b < boxes; b++) {
            line("<runs name=\"R%d\" from=\"%s\" to=\"b%d\" body=\"chassis\"/>", b, b == 0 ? "front" : "b" + (b - 1), b);
            line("<runs name=\"L%d\" from=\"b%d\" to=\"l%d\" body=\"shell\"/>", b, b, b);
        }
        structure();
        devices();
        cables();
        states();
        line("</vehicle:Vehicle>");
        return text.toString();
    }

    private void structure() {
        for (String point : List.of("1:chassis", "2:engine", "3:chassis", "4:shell", "5:chassis", "6:chassis")) {
            line("<earthPoints name=\"XE%s\" body=\"%s\" place=\"front\" studMm=\"8\"/>", (Object[]) point.split(":"));
        }
        for (int b = 0; b < boxes; b++) {
            line("<earthPoints name=\"XE%d\" body=\"shell\" place=\"b%d\" studMm=\"8\"/>", 10 + b, b);
        }
        line("<bonds name=\"WE1\" a=\"XE2\" b=\"XE3\" part=\"strap-50\" lengthMm=\"400\"/>");
        line("<bonds name=\"WE2\" a=\"XE4\" b=\"XE5\" part=\"strap-35\" lengthMm=\"300\"/>");
    }

    private void devices() {
        line("<devices name=\"G1\" part=\"battery-agm-12-95\" place=\"front\"/>");
        line("<devices name=\"G2\" part=\"alternator-12-150\" place=\"front\" body=\"engine\"/>");
        line("<devices name=\"M1\" part=\"starter-12-1.4\" place=\"front\" body=\"engine\"/>");
        line("<devices name=\"G10\" part=\"battery-agm-12-220\" place=\"b0\"/>");
        line("<devices name=\"K1\" part=\"split-relay-12-140\" place=\"front\"/>");
        line("<devices name=\"F1\" part=\"holder-dc-stud\" place=\"front\"><ways name=\"1\" protector=\"dc-10ka-200\"/></devices>");
        line("<devices name=\"F10\" part=\"holder-dc-stud\" place=\"b0\"><ways name=\"1\" protector=\"dc-10ka-300\"/></devices>");
        for (int b = 0; b < boxes; b++) {
            line("<devices name=\"X%d\" part=\"box-12-neg\" place=\"b%d\">", b, b);
            for (int w = 1; w <= PER_BOX; w++) {
                line("<ways name=\"%d\" protector=\"blade-std-15\"/>", w);
            }
            line("</devices>");
        }
        for (int i = 0; i < loads; i++) {
            line("<devices name=\"E%d\" part=\"%s\" place=\"l%d\"/>", i, PARTS.get(i % PARTS.size()), i / PER_BOX);
        }
    }

    private void cables() {
        single("WM1", "battery-xl", 70, "G1.30", "M1.30");
        single("WM2", "battery-xl", 70, "G1.31", "XE1");
        single("WM3", "battery-xl", 35, "G2.B+", "G1.30");
        single("WM4", "battery-xl", 50, "G1.30", "F1.30");
        single("WM5", "battery-xl", 50, "F1.1", "K1.A");
        single("WM6", "battery-xl", 50, "K1.B", "G10.30");
        single("WM7", "single-xl", 2, "K1.31", "XE6");
        single("WM8", "battery-xl", 70, "G10.30", "F10.30");
        single("WM9", "battery-xl", 70, "G10.31", "XE6");
        for (int b = 0; b < boxes; b++) {
            single("WP" + b, "battery-xl", 35, b == 0 ? "F10.1" : "X" + (b - 1) + ".30", "X" + b + ".30");
            single("WN" + b, "battery-xl", 35, "X" + b + ".31", "XE" + (10 + b));
        }
        for (int i = 0; i < loads; i++) {
            String box = "X" + i / PER_BOX;
            int way = i % PER_BOX + 1;
            single("W" + i, "single-xl", 2, box + "." + way, "E" + i + ".L+");
            single("V" + i, "single-xl", 2, "E" + i + ".L-", i % 2 == 0 ? box + ".N" + way : "XE" + (10 + i / PER_BOX));
        }
    }

    private void states() {
        for (String state : List.of("night:parked:false:on", "road:driving:true:on", "camp:working:false:off")) {
            String[] words = state.split(":");
            line("<cases name=\"%s\" kind=\"%s\" ignition=\"%s\" engine=\"%s\" engineRpm=\"1800\">", words[0], words[1],
                    words[3], words[2]);
            for (int i = 0; i < loads; i += words[0].equals("night") ? 3 : 1) {
                line("<demands device=\"E%d\" factor=\"0.5\"/>", i);
            }
            line("</cases>");
        }
    }

    private void single(String name, String part, int sectionMm2, String a, String b) {
        line("<cables name=\"%s\" part=\"%s\" sectionMm2=\"%d\"><cores colour=\"RD\" a=\"%s\" b=\"%s\"/></cables>", name, part,
                sectionMm2, a, b);
    }

    private void line(String format, Object... values) {
        text.append(values.length == 0 ? format : String.format(java.util.Locale.ROOT, format, values)).append('\n');
    }
}
