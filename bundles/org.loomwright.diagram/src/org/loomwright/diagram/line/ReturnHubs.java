// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.DeviceKind;

/** Finds what gathers returns, what lies between, and how far each is from a battery. */
final class ReturnHubs {
    private final Drafting drafting;
    private final Map<String, ReturnHub> byTerminal = new LinkedHashMap<>();
    private final List<ReturnHub> hubs = new ArrayList<>();
    private final List<Between> elements = new ArrayList<>();
    private final Map<ReturnHub, Integer> steps = new LinkedHashMap<>();

    /** An element of a device in the return. */
    record Between(Unit unit, Link link, ReturnHub a, ReturnHub b) {
    }

    private ReturnHubs(Drafting drafting) {
        this.drafting = drafting;
    }

    static ReturnHubs of(Drafting drafting) {
        ReturnHubs found = new ReturnHubs(drafting);
        drafting.content().units().values().forEach(found::read);
        found.measure();
        return found;
    }

    List<ReturnHub> hubs() {
        return hubs;
    }

    List<Between> elements() {
        return elements;
    }

    /** The hub of a terminal; null for what gathers nothing. */
    ReturnHub at(String key) {
        return byTerminal.get(key);
    }

    /** Steps from the nearest battery. */
    int steps(ReturnHub hub) {
        return steps.getOrDefault(hub, Integer.MAX_VALUE);
    }

    private void read(Unit unit) {
        for (String terminal : drafting.terminals(unit)) {
            String key = LineContent.key(unit, terminal);
            if (!drafting.polarity().minus(key) || !Returns.collects(drafting.content(), key) || isCase(unit, terminal)) {
                continue;
            }
            ReturnHub same = null;
            for (Link link : unit.links()) {
                if (link.kind() == Link.Kind.BAR && link.b().equals(terminal)) {
                    same = byTerminal.get(LineContent.key(unit, link.a()));
                }
            }
            if (same == null) {
                same = new ReturnHub(key, unit);
                hubs.add(same);
            } else {
                same.terminals().add(terminal);
            }
            byTerminal.put(key, same);
        }
        for (Link link : unit.links()) {
            ReturnHub a = byTerminal.get(LineContent.key(unit, link.a()));
            ReturnHub b = byTerminal.get(LineContent.key(unit, link.b()));
            if (link.carries() && link.kind() != Link.Kind.BAR && a != null && b != null && a != b) {
                elements.add(new Between(unit, link, a, b));
            }
        }
    }

    private static boolean isCase(Unit unit, String terminal) {
        var spec = unit.terminal(terminal);
        return spec != null && spec.getRole() == org.loomwright.model.parts.TerminalRole.CASE;
    }

    private void measure() {
        spread(hubs.stream().filter(hub -> hub.unit().kind() == DeviceKind.BATTERY).toList());
        for (ReturnHub hub : hubs) {
            spread(List.of(hub));
        }
    }

    private void spread(List<ReturnHub> starts) {
        Deque<ReturnHub> queue = new ArrayDeque<>();
        for (ReturnHub start : starts) {
            if (steps.putIfAbsent(start, 0) == null) {
                queue.add(start);
            }
        }
        while (!queue.isEmpty()) {
            ReturnHub hub = queue.removeFirst();
            int next = steps.get(hub) + 1;
            for (String terminal : hub.terminals()) {
                String key = LineContent.key(hub.unit(), terminal);
                for (Wire wire : drafting.content().at(key)) {
                    reach(byTerminal.get(wire.other(key)), next, queue);
                }
            }
            for (Between between : elements) {
                if (between.a() == hub || between.b() == hub) {
                    reach(between.a() == hub ? between.b() : between.a(), next, queue);
                }
            }
        }
    }

    private void reach(ReturnHub hub, int next, Deque<ReturnHub> queue) {
        if (hub != null && steps.putIfAbsent(hub, next) == null) {
            queue.add(hub);
        }
    }
}
