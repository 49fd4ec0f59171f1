// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.DeviceKind;

/**
 * Direction of supply in the drawing: away from the sources, by the number of steps from the nearest one. Batteries count before
 * other sources.
 */
final class Flow {
    private final LineContent content;
    private final Polarity polarity;
    private final Map<String, Integer> steps = new LinkedHashMap<>();

    private Flow(LineContent content, Polarity polarity) {
        this.content = content;
        this.polarity = polarity;
    }

    static Flow of(LineContent content, Polarity polarity) {
        Flow flow = new Flow(content, polarity);
        flow.run();
        return flow;
    }

    /** True when a supply wire is drawn from its end a to its end b. */
    boolean forward(Wire wire) {
        return steps.getOrDefault(wire.a(), 0) <= steps.getOrDefault(wire.b(), 0);
    }

    String from(Wire wire) {
        return forward(wire) ? wire.a() : wire.b();
    }

    String to(Wire wire) {
        return forward(wire) ? wire.b() : wire.a();
    }

    /** Supply wires that come to a terminal. */
    List<Wire> into(String key) {
        return content.at(key).stream().filter(wire -> !polarity.back(wire) && to(wire).equals(key)).toList();
    }

    /** Supply wires that leave a terminal. */
    List<Wire> outOf(String key) {
        return content.at(key).stream().filter(wire -> !polarity.back(wire) && from(wire).equals(key)).toList();
    }

    private void run() {
        List<String> starts = new ArrayList<>();
        for (Unit unit : content.units().values()) {
            if (unit.source()) {
                unit.part().getTerminals().forEach(spec -> {
                    String key = LineContent.key(unit, spec.getName());
                    if (!polarity.minus(key) && (unit.kind() == DeviceKind.BATTERY || spec.getName().matches("B\\+|OUT\\+|30"))) {
                        starts.add(key);
                    }
                });
            }
        }
        spread(starts);
        for (Unit unit : content.units().values()) {
            if (unit.distributes()) {
                spread(List.of(LineContent.key(unit, "30")));
            }
        }
        for (Wire wire : content.wires()) {
            spread(List.of(wire.a()));
        }
    }

    private void spread(List<String> starts) {
        Deque<String> queue = new ArrayDeque<>();
        for (String start : starts) {
            if (steps.putIfAbsent(start, 0) == null) {
                queue.add(start);
            }
        }
        while (!queue.isEmpty()) {
            String key = queue.removeFirst();
            int next = steps.get(key) + 1;
            for (Wire wire : content.at(key)) {
                if (!polarity.back(wire)) {
                    reach(wire.other(key), next, queue);
                }
            }
            Unit unit = content.unitOf(key);
            if (unit != null) {
                String name = LineContent.terminalName(key);
                for (Link link : unit.links()) {
                    if (link.a().equals(name) && link.carries()) {
                        reach(LineContent.key(unit, link.b()), next, queue);
                    } else if (link.b().equals(name) && link.carries() && link.kind() != Link.Kind.CONVERTER) {
                        reach(LineContent.key(unit, link.a()), next, queue);
                    }
                }
            }
        }
    }

    private void reach(String key, int next, Deque<String> queue) {
        if (steps.putIfAbsent(key, next) == null) {
            queue.add(key);
        }
    }
}
