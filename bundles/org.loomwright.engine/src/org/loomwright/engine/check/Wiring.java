// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.loomwright.engine.assembly.Plan;

/**
 * How terminals and structure bodies of a plan are joined: conductors, bars, what passes current inside devices, earth
 * points, cases, bonds and seams. Nodes are the terminals by their index, then the bodies. Loads, coils, cells and regulated
 * sources join nothing.
 */
final class Wiring {
    private final int terminals;
    private final List<List<Step>> steps = new ArrayList<>();

    private Wiring(Plan plan) {
        terminals = plan.terminals().size();
        for (int n = 0; n < terminals + plan.bodies().size(); n++) {
            steps.add(new ArrayList<>(3));
        }
        for (int c = 0; c < plan.conductors().size(); c++) {
            join(plan.conductors().get(c).a(), plan.conductors().get(c).b(), Via.CONDUCTOR, c);
        }
        for (int e = 0; e < plan.elements().size(); e++) {
            Plan.Element element = plan.elements().get(e);
            if (element instanceof Plan.Converter converter && !converter.isolated()) {
                join(converter.inB(), converter.outB(), Via.ELEMENT, e);
            } else if (ends(element) != null) {
                join(ends(element)[0], ends(element)[1], Via.ELEMENT, e);
            }
        }
        joinBarsAndStructure(plan);
    }

    /** What a step goes through. */
    enum Via { CONDUCTOR, ELEMENT, BAR, STRUCTURE }

    /**
     * A step from one node to another.
     *
     * @param to    node reached
     * @param index conductor or element of the plan; -1 for bars and structure
     */
    record Step(int to, Via via, int index) {

        /** True when the step goes through that element. */
        boolean through(int element) {
            return via == Via.ELEMENT && index == element;
        }
    }

    /** The wiring of a plan. */
    static Wiring of(Plan plan) {
        return new Wiring(plan);
    }

    /** Node of a body. */
    int body(int body) {
        return terminals + body;
    }

    /** True for the node of a terminal. */
    boolean isTerminal(int node) {
        return node < terminals;
    }

    /** Steps from a node. */
    List<Step> from(int node) {
        return steps.get(node);
    }

    /** Nodes reached from one over steps that pass, itself included, rising. */
    SortedSet<Integer> reach(int start, Predicate<Step> passes) {
        SortedSet<Integer> seen = new TreeSet<>(List.of(start));
        Deque<Integer> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            for (Step step : steps.get(open.remove())) {
                if (passes.test(step) && seen.add(step.to())) {
                    open.add(step.to());
                }
            }
        }
        return seen;
    }

    /** Terminals between which an element passes current on, null when it does not. */
    static int[] ends(Plan.Element element) {
        return element instanceof Plan.Joint j ? new int[] {j.a(), j.b()}
                : element instanceof Plan.Contact c ? new int[] {c.a(), c.b()}
                : element instanceof Plan.Protector p ? new int[] {p.a(), p.b()}
                : element instanceof Plan.Shunt s ? new int[] {s.a(), s.b()}
                : element instanceof Plan.Diode d ? new int[] {d.a(), d.b()} : null;
    }

    private void joinBarsAndStructure(Plan plan) {
        Map<String, Integer> bars = new HashMap<>();
        for (int t = 0; t < terminals; t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            if (terminal.bar() != null && terminal.device() >= 0) {
                Integer first = bars.putIfAbsent(terminal.device() + " " + terminal.bar(), t);
                if (first != null) {
                    join(t, first, Via.BAR, -1);
                }
            }
            int body = terminal.device() < 0 ? terminal.body()
                    : "case".equals(terminal.role()) ? plan.devices().get(terminal.device()).body() : -1;
            if (body >= 0) {
                join(t, body(body), Via.STRUCTURE, -1);
            }
        }
        plan.bonds().forEach(bond -> join(bond.a(), bond.b(), Via.STRUCTURE, -1));
        plan.bodyLinks().forEach(link -> join(body(link.bodyA()), body(link.bodyB()), Via.STRUCTURE, -1));
    }

    private void join(int a, int b, Via via, int index) {
        steps.get(a).add(new Step(b, via, index));
        steps.get(b).add(new Step(a, via, index));
    }
}
