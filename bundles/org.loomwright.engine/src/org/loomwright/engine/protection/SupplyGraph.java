// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.PlanGraph;
import org.loomwright.engine.check.PlanGraph.Edge;

/**
 * Terminals joined by wires, bars and what passes current on inside devices, whatever the case, and which of them are on the
 * supply side: reached from the plus of a source. All others are returns, or dead.
 */
final class SupplyGraph {
    private final Plan plan;
    private final PlanGraph graph;
    private final List<List<Integer>> bars = new ArrayList<>();
    private final boolean[] supply;
    private final int[] sourceAt;

    SupplyGraph(Plan plan, PlanGraph graph) {
        this.plan = plan;
        this.graph = graph;
        Map<String, List<Integer>> byBar = new HashMap<>();
        for (int t = 0; t < plan.terminals().size(); t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            if (terminal.bar() == null || terminal.device() < 0) {
                bars.add(List.of());
            } else {
                List<Integer> bar = byBar.computeIfAbsent(terminal.device() + " " + terminal.bar(), key -> new ArrayList<>());
                bar.add(t);
                bars.add(bar);
            }
        }
        sourceAt = new int[plan.terminals().size()];
        Arrays.fill(sourceAt, -1);
        for (int e = 0; e < plan.elements().size(); e++) {
            int plus = PlanGraph.sourceTerminal(plan.elements().get(e));
            boolean first = plus >= 0 && (sourceAt[plus] < 0
                    || plan.elements().get(e).id().compareTo(plan.elements().get(sourceAt[plus]).id()) < 0);
            if (first) {
                sourceAt[plus] = e;
            }
        }
        supply = new boolean[plan.terminals().size()];
        for (int plus : graph.sourceTerminals()) {
            for (int t : reach(plus, -1, -1)) {
                supply[t] = true;
            }
        }
    }

    /** Whether a terminal is on the supply side. */
    boolean supply(int terminal) {
        return supply[terminal];
    }

    /** Terminals on the bar of a terminal, itself included. */
    List<Integer> bar(int terminal) {
        return bars.get(terminal).isEmpty() ? List.of(terminal) : bars.get(terminal);
    }

    /** The terminal that stands for a bar: the one of it whose id comes first; a terminal on no bar stands for itself. */
    int barOf(int terminal) {
        int first = terminal;
        for (int t : bars.get(terminal)) {
            first = plan.terminals().get(t).id().compareTo(plan.terminals().get(first).id()) < 0 ? t : first;
        }
        return first;
    }

    /** Source (element) whose plus is at a terminal, -1 for none. */
    int sourceAt(int terminal) {
        return sourceAt[terminal];
    }

    /** Loads, coils and converters that take their current at a terminal. */
    List<Integer> consumersAt(int terminal) {
        return graph.consumersAt(terminal);
    }

    /** Terminals reached from one, in the order of distance, without a conductor and a protective device (-1 for none). */
    List<Integer> reach(int terminal, int conductor, int protector) {
        List<Integer> order = new ArrayList<>(List.of(terminal));
        boolean[] seen = new boolean[plan.terminals().size()];
        seen[terminal] = true;
        Deque<Integer> open = new ArrayDeque<>(order);
        while (!open.isEmpty()) {
            int at = open.remove();
            for (Edge edge : graph.at(at)) {
                boolean blocked = edge.against() || edge.index() == (edge.conductor() ? conductor : protector);
                if (!blocked && !seen[edge.to()]) {
                    seen[edge.to()] = true;
                    order.add(edge.to());
                    open.add(edge.to());
                }
            }
            for (int other : bars.get(at)) {
                if (!seen[other]) {
                    seen[other] = true;
                    order.add(other);
                    open.add(other);
                }
            }
        }
        return order;
    }

    /** Whether current from a source can come to a terminal otherwise than through a conductor. */
    boolean fed(int terminal, int conductor) {
        boolean[] seen = new boolean[plan.terminals().size()];
        seen[terminal] = true;
        Deque<Integer> open = new ArrayDeque<>(List.of(terminal));
        while (!open.isEmpty()) {
            int at = open.remove();
            if (sourceAt[at] >= 0) {
                return true;
            }
            for (Edge edge : graph.at(at)) {
                boolean own = edge.conductor() && edge.index() == conductor;
                boolean away = !edge.conductor() && edge.index() >= 0 && !edge.against()
                        && plan.elements().get(edge.index()) instanceof Plan.Diode;
                if (!own && !away && !seen[edge.to()]) {
                    seen[edge.to()] = true;
                    open.add(edge.to());
                }
            }
            for (int other : bars.get(at)) {
                if (!seen[other]) {
                    seen[other] = true;
                    open.add(other);
                }
            }
        }
        return false;
    }

    /** Consumers (elements) reached likewise, rising; null when a source is among what is reached. */
    Set<Integer> consumersBehind(int terminal, int conductor, int protector) {
        Set<Integer> consumers = new TreeSet<>();
        for (int t : reach(terminal, conductor, protector)) {
            if (sourceAt[t] >= 0) {
                return null;
            }
            consumers.addAll(graph.consumersAt(t));
        }
        return consumers;
    }

    /** Minus terminal of a consumer. */
    static int minus(Plan.Element element) {
        return element instanceof Plan.Demand demand ? demand.b() : element instanceof Plan.Coil coil ? coil.b()
                : element instanceof Plan.Converter converter ? converter.inB() : -1;
    }

    /** Minus terminal of a source. */
    static int sourceMinus(Plan.Element element) {
        return element instanceof Plan.Cell cell ? cell.b() : element instanceof Plan.Regulated source ? source.b()
                : element instanceof Plan.Converter converter ? converter.outB() : -1;
    }
}
