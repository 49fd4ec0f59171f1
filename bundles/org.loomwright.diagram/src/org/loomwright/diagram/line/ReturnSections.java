// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * In which section of the sheet each node of the returns lies: what gathers the returns of one section only lies there, else
 * where its device is drawn in the supply, else with the sources.
 */
final class ReturnSections {
    private final Map<String, Integer> supply;
    private final Map<String, Integer> fixed = new LinkedHashMap<>();
    private final Map<String, Set<Integer>> votes = new LinkedHashMap<>();
    private final Map<String, String> units = new LinkedHashMap<>();
    private final Map<String, String> leaders = new LinkedHashMap<>();

    /** @param supply index of the section of each node of the supply */
    ReturnSections(Map<String, Integer> supply) {
        this.supply = supply;
    }

    int ofSupply(String node) {
        return supply.getOrDefault(node, 0);
    }

    /** A node whose section is known. */
    void put(String node, int section) {
        fixed.put(node, section);
    }

    /** A node to which returns of a section lead. */
    void vote(String node, int section) {
        votes.computeIfAbsent(node, none -> new LinkedHashSet<>()).add(section);
    }

    /** A node that belongs to a device. */
    void at(String node, String unit) {
        units.put(node, unit);
    }

    /** A node that lies where another does. */
    void follow(String node, String leader) {
        leaders.put(node, leader);
    }

    /** Index of the section of each node. */
    Map<String, Integer> of(LineGraph graph) {
        Map<String, Integer> found = new LinkedHashMap<>();
        graph.nodes().keySet().forEach(node -> found.put(node, section(leaders.getOrDefault(node, node))));
        return found;
    }

    private int section(String node) {
        if (fixed.containsKey(node)) {
            return fixed.get(node);
        }
        Set<Integer> from = votes.getOrDefault(node, Set.of());
        return from.size() == 1 ? from.iterator().next() : ofSupply(units.get(node));
    }
}
