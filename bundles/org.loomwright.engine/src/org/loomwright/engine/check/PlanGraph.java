// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;

/**
 * Which terminals of a plan are joined by what can carry current on, whatever the case: conductors, joints, contacts open or
 * closed, shunts, diodes and protective devices. Bodies, bonds, loads, coils, sources and converters join nothing here.
 */
public final class PlanGraph {
    private final List<List<Edge>> edges = new ArrayList<>();
    private final List<List<Integer>> consumers = new ArrayList<>();
    private final boolean[] source;

    private PlanGraph(Plan plan) {
        plan.terminals().forEach(terminal -> {
            edges.add(new ArrayList<>());
            consumers.add(new ArrayList<>(0));
        });
        source = new boolean[plan.terminals().size()];
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor core = plan.conductors().get(c);
            join(core.a(), core.b(), c, true, false, false);
        }
        joinBars(plan);
        for (int e = 0; e < plan.elements().size(); e++) {
            Plan.Element element = plan.elements().get(e);
            if (element instanceof Plan.Joint j) {
                join(j.a(), j.b(), e, false, false, false);
            } else if (element instanceof Plan.Contact c) {
                join(c.a(), c.b(), e, false, false, false);
            } else if (element instanceof Plan.Shunt s) {
                join(s.a(), s.b(), e, false, false, false);
            } else if (element instanceof Plan.Diode d) {
                join(d.a(), d.b(), e, false, false, true);
            } else if (element instanceof Plan.Protector p) {
                join(p.a(), p.b(), e, false, true, false);
            }
            int taking = consumerTerminal(element);
            if (taking >= 0) {
                consumers.get(taking).add(e);
            }
            int plus = sourceTerminal(element);
            if (plus >= 0) {
                source[plus] = true;
            }
        }
    }

    /**
     * A way from one terminal to another.
     *
     * @param to        terminal reached
     * @param index     index of the conductor or element in the plan; -1 along a bar
     * @param conductor index is a conductor, not an element
     * @param protector the element is a protective device
     * @param against   the element is a diode that blocks in this direction
     */
    public record Edge(int to, int index, boolean conductor, boolean protector, boolean against) {
    }

    /** The graph of a plan. */
    public static PlanGraph of(Plan plan) {
        return new PlanGraph(plan);
    }

    /** Ways from a terminal, conductors first, in the plan's order. */
    public List<Edge> at(int terminal) {
        return edges.get(terminal);
    }

    /** Loads, coils and converter inputs that take their current at a terminal, index in elements. */
    public List<Integer> consumersAt(int terminal) {
        return consumers.get(terminal);
    }

    /** True when the plus side of a battery, regulated source or converter output is at the terminal. */
    public boolean isSource(int terminal) {
        return source[terminal];
    }

    /** Terminals with the plus side of a source, rising. */
    public List<Integer> sourceTerminals() {
        List<Integer> found = new ArrayList<>();
        for (int t = 0; t < source.length; t++) {
            if (source[t]) {
                found.add(t);
            }
        }
        return found;
    }

    /** Plus terminal of a source, -1 for other elements. */
    public static int sourceTerminal(Plan.Element element) {
        return element instanceof Plan.Cell cell ? cell.a()
                : element instanceof Plan.Regulated regulated ? regulated.a()
                : element instanceof Plan.Converter converter ? converter.outA() : -1;
    }

    /** Terminal at which a load, coil or converter takes its current, -1 for other elements. */
    public static int consumerTerminal(Plan.Element element) {
        return element instanceof Plan.Demand demand ? demand.a()
                : element instanceof Plan.Coil coil ? coil.a()
                : element instanceof Plan.Converter converter ? converter.inA() : -1;
    }

    /** Terminals of one bar are one piece of metal. */
    private void joinBars(Plan plan) {
        Map<String, Integer> first = new HashMap<>();
        for (int t = 0; t < plan.terminals().size(); t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            if (terminal.bar() != null) {
                Integer before = first.putIfAbsent(terminal.device() + " " + terminal.bar(), t);
                if (before != null) {
                    join(before, t, -1, false, false, false);
                }
            }
        }
    }

    private void join(int a, int b, int index, boolean conductor, boolean protector, boolean diode) {
        edges.get(a).add(new Edge(b, index, conductor, protector, false));
        edges.get(b).add(new Edge(a, index, conductor, protector, diode));
    }
}
