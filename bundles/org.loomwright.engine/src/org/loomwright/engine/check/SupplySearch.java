// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.Network.Item;

/** What opens the way from a node of a solved network to a source: the fewest open contacts and blocking diodes. */
final class SupplySearch {
    private final SolvedCase.Solved solved;
    private final NetworkIndex index;
    private final boolean[] plus;
    private final boolean[] minus;

    SupplySearch(Plan plan, SolvedCase.Solved solved) {
        this.solved = solved;
        index = NetworkIndex.of(plan, solved.at());
        plus = new boolean[index.network().nodes()];
        minus = new boolean[plus.length];
        for (Item item : index.network().items()) {
            int[] nodes = NetworkIndex.nodes(item);
            if (item instanceof Network.Emf || item instanceof Network.Regulator source && source.limitA() > 0) {
                plus[nodes[0]] = true;
                minus[nodes[1]] = true;
            } else if (item instanceof Network.ConverterItem) {
                plus[nodes[2]] = true;
                minus[nodes[3]] = true;
            }
        }
    }

    /**
     * Elements of the plan that are open on the way to the plus side of a source, from the node on; null when no way leads
     * there.
     */
    List<Integer> toPlus(int node) {
        return search(node, plus);
    }

    /** The same to the minus side. */
    List<Integer> toMinus(int node) {
        return search(node, minus);
    }

    private List<Integer> search(int from, boolean[] ends) {
        int[] opened = new int[ends.length];
        int[] by = new int[ends.length];
        int[] before = new int[ends.length];
        Arrays.fill(opened, Integer.MAX_VALUE);
        Arrays.fill(by, -1);
        opened[from] = 0;
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            int node = open.removeFirst();
            if (ends[node]) {
                return way(from, node, by, before);
            }
            for (int item : index.itemsAt(node)) {
                if (!index.passes(item)) {
                    continue;
                }
                int cost = isOpen(item) ? 1 : 0;
                for (int next : NetworkIndex.nodes(index.network().items().get(item))) {
                    if (opened[node] + cost < opened[next]) {
                        opened[next] = opened[node] + cost;
                        by[next] = item;
                        before[next] = node;
                        if (cost == 0) {
                            open.addFirst(next);
                        } else {
                            open.addLast(next);
                        }
                    }
                }
            }
        }
        return null;
    }

    private boolean isOpen(int item) {
        Item it = index.network().items().get(item);
        return (it instanceof Network.Switch || it instanceof Network.Rectifier) && !solved.point().on()[item];
    }

    private List<Integer> way(int from, int end, int[] by, int[] before) {
        List<Integer> found = new ArrayList<>();
        for (int node = end; node != from; node = before[node]) {
            if (isOpen(by[node]) && index.owner(by[node]) != null) {
                found.add(index.owner(by[node]).index());
            }
        }
        Collections.reverse(found);
        return found;
    }
}
