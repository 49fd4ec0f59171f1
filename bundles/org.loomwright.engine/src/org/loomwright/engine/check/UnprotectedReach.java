// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.PlanGraph.Edge;

/**
 * What a source reaches before any protective device, with the shortest length of conductor to it. Contacts count as closed,
 * diodes lead one way. The way to a starter counts no length.
 */
final class UnprotectedReach {
    private final Plan plan;
    private final PlanGraph graph;
    private final int source;
    private final int start;
    private final double[] atMm;
    private final Edge[] by;
    private final int[] from;
    private final boolean[] exempt;
    private final Stretch[] stretchTo;
    private final double[] deviceMm;
    private final List<Integer> order = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    private UnprotectedReach(Plan plan, PlanGraph graph, int source) {
        this.plan = plan;
        this.graph = graph;
        this.source = source;
        start = PlanGraph.sourceTerminal(plan.elements().get(source));
        atMm = new double[plan.terminals().size()];
        by = new Edge[atMm.length];
        from = new int[atMm.length];
        exempt = new boolean[plan.conductors().size()];
        stretchTo = new Stretch[atMm.length];
        deviceMm = new double[atMm.length];
        spread();
        if (markStarter()) {
            spread();
        }
        describe();
    }

    /**
     * One conductor within reach.
     *
     * @param near       terminal at which the source reaches it first
     * @param far        its other terminal
     * @param nearMm     length from the source to its near end, mm
     * @param farMm      length from the source to its far end, mm
     * @param enclosed   it and all conductors before it lie in a sheath, duct or box all the way
     * @param fromSource no part of a starter circuit lies before it
     * @param exempt     it is part of a starter circuit
     * @param before     conductor before it, null at the source
     */
    record Stretch(int conductor, int near, int far, double nearMm, double farMm, boolean enclosed, boolean fromSource,
            boolean exempt, Stretch before) {
    }

    /** What a source (index in elements) reaches. */
    static UnprotectedReach from(Plan plan, PlanGraph graph, int source) {
        return new UnprotectedReach(plan, graph, source);
    }

    /** Plus terminal of the source. */
    int start() {
        return start;
    }

    /** Conductors within reach, near ones first. */
    List<Stretch> stretches() {
        return List.copyOf(stretches);
    }

    /** Length from the source to the nearest protective device behind a conductor, mm; infinite when there is none. */
    double deviceBeyondMm(Stretch stretch) {
        return by[stretch.far()] != null && isBy(stretch) ? deviceMm[stretch.far()]
                : hasDevice(stretch.far()) ? stretch.farMm() : Double.POSITIVE_INFINITY;
    }

    /** Id of what takes current behind a conductor without any device or further conductor between; null when nothing does. */
    String unprotectedEnd(Stretch stretch) {
        if (!isBy(stretch)) {
            return null;
        }
        for (int terminal : order) {
            if (stretchTo[terminal] == stretch) {
                for (int e : graph.consumersAt(terminal)) {
                    if (e != source) {
                        return plan.devices().get(plan.elements().get(e).device()).id();
                    }
                }
            }
        }
        return null;
    }

    private boolean isBy(Stretch stretch) {
        return stretchTo[stretch.far()] == stretch;
    }

    private void spread() {
        Arrays.fill(atMm, Double.POSITIVE_INFINITY);
        Arrays.fill(by, null);
        order.clear();
        atMm[start] = 0;
        record Reached(int terminal, double mm) {
        }
        PriorityQueue<Reached> open = new PriorityQueue<>(
                Comparator.comparingDouble(Reached::mm).thenComparingInt(Reached::terminal));
        open.add(new Reached(start, 0));
        boolean[] done = new boolean[atMm.length];
        while (!open.isEmpty()) {
            int terminal = open.remove().terminal();
            if (done[terminal]) {
                continue;
            }
            done[terminal] = true;
            order.add(terminal);
            for (Edge edge : graph.at(terminal)) {
                if (!edge.protector() && !edge.against() && atMm[terminal] + lengthMm(edge) < atMm[edge.to()]) {
                    atMm[edge.to()] = atMm[terminal] + lengthMm(edge);
                    by[edge.to()] = edge;
                    from[edge.to()] = terminal;
                    open.add(new Reached(edge.to(), atMm[edge.to()]));
                }
            }
        }
    }

    private double lengthMm(Edge edge) {
        return edge.conductor() && !exempt[edge.index()] ? cable(edge.index()).lengthMm() : 0;
    }

    private Plan.Cable cable(int conductor) {
        return plan.cables().get(plan.conductors().get(conductor).cable());
    }

    /** Marks the conductors on the way to starters; false when there are none. */
    private boolean markStarter() {
        boolean any = false;
        for (int terminal : order) {
            int device = plan.terminals().get(terminal).device();
            if (device >= 0 && "starter".equals(plan.devices().get(device).kind())
                    && "plus".equals(plan.terminals().get(terminal).role())) {
                for (int at = terminal; at != start; at = from[at]) {
                    if (by[at].conductor()) {
                        exempt[by[at].index()] = true;
                        any = true;
                    }
                }
            }
        }
        return any;
    }

    private void describe() {
        for (int terminal : order) {
            Stretch before = terminal == start ? null : stretchTo[from[terminal]];
            if (terminal != start) {
                stretchTo[terminal] = by[terminal].conductor() ? stretch(by[terminal].index(), from[terminal], terminal, before)
                        : before;
            }
            if (terminal != start && by[terminal].conductor()) {
                stretches.add(stretchTo[terminal]);
            }
        }
        for (int i = order.size() - 1; i >= 0; i--) {
            int terminal = order.get(i);
            deviceMm[terminal] = hasDevice(terminal) ? atMm[terminal] : Double.POSITIVE_INFINITY;
        }
        for (int i = order.size() - 1; i > 0; i--) {
            int terminal = order.get(i);
            deviceMm[from[terminal]] = StrictMath.min(deviceMm[from[terminal]], deviceMm[terminal]);
        }
        addLoops();
    }

    /** Conductors that close a loop are no part of the shortest ways; they count from their nearer end. */
    private void addLoops() {
        boolean[] seen = new boolean[plan.conductors().size()];
        stretches.forEach(stretch -> seen[stretch.conductor()] = true);
        for (int terminal : order) {
            for (Edge edge : graph.at(terminal)) {
                if (edge.conductor() && !seen[edge.index()]) {
                    seen[edge.index()] = true;
                    stretches.add(stretch(edge.index(), terminal, edge.to(), stretchTo[terminal]));
                }
            }
        }
    }

    private Stretch stretch(int conductor, int near, int far, Stretch before) {
        boolean enclosed = enclosed(cable(conductor)) && (before == null || before.exempt() || before.enclosed());
        double farMm = atMm[near] + (exempt[conductor] ? 0 : cable(conductor).lengthMm());
        return new Stretch(conductor, near, far, atMm[near], farMm, enclosed,
                before == null || before.fromSource() && !before.exempt(), exempt[conductor], before);
    }

    private boolean hasDevice(int terminal) {
        return graph.at(terminal).stream().anyMatch(Edge::protector);
    }

    /** Sheathed, or a duct in every run of its path. */
    private static boolean enclosed(Plan.Cable cable) {
        boolean ducted = !cable.path().isEmpty() && cable.ducts().size() >= cable.path().size()
                && cable.ducts().stream().noneMatch(String::isEmpty);
        return cable.sheathed() || ducted;
    }
}
