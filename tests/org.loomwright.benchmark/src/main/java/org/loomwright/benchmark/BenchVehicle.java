// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A vehicle file with any number of loads, made for measuring: base vehicle with starter battery, alternator, starter and ignition
 * switch; a second battery behind a charging converter; main distributions at it that feed small fuse boxes of ten loads each,
 * half of them straight and half over a zone distribution, so there are two and three levels. Every other box and every fifth
 * load returns through the structure. Three states of its own. Uses the general library of the samples; once sized, it passes
 * the check.
 */
final class BenchVehicle {
    private static final int PER_BOX = 10;
    private static final int DIRECT = 3;
    private static final int PER_ZONE = 4;
    private static final int PER_MAIN = DIRECT + 3 * PER_ZONE;
    private static final int NODES = 9;
    /** Part and amperes, for few and for many loads: what all draw together stays near what the battery gives. */
    private static final List<String> FEW = List.of("work-light-led-20", "water-pump-60", "usb-socket-36", "fan-10",
            "interior-light-led-10", "fridge-45", "router-15", "interior-light-led-5", "radio-car", "screen-10");
    private static final List<String> MANY = List.of("interior-light-led-5", "reading-light-led-2", "fan-10", "camera-5",
            "interior-light-led-10", "reading-light-led-2", "interior-light-led-5", "screen-10", "gas-alarm-2",
            "work-light-led-20");
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
            Files.createDirectory(folder.resolve("parts"));
            for (String shared : List.of("parts/base.parts", "parts/river-team.parts", "team.practice")) {
                Files.copy(Path.of("../../bundles/org.loomwright.samples/fleet", shared), folder.resolve(shared));
            }
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
        line("<?xml version='1.0' encoding='UTF-8'?>");
        line("<vehicle:Vehicle xmi:version='2.0' xmlns:xmi='http://www.omg.org/XMI' "
                + "xmlns:vehicle='http://loomwright.org/vehicle/1' name='bench' format='1.0' returnPolicy='allowed' "
                + "libraries='parts/base.parts#/ parts/river-team.parts#/' practice='team.practice#/'>");
        line("<domains name='truck' nominalV='12' source='G1.30'/>");
        line("<domains name='house' nominalV='12' source='G10.30'/>");
        line("<zones name='inside' ambientMinC='-10' ambientMaxC='45' wetness='IP20'/>");
        places();
        structure();
        baseVehicle();
        house();
        distribution();
        loads();
        cables();
        states();
        waivers();
        line("</vehicle:Vehicle>");
        return text.toString();
    }

    /** Nodes along the vehicle; each box hangs at one of them, its loads at three places around it. */
    private void places() {
        line("<places name='front' xMm='10500' yMm='300' zMm='800' zone='inside'/>");
        for (int n = 0; n < NODES; n++) {
            line("<places name='n%d' xMm='%d' yMm='300' zMm='800' zone='inside'/>", n, 9600 - 1200 * n);
        }
        for (int b = 0; b < boxes; b++) {
            line("<places name='b%d' xMm='%d' yMm='600' zMm='%d' zone='inside'/>", b, 9600 - 1200 * node(b), 1000 + 10 * b);
            for (int p = 0; p < 3; p++) {
                line("<places name='l%d-%d' xMm='%d' yMm='-600' zMm='%d' zone='inside'/>", b, p, 9600 - 1200 * node(b) + 300 * p,
                        1200 + 10 * b);
            }
        }
        line("<bodies name='chassis' milliohm='0.1'/>");
        line("<bodies name='shell' milliohm='0.1'/>");
        line("<bodies name='engine' milliohm='0'/>");
        line("<runs name='R0' from='front' to='n0' lengthMm='900' body='chassis'/>");
        for (int n = 1; n < NODES; n++) {
            line("<runs name='R%d' from='n%d' to='n%d' lengthMm='1200' body='shell'/>", n, n - 1, n);
        }
        for (int b = 0; b < boxes; b++) {
            line("<runs name='B%d' from='n%d' to='b%d' lengthMm='%d' body='shell'/>", b, node(b), b, 250 + 130 * (b % 5));
            for (int p = 0; p < 3; p++) {
                line("<runs name='L%d-%d' from='b%d' to='l%d-%d' lengthMm='%d' body='shell'/>", b, p, b, b, p,
                        400 + 1100 * p + 170 * (b % 4));
            }
        }
    }

    /** Node of a box: the first ones near the battery, the last ones at the far end, all along in between. */
    private int node(int box) {
        return (box * 5 + 2) % NODES;
    }

    private void structure() {
        for (String point : List.of("1:chassis:front", "2:engine:front", "3:chassis:front", "5:chassis:n0", "6:shell:n0",
                "7:chassis:n0")) {
            line("<earthPoints name='XE%s' body='%s' place='%s' studMm='10'/>", (Object[]) point.split(":"));
        }
        for (int b = 0; b < boxes; b++) {
            line("<earthPoints name='XB%d' body='shell' place='b%d' studMm='6'/>", b, b);
        }
        line("<bonds name='WE1' a='XE2' b='XE3' part='strap-50' lengthMm='350'/>");
        line("<bonds name='WE2' a='XE5' b='XE6' part='strap-50' lengthMm='250'/>");
    }

    private void baseVehicle() {
        existing("G1", "battery-agm-12-220", "front", "");
        existing("G2", "alternator-12-90", "front", "engine");
        existing("M1", "starter-12-2.2", "front", "engine");
        existing("S1", "ignition-switch", "front", "");
        line("<devices name='X1' part='box-dc-6' place='front' existing='true'><ways name='1' protector='dc-10ka-125'/>"
                + "<ways name='2' protector='dc-10ka-60'/><ways name='3' protector='dc-10ka-60'/></devices>");
        line("<devices name='X2' part='box-6' place='front' existing='true'><ways name='1' protector='blade-std-20'/></devices>");
        base("WM1", "battery-xl", 70, 900, "G1.30", "M1.30");
        base("WM2", "battery-xl", 120, 300, "G1.31", "XE1");
        base("WM3", "battery-xl", 120, 160, "G1.30", "X1.30");
        base("WM4", "battery-xl", 70, 900, "X1.1", "G2.B+");
        base("WM5", "battery-xl", 16, 700, "X1.2", "X2.30");
        base("WM6", "single-xl", 6, 500, "X2.1", "S1.30");
        base("WM7", "single-xl", 4, 900, "S1.50", "M1.50");
    }

    private void house() {
        line("<devices name='G10' part='battery-lfp-12-300' place='n0'/>");
        line("<devices name='N10' part='bar-neg-main' place='n0'/>");
        line("<devices name='T10' part='charger-12-12-30' place='n0'/>");
        line("<devices name='F13' part='holder-dc-stud' place='n0'><ways name='1' protector='dc-10ka-50'/></devices>");
        single("WH1", "battery-xl", 120, "G10.31", "N10.N1");
        single("WH2", "battery-xl", 50, "N10.N1", "XE7");
        single("WH3", "battery-xl", 35, "X1.3", "T10.IN+");
        single("WH4", "battery-xl", 35, "T10.IN-", "N10.N1");
        single("WH5", "battery-xl", 35, "T10.OUT+", "F13.30");
        single("WH6", "battery-xl", 35, "T10.OUT-", "N10.N1");
        atBattery("WH7", 35, "F13.1");
        for (int m = 0; m * PER_MAIN < boxes; m++) {
            line("<devices name='F2%d' part='holder-dc-stud' place='n0'><ways name='1' protector='dc-10ka-225'/></devices>", m);
            atBattery("WF" + m, 95, "F2" + m + ".30");
            single("WG" + m, "battery-xl", 95, "F2" + m + ".1", "Q" + m + ".30");
        }
    }

    private void distribution() {
        for (int m = 0; m * PER_MAIN < boxes; m++) {
            int here = Math.min(PER_MAIN, boxes - m * PER_MAIN);
            line("<devices name='Q%d' part='box-dc-6' place='n0'>", m);
            for (int way = 1; way <= 6; way++) {
                boolean used = way > 3 ? way - 4 < here : (way - 1) * PER_ZONE < here - DIRECT;
                if (used) {
                    line("<ways name='%d' protector='dc-10ka-%d'/>", way, 80);
                }
            }
            line("</devices>");
            for (int z = 0; z * PER_ZONE < here - DIRECT; z++) {
                String zone = m + "-" + z;
                int first = m * PER_MAIN + DIRECT + z * PER_ZONE;
                line("<devices name='Z%s' part='box-strip-6' place='n%d'>", zone, node(first));
                for (int k = 0; k < PER_ZONE && first + k < boxes; k++) {
                    line("<ways name='%d' protector='strip-sf30-60'/>", k + 1);
                }
                line("</devices>");
                line("<devices name='N%s' part='bar-neg-main' place='n%d'/>", zone, node(first));
                single("WZ" + zone, "battery-xl", 35, "Q" + m + "." + (z + 1), "Z" + zone + ".30");
                single("WY" + zone, "battery-xl", 50, "N" + zone + ".N1", "N10.N" + (2 + m));
            }
        }
        for (int b = 0; b < boxes; b++) {
            line("<devices name='X%d' part='box-12-neg' place='b%d'>", 10 + b, b);
            for (int w = 0; w < PER_BOX && b * PER_BOX + w < loads; w++) {
                line("<ways name='%d' protector='blade-std-10'/>", w + 1);
            }
            line("</devices>");
            int m = b / PER_MAIN;
            int k = b % PER_MAIN;
            String zone = m + "-" + (k - DIRECT) / PER_ZONE;
            single("WP" + b, "battery-xl", 25, k < DIRECT ? "Q" + m + "." + (4 + k)
                    : "Z" + zone + "." + ((k - DIRECT) % PER_ZONE + 1), "X" + (10 + b) + ".30");
            String back = b % 2 == 1 ? "XB" + b : k < DIRECT ? "N10.N4" : "N" + zone + ".N2";
            single("WN" + b, "battery-xl", 25, "X" + (10 + b) + ".31", back);
        }
    }

    private void loads() {
        List<String> parts = loads > 100 ? MANY : FEW;
        for (int i = 0; i < loads; i++) {
            line("<devices name='E%d' part='%s' place='l%d-%d'%s/>", i, parts.get(i % parts.size()), i / PER_BOX, i % 3,
                    near(i) ? "" : " dropClass='other'");
        }
    }

    /** Whether a load hangs at a box with a feed and a return of its own; only there loads that are touchy are put. */
    private static boolean near(int load) {
        int box = load / PER_BOX;
        return box % PER_MAIN < DIRECT && box % 2 == 0;
    }

    private void cables() {
        for (int i = 0; i < loads; i++) {
            String box = "X" + (10 + i / PER_BOX);
            int way = i % PER_BOX + 1;
            if (i % 3 == 0) {
                line("<cables name='W%d' part='twin-xl' sectionMm2='2.5'><cores colour='RD' a='%s.%d' b='E%d.L+'/>"
                        + "<cores colour='BK' a='E%d.L-' b='%s.N%d'/></cables>", i, box, way, i, i, box, way);
            } else {
                single("W" + i, "single-xl", 2.5, box + "." + way, "E" + i + ".L+");
                single("V" + i, "single-xl", 2.5, "E" + i + ".L-", i % 5 == 1 && !near(i) ? "XB" + i / PER_BOX : box + ".N" + way);
            }
        }
    }

    private void states() {
        for (String state : List.of("night:parked:false:off", "road:driving:true:on", "work:working:false:off")) {
            String[] words = state.split(":");
            line("<cases name='%s' kind='%s' ignition='%s' engine='%s' engineRpm='1800' ambientC='20'>", words[0], words[1],
                    words[3], words[2]);
            for (int i = 0; i < loads; i += words[0].equals("night") ? 3 : 1) {
                line("<demands device='E%d' factor='0.5'/>", i);
            }
            line("</cases>");
        }
    }

    /** Fuses beside each other on one way may open together; the samples accept that as well. */
    private void waivers() {
        for (int m = 0; m * PER_MAIN < boxes; m++) {
            for (int way = 1; way <= 6; way++) {
                line("<waivers rule='selectivity' element='Q%d/%d' reason='spares of both are on board'/>", m, way);
            }
            for (int k = 0; k < 3 * PER_ZONE; k++) {
                line("<waivers rule='selectivity' element='Z%d-%d/%d' reason='spares of both are on board'/>", m, k / PER_ZONE,
                        k % PER_ZONE + 1);
            }
        }
    }

    private void existing(String name, String part, String place, String body) {
        line("<devices name='%s' part='%s' place='%s' existing='true'%s/>", name, part, place,
                body.isEmpty() ? "" : " body='" + body + "'");
    }

    private void base(String name, String part, double sectionMm2, int lengthMm, String a, String b) {
        line("<cables name='%s' part='%s' sectionMm2='%s' lengthMm='%d' existing='true'><cores colour='RD' a='%s' b='%s'/></cables>",
                name, part, sectionMm2, lengthMm, a, b);
    }

    private void atBattery(String name, double sectionMm2, String end) {
        line("<cables name='%s' part='battery-xl' sectionMm2='%s' lengthMm='160'><cores colour='RD' a='G10.30' b='%s'/></cables>",
                name, sectionMm2, end);
    }

    private void single(String name, String part, double sectionMm2, String a, String b) {
        line("<cables name='%s' part='%s' sectionMm2='%s'><cores colour='RD' a='%s' b='%s'/></cables>", name, part, sectionMm2, a, b);
    }

    private void line(String format, Object... values) {
        text.append((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).replace('\'', '"')).append('\n');
    }
}
