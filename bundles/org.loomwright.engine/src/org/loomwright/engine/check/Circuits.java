// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.PlanGraph.Edge;

/**
 * What the protective devices of a plan part from each other, whatever the case. A span is everything connected without a
 * protective device between: conductors, joints, contacts open or closed, shunts and diodes. Structure is not part of any span.
 * Elements, conductors and terminals are named by their index in the plan.
 */
public final class Circuits {
    private final Plan plan;
    private final PlanGraph graph;
    private final int[] spanOf;
    private final List<List<Integer>> conductors = new ArrayList<>();
    private final List<List<Integer>> borders = new ArrayList<>();
    private final List<List<Integer>> feeders = new ArrayList<>();
    private final List<List<Integer>> consumers = new ArrayList<>();
    private final boolean[] source;

    private Circuits(Plan plan) {
        this.plan = plan;
        graph = PlanGraph.of(plan);
        spanOf = parted();
        int spans = Arrays.stream(spanOf).max().orElse(-1) + 1;
        for (int s = 0; s < spans; s++) {
            conductors.add(new ArrayList<>());
            borders.add(new ArrayList<>());
        }
        source = new boolean[spans];
        for (int terminal : graph.sourceTerminals()) {
            source[spanOf[terminal]] = true;
        }
        for (int c = 0; c < plan.conductors().size(); c++) {
            conductors.get(spanOf[plan.conductors().get(c).a()]).add(c);
        }
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Protector p && spanOf[p.a()] != spanOf[p.b()]) {
                borders.get(spanOf[p.a()]).add(e);
                borders.get(spanOf[p.b()]).add(e);
            }
        }
        for (int s = 0; s < spans; s++) {
            feeders.add(feedersOf(s));
        }
        for (int e = 0; e < plan.elements().size(); e++) {
            consumers.add(plan.elements().get(e) instanceof Plan.Protector p ? consumersOf(e, p) : List.of());
        }
    }

    /** The circuits of a plan. */
    public static Circuits of(Plan plan) {
        return new Circuits(plan);
    }

    /** What is connected to each terminal. */
    public PlanGraph graph() {
        return graph;
    }

    /** Number of spans. */
    public int spans() {
        return borders.size();
    }

    /** Span of a terminal. */
    public int spanOf(int terminal) {
        return spanOf[terminal];
    }

    /** True when the plus side of a battery, regulated source or converter output lies in the span. */
    public boolean hasSource(int span) {
        return source[span];
    }

    /** Conductors of a span. */
    public List<Integer> conductorsIn(int span) {
        return List.copyOf(conductors.get(span));
    }

    /** Protective devices at the rim of a span. */
    public List<Integer> bordering(int span) {
        return List.copyOf(borders.get(span));
    }

    /** Protective devices through which a source elsewhere feeds the span. */
    public List<Integer> feeders(int span) {
        return feeders.get(span);
    }

    /** Protective devices next upstream of a conductor; empty when none is, as for returns. */
    public List<Integer> upstreamOf(int conductor) {
        return feeders(spanOf[plan.conductors().get(conductor).a()]);
    }

    /**
     * Loads, coils and converter inputs fed through a protective device alone; empty where there is a source on both of its
     * sides or another way around it.
     */
    public List<Integer> consumersBelow(int protector) {
        return consumers.get(protector);
    }

    private List<Integer> consumersOf(int protector, Plan.Protector device) {
        Set<Integer> atB = reached(device.b(), protector);
        Set<Integer> below = atB != null ? atB : reached(device.a(), protector);
        List<Integer> found = new ArrayList<>();
        if (below != null) {
            below.forEach(terminal -> found.addAll(graph.consumersAt(terminal)));
        }
        Collections.sort(found);
        return List.copyOf(found);
    }

    /** Terminals reached without going through one element; null when a source is among them. */
    private Set<Integer> reached(int from, int without) {
        Set<Integer> seen = new HashSet<>(List.of(from));
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            int terminal = open.remove();
            if (graph.isSource(terminal)) {
                return null;
            }
            for (Edge edge : graph.at(terminal)) {
                if ((edge.conductor() || edge.index() != without) && seen.add(edge.to())) {
                    open.add(edge.to());
                }
            }
        }
        return seen;
    }

    private int[] parted() {
        int[] span = new int[plan.terminals().size()];
        Arrays.fill(span, -1);
        int count = 0;
        Deque<Integer> open = new ArrayDeque<>();
        for (int start = 0; start < span.length; start++) {
            if (span[start] >= 0) {
                continue;
            }
            span[start] = count;
            open.add(start);
            while (!open.isEmpty()) {
                for (Edge edge : graph.at(open.remove())) {
                    if (!edge.protector() && span[edge.to()] < 0) {
                        span[edge.to()] = count;
                        open.add(edge.to());
                    }
                }
            }
            count++;
        }
        return span;
    }

    private List<Integer> feedersOf(int span) {
        List<Integer> found = new ArrayList<>();
        for (int e : borders.get(span)) {
            Plan.Protector p = (Plan.Protector) plan.elements().get(e);
            int beyond = spanOf[p.a()] == span ? spanOf[p.b()] : spanOf[p.a()];
            if (sourceBeyond(beyond, span)) {
                found.add(e);
            }
        }
        return List.copyOf(found);
    }

    private boolean sourceBeyond(int start, int without) {
        Set<Integer> seen = new HashSet<>(List.of(without, start));
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            int span = open.remove();
            if (source[span]) {
                return true;
            }
            for (int e : borders.get(span)) {
                Plan.Protector p = (Plan.Protector) plan.elements().get(e);
                for (int next : new int[] {spanOf[p.a()], spanOf[p.b()]}) {
                    if (seen.add(next)) {
                        open.add(next);
                    }
                }
            }
        }
        return false;
    }
}
