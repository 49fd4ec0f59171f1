// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.parts.Element;

/**
 * Which conductors are in service in the case that is drawn: those over which a load that is on, a coil or a battery that takes
 * charge gets its current and gives it back. What only carries the standby current of loads that wait is not.
 */
final class InService {
    private final LineContent content;
    private final Polarity polarity;
    private final LineFigures figures;
    private final Set<String> wires = new LinkedHashSet<>();
    private boolean throughStructure;

    private InService(LineContent content, Polarity polarity, LineFigures figures) {
        this.content = content;
        this.polarity = polarity;
        this.figures = figures;
    }

    /** Keys of the wires in service; none without a case. */
    static Set<String> of(LineContent content, Polarity polarity, LineFigures figures) {
        InService found = new InService(content, polarity, figures);
        if (figures.live()) {
            List<String> starts = found.starts();
            found.follow(starts.stream().filter(key -> !polarity.minus(key)).toList(), true);
            found.follow(starts.stream().filter(polarity::minus).toList(), false);
            if (found.throughStructure) {
                // what the structure gathered goes on from its earth points
                found.follow(content.earths().keySet(), false);
            }
        }
        return found.wires;
    }

    private List<String> starts() {
        List<String> starts = new ArrayList<>();
        for (Unit unit : content.units().values()) {
            if (unit.part() == null) {
                continue;
            }
            unit.part().getDemands().stream()
                    .filter(demand -> figures.loadOn(unit.id()) || figures.loadOn(unit.id() + "#" + demand.getName()))
                    .forEach(demand -> ends(unit, demand, starts));
            unit.part().getCoils().forEach(coil -> ends(unit, coil, starts));
            if (figures.sourceA(unit.id()).orElse(0) < -Drafting.NOTHING_A) {
                unit.part().getCells().forEach(cell -> ends(unit, cell, starts));
            }
        }
        return starts;
    }

    private static void ends(Unit unit, Element element, List<String> starts) {
        if (element.getA() != null && element.getB() != null) {
            starts.add(LineContent.key(unit, element.getA().getName()));
            starts.add(LineContent.key(unit, element.getB().getName()));
        }
    }

    /** @param upstream against the current, to where it comes from; else with it, to where it goes */
    private void follow(Iterable<String> starts, boolean upstream) {
        Set<String> seen = new HashSet<>();
        Deque<String> queue = new ArrayDeque<>();
        starts.forEach(start -> reach(start, seen, queue));
        while (!queue.isEmpty()) {
            String key = queue.removeFirst();
            for (Wire wire : content.at(key)) {
                double into = figures.wireA(wire).orElse(0) * (wire.b().equals(key) ? 1 : -1);
                if ((upstream ? into : -into) > Drafting.NOTHING_A) {
                    wires.add(wire.key());
                    reach(wire.other(key), seen, queue);
                }
            }
            Unit unit = content.unitOf(key);
            if (unit != null) {
                if (upstream) {
                    series(unit, LineContent.terminalName(key), seen, queue);
                }
                through(unit, LineContent.terminalName(key), upstream, seen, queue);
            }
        }
    }

    /** Batteries in series: the upper one gets its current from the lower one, over a wire that is no return. */
    private void series(Unit unit, String terminal, Set<String> seen, Deque<String> queue) {
        if (unit.part() == null) {
            return;
        }
        for (Element cell : unit.part().getCells()) {
            if (cell.getA() != null && cell.getB() != null && terminal.equals(cell.getA().getName())) {
                String minus = LineContent.key(unit, cell.getB().getName());
                for (Wire wire : content.at(minus)) {
                    double into = figures.wireA(wire).orElse(0) * (wire.b().equals(minus) ? 1 : -1);
                    if (!polarity.back(wire) && into > Drafting.NOTHING_A) {
                        wires.add(wire.key());
                        reach(wire.other(minus), seen, queue);
                    }
                }
            }
        }
    }

    private void through(Unit unit, String terminal, boolean upstream, Set<String> seen, Deque<String> queue) {
        for (Link link : unit.links()) {
            boolean fromOutlet = link.kind() != Link.Kind.CONVERTER || upstream;
            if (link.carries() && link.b().equals(terminal) && fromOutlet) {
                reach(LineContent.key(unit, link.a()), seen, queue);
            } else if (link.carries() && link.a().equals(terminal) && link.kind() != Link.Kind.CONVERTER) {
                reach(LineContent.key(unit, link.b()), seen, queue);
            }
            if (link.kind() == Link.Kind.CONVERTER && upstream && link.b().equals(terminal)) {
                // its input returns by a terminal of its own
                unit.part().getConverters().stream().filter(each -> each.getName().equals(link.name()))
                        .filter(each -> each.getInMinus() != null)
                        .forEach(each -> follow(List.of(LineContent.key(unit, each.getInMinus().getName())), false));
            }
        }
    }

    private void reach(String key, Set<String> seen, Deque<String> queue) {
        throughStructure |= content.earths().containsKey(key);
        if (seen.add(key)) {
            queue.add(key);
        }
    }
}
