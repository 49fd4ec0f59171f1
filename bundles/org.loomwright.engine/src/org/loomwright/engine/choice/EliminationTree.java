// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Items in an order of decision such that, once an item and all above it are decided, the subtrees below it have nothing to do
 * with each other: an elimination tree of the graph that joins items of one limit or pairing (Dechter and Mateescu, AND/OR search
 * spaces for graphical models, Artificial Intelligence 171, 2007). All items of one limit lie on one way from a root down.
 */
final class EliminationTree {
    private final List<Node> roots = new ArrayList<>();

    /** An item, and what depends on it. */
    record Node(int item, List<Node> children) {
    }

    private EliminationTree() {
    }

    List<Node> roots() {
        return roots;
    }

    /** The tree: the item with the most neighbours first, of equal ones the one whose id comes first. */
    static EliminationTree of(Tables tables) {
        int n = tables.items();
        int[][] beside = beside(tables);
        boolean[] gone = new boolean[n];
        EliminationTree tree = new EliminationTree();
        Integer[] all = new Integer[n];
        Arrays.setAll(all, i -> i);
        Deque<Task> open = new ArrayDeque<>();
        split(List.of(all), beside, gone).forEach(part -> open.add(new Task(part, tree.roots)));
        while (!open.isEmpty()) {
            Task task = open.remove();
            int best = -1;
            int most = -1;
            for (int item : task.items()) {
                int neighbours = neighbours(item, beside, gone);
                if (neighbours > most || neighbours == most && tables.rank[item] < tables.rank[best]) {
                    most = neighbours;
                    best = item;
                }
            }
            Node node = new Node(best, new ArrayList<>());
            task.into().add(node);
            gone[best] = true;
            List<Integer> rest = new ArrayList<>(task.items());
            rest.remove(Integer.valueOf(best));
            split(rest, beside, gone).forEach(part -> open.add(new Task(part, node.children())));
        }
        return tree;
    }

    private record Task(List<Integer> items, List<Node> into) {
    }

    /** Items that share a limit or a pairing with each item. */
    private static int[][] beside(Tables tables) {
        int n = tables.items();
        int[][] arrays = new int[n][];
        for (int i = 0; i < n; i++) {
            BitSet beside = new BitSet(n);
            for (int limit : tables.limitsOf[i]) {
                for (int other : tables.itemsOf[limit]) {
                    beside.set(other);
                }
            }
            for (int pair : tables.pairsOf[i]) {
                beside.set(tables.pairs[pair].other(i));
            }
            beside.clear(i);
            arrays[i] = beside.stream().toArray();
        }
        return arrays;
    }

    private static int neighbours(int item, int[][] beside, boolean[] gone) {
        int count = 0;
        for (int other : beside[item]) {
            count += gone[other] ? 0 : 1;
        }
        return count;
    }

    private static List<List<Integer>> split(List<Integer> items, int[][] beside, boolean[] gone) {
        boolean[] seen = new boolean[gone.length];
        List<List<Integer>> parts = new ArrayList<>();
        for (int start : items) {
            if (seen[start]) {
                continue;
            }
            List<Integer> part = new ArrayList<>(List.of(start));
            seen[start] = true;
            for (int k = 0; k < part.size(); k++) {
                for (int other : beside[part.get(k)]) {
                    if (!gone[other] && !seen[other]) {
                        seen[other] = true;
                        part.add(other);
                    }
                }
            }
            parts.add(part);
        }
        return parts;
    }
}
