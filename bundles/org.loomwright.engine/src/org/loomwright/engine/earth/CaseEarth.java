// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;

/**
 * The structure in one case. Lists are indexed as the plan's bodies, bonds and body links.
 *
 * @param caseName case
 * @param cranking the case is a start
 * @param settled  the case has an operating point; the figures of one without say little
 * @param bodyV    potential of each body against the battery's minus, V; NaN where nothing ties it to a source
 * @param bondA    current of each bond from its earth point a to b, A
 * @param seamA    current of each body link from body a to b, A
 * @param contacts earth points and cases, those that are part of the network
 */
public record CaseEarth(String caseName, boolean cranking, boolean settled, List<Double> bodyV, List<Double> bondA,
        List<Double> seamA, List<ContactFlow> contacts) {
    public CaseEarth {
        bodyV = List.copyOf(bodyV);
        bondA = List.copyOf(bondA);
        seamA = List.copyOf(seamA);
        contacts = List.copyOf(contacts);
    }

    /**
     * The contact of an earth point, or of a case, with its body.
     *
     * @param terminal terminal of the plan
     * @param currentA current into the body, A
     * @param dropV    voltage from the terminal to the body, V
     * @param heatW    heat in the contact, half of the body's own resistance included, W
     */
    public record ContactFlow(int terminal, double currentA, double dropV, double heatW) {
    }
}
