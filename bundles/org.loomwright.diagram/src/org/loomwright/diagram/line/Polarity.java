// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;

/**
 * Which terminals lie on the supply side and which on the return side. Terminals whose part says nothing follow from what they
 * are connected to.
 */
final class Polarity {
    private final LineContent content;
    private final Map<String, Boolean> minus = new LinkedHashMap<>();
    private final Map<String, Boolean> open = new LinkedHashMap<>();

    private Polarity(LineContent content) {
        this.content = content;
    }

    static Polarity of(LineContent content) {
        Polarity polarity = new Polarity(content);
        polarity.run();
        return polarity;
    }

    /** True for a terminal on the return side and for earth points. */
    boolean minus(String attachment) {
        return content.earths().containsKey(attachment) || minus.getOrDefault(attachment, false);
    }

    /** True for a core that carries return current: between two ends of the return side, or to an earth point. */
    boolean back(Wire wire) {
        return minus(wire.a()) && minus(wire.b()) || content.earths().containsKey(wire.a())
                || content.earths().containsKey(wire.b());
    }

    private void run() {
        Deque<String> plus = new ArrayDeque<>();
        Deque<String> negative = new ArrayDeque<>();
        for (Unit unit : content.units().values()) {
            if (unit.part() != null) {
                for (TerminalSpec spec : unit.part().getTerminals()) {
                    if (spec.getName() != null) {
                        declare(LineContent.key(unit, spec.getName()), spec.getRole(), plus, negative);
                    }
                }
            }
        }
        content.wires().forEach(wire -> {
            unknown(wire.a());
            unknown(wire.b());
        });
        negative.addAll(content.earths().keySet());
        spread(plus, false);
        spread(negative, true);
        open.keySet().forEach(key -> minus.putIfAbsent(key, LineContent.terminalName(key).matches("85|31.*|L-|.*-")));
    }

    private void declare(String key, TerminalRole role, Deque<String> plus, Deque<String> negative) {
        if (role == TerminalRole.PLUS) {
            minus.put(key, false);
            plus.add(key);
        } else if (role == TerminalRole.MINUS || role == TerminalRole.CASE) {
            minus.put(key, true);
            negative.add(key);
        } else {
            open.put(key, true);
        }
    }

    private void unknown(String attachment) {
        if (!content.earths().containsKey(attachment) && !minus.containsKey(attachment)) {
            open.put(attachment, true);
        }
    }

    private void spread(Deque<String> from, boolean negative) {
        while (!from.isEmpty()) {
            String key = from.removeFirst();
            content.at(key).forEach(wire -> reach(wire.other(key), negative, from));
            Unit unit = content.unitOf(key);
            if (unit != null && open.containsKey(key)) {
                String name = LineContent.terminalName(key);
                for (Link link : unit.links()) {
                    if (link.carries() && (link.a().equals(name) || link.b().equals(name))) {
                        reach(LineContent.key(unit, link.a().equals(name) ? link.b() : link.a()), negative, from);
                    }
                }
            }
        }
    }

    private void reach(String key, boolean negative, Deque<String> next) {
        if (open.containsKey(key) && !minus.containsKey(key)) {
            minus.put(key, negative);
            next.add(key);
        }
    }
}
