// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.vehicle.EarthPoint;

/**
 * How what takes current gives it back.
 *
 * @param earth  earth point when it returns through the structure, else null
 * @param target terminal of the bar, battery or measuring resistor that collects it, else null
 * @param wires  return wires at the terminal itself
 */
record Returns(EarthPoint earth, String target, List<Wire> wires) {
    static final Returns NONE = new Returns(null, null, List.of());

    /** Of one terminal: along return wires, through other takers' terminals, to the first earth point or collecting terminal. */
    static Returns of(Drafting drafting, String key) {
        List<Wire> own = drafting.content().at(key).stream().filter(drafting.polarity()::back).toList();
        Set<String> seen = new LinkedHashSet<>(List.of(key));
        List<String> frontier = new ArrayList<>(seen);
        while (!frontier.isEmpty()) {
            Set<String> next = new TreeSet<>();
            for (String at : frontier) {
                for (Wire wire : drafting.content().at(at)) {
                    if (drafting.polarity().back(wire) && seen.add(wire.other(at))) {
                        next.add(wire.other(at));
                    }
                }
            }
            for (String at : next) {
                EarthPoint earth = drafting.content().earths().get(at);
                if (earth != null) {
                    return new Returns(earth, null, own);
                }
                if (collects(drafting.content(), at)) {
                    return new Returns(null, at, own);
                }
            }
            frontier = new ArrayList<>(next);
        }
        return new Returns(null, null, own);
    }

    /** True for terminals that gather returns: bars, posts, measuring resistors, contacts and joints in the return, batteries. */
    static boolean collects(LineContent content, String key) {
        Unit unit = content.unitOf(key);
        if (unit == null) {
            return false;
        }
        if (unit.kind() == DeviceKind.BATTERY || unit.kind() == DeviceKind.BUSBAR || unit.kind() == DeviceKind.SPLICE) {
            return true;
        }
        String name = LineContent.terminalName(key);
        return unit.links().stream().anyMatch(link -> (link.a().equals(name) || link.b().equals(name)) && link.carries());
    }

    boolean structure() {
        return earth != null;
    }

    /** Where it returns through the structure: the body's name. */
    String bodyName() {
        if (earth == null) {
            return "";
        }
        return earth.getBody() == null || earth.getBody().getName() == null ? "-" + earth.getName() : earth.getBody().getName();
    }
}
