// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.List;

/**
 * What an earth diagram shows, read from the model; bodies are named by their index.
 *
 * @param bodies structure bodies, in file order
 * @param joins  straps, bolted joints and seams between two different bodies, in file order
 * @param studs  earth points at which something other than a strap ends, and cases bolted to a body
 */
record EarthContent(List<Body> bodies, List<Join> joins, List<Stud> studs) {
    EarthContent {
        bodies = List.copyOf(bodies);
        joins = List.copyOf(joins);
        studs = List.copyOf(studs);
    }

    /** A body; policy is what its loads may do in words, null where nothing is forbidden. */
    record Body(String id, String name, String label, String policy, boolean forbidden) {
        String title() {
            return label == null || label.isBlank() ? name : label;
        }
    }

    /**
     * A strap, joint or seam.
     *
     * @param words what it is, for example {@code strap 50 mm2}
     * @param studA name of the earth point at a, null for a seam
     * @param ohm   resistance, ohm; NaN when not known
     */
    record Join(String id, String shown, String words, int a, int b, String studAId, String studA, String studBId, String studB,
            double sectionMm2, double ohm) {
        int other(int body) {
            return a == body ? b : a;
        }

        boolean between(int x, int y) {
            return a == x && b == y || a == y && b == x;
        }
    }

    /**
     * An earth point with the cables that end there, or the case of a device.
     *
     * @param shown name, for example {@code XE4}; of a case {@code case}
     * @param entries what ends there
     */
    record Stud(String id, String shown, String label, int body, List<Entry> entries) {
        Stud {
            entries = List.copyOf(entries);
        }
    }

    /**
     * One end of a core at an earth point, or a case.
     *
     * @param id      cable, or terminal of the case
     * @param core    id under which the current is found
     * @param forward the current counts as into the body when it flows in the direction of the core
     * @param shown   device at the other end, or the cable where it ends elsewhere
     */
    record Entry(String id, String core, boolean forward, String shown, String label, double sectionMm2) {
    }

    /** How much hangs on a body. */
    int weight(int body) {
        int weight = 0;
        for (Join join : joins) {
            weight += join.a() == body || join.b() == body ? 1 : 0;
        }
        for (Stud stud : studs) {
            weight += stud.body() == body ? stud.entries().size() : 0;
        }
        return weight;
    }

    List<Stud> studsOf(int body) {
        return studs.stream().filter(stud -> stud.body() == body).toList();
    }
}
