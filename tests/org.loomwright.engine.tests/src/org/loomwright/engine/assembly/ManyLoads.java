// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.model.vehicle.Place;

/**
 * A vehicle with many lamps: a spine of twenty places 1 m apart, a box at each, and a rib of places 100 mm apart at each on which
 * every place has a lamp, wired to the box by a supply and a return.
 */
final class ManyLoads {
    private static final int RIBS = 20;

    private ManyLoads() {
    }

    static TestVehicle van(int loads) {
        TestVehicle van = new TestVehicle();
        van.zone("bay", "-20", "50");
        van.place("s0", "0 0 0", "bay");
        van.device("G1", "battery", "s0");
        van.domain("12V", "12", "G1.30");
        for (int rib = 0; rib < RIBS; rib++) {
            if (rib > 0) {
                van.place("s" + rib, rib * 1000 + " 0 0", "bay");
                van.run("S" + rib, "s" + (rib - 1), "s" + rib, null);
            }
            van.device("F" + rib, "box", "s" + rib);
            van.way("F" + rib, "1", "f20");
            van.cable("WF" + rib, "16", "G1.30", "F" + rib + ".30");
            Place before = van.vehicle.getPlaces().get(van.vehicle.getPlaces().size() - 1);
            for (int i = 1; i <= loads / RIBS; i++) {
                int number = rib * (loads / RIBS) + i;
                Place place = van.place("p" + number, rib * 1000 + " " + i * 100 + " 0", "bay");
                van.run("R" + number, before.getName(), place.getName(), null);
                before = place;
                van.device("E" + number, "lamp", place.getName());
                van.cable("W" + number, "2.5", "F" + rib + ".1", "E" + number + ".L+");
                van.cable("N" + number, "2.5", "E" + number + ".L-", "G1.31");
            }
        }
        return van;
    }
}
