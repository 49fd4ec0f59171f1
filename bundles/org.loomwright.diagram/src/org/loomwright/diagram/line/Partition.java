// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.LayoutEdge;

/**
 * How the supply side may be cut into sections of a sheet: the sources with what stands between them and the first distribution
 * points, and each distribution point with what hangs on it. What is fed from several sections lies in that of its heaviest
 * feed.
 */
final class Partition {
    private final Drafting drafting;
    private final SupplyGraph supply;
    private final Map<String, Integer> sectionOf = new LinkedHashMap<>();
    private final List<Integer> parents = new ArrayList<>(List.of(-1));
    private final List<String> roots = new ArrayList<>();

    /**
     * Sections after merging.
     *
     * @param sectionOf index of the section of each supply node
     * @param roots     node of the distribution point of each section; null for that of the sources
     */
    record Sections(Map<String, Integer> sectionOf, List<String> roots) {
        int count() {
            return roots.size();
        }
    }

    private Partition(Drafting drafting, SupplyGraph supply) {
        this.drafting = drafting;
        this.supply = supply;
        roots.add(null);
    }

    static Partition of(Drafting drafting, SupplyGraph supply) {
        Partition partition = new Partition(drafting, supply);
        partition.assign();
        return partition;
    }

    private void assign() {
        Map<String, String> owners = supply.graph().owners();
        Map<String, List<LayoutEdge>> into = new LinkedHashMap<>();
        supply.graph().nodes().keySet().forEach(id -> into.put(id, new ArrayList<>()));
        supply.graph().edges().forEach(edge -> into.get(owners.get(edge.to())).add(edge));
        List<String> waiting = new ArrayList<>(into.keySet());
        while (!waiting.isEmpty()) {
            // in a ring nothing is ready: then the first of the file is
            String next = waiting.stream()
                    .filter(id -> into.get(id).stream().allMatch(edge -> sectionOf.containsKey(owners.get(edge.from()))))
                    .findFirst().orElse(waiting.get(0));
            waiting.remove(next);
            sectionOf.put(next, section(next, into.get(next), owners));
        }
        // what joins a lead to its device lies with the device
        for (LayoutEdge edge : supply.graph().edges()) {
            if (edge.id().startsWith(SupplyGraph.LEAD)) {
                sectionOf.put(owners.get(edge.from()), sectionOf.get(owners.get(edge.to())));
            }
        }
    }

    private int section(String node, List<LayoutEdge> into, Map<String, String> owners) {
        int heaviest = -1;
        double most = -1;
        for (LayoutEdge edge : into) {
            Integer from = sectionOf.get(owners.get(edge.from()));
            double px = supply.graph().traces().get(edge.id()).weight().px();
            if (from != null && px > most) {
                most = px;
                heaviest = from;
            }
        }
        Unit unit = drafting.content().units().get(node);
        if (heaviest < 0) {
            return 0;
        }
        if (unit != null && unit.distributes() && !BarDrawing.joint(unit)) {
            parents.add(heaviest);
            roots.add(node);
            return parents.size() - 1;
        }
        return heaviest;
    }

    /** Sections of which each has as few as possible, but those with more rows than a number are cut at distribution points. */
    Sections merged(int mostRows) {
        int[] rows = new int[parents.size()];
        sectionOf.forEach((node, section) -> {
            LoadDrawing load = supply.loads().get(node);
            rows[section] += load == null ? 0 : StrictMath.max(1, load.inlets());
        });
        int[] into = new int[parents.size()];
        for (int i = parents.size() - 1; i >= 0; i--) {
            into[i] = i;
        }
        for (int i = parents.size() - 1; i > 0; i--) {
            int parent = parents.get(i);
            if (rows[parent] + rows[i] <= mostRows) {
                rows[parent] += rows[i];
                into[i] = parent;
            } else {
                rows[parent]++;
            }
        }
        return ordered(into);
    }

    /** Parents before children, those of one parent in the order of the file. */
    private Sections ordered(int[] into) {
        Map<Integer, Integer> index = new LinkedHashMap<>();
        List<String> kept = new ArrayList<>();
        visit(0, into, index, kept);
        Map<String, Integer> sections = new LinkedHashMap<>();
        sectionOf.forEach((node, section) -> sections.put(node, index.get(end(section, into))));
        return new Sections(sections, kept);
    }

    private void visit(int section, int[] into, Map<Integer, Integer> index, List<String> kept) {
        index.put(section, kept.size());
        kept.add(roots.get(section));
        for (int i = section + 1; i < parents.size(); i++) {
            if (into[i] == i && end(parents.get(i), into) == section) {
                visit(i, into, index, kept);
            }
        }
    }

    private static int end(int section, int[] into) {
        int at = section;
        while (into[at] != at) {
            at = into[at];
        }
        return at;
    }
}
