// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

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
    static EliminationTree of(ChoiceProblem problem) {
        int n = problem.items().size();
        int[][] beside = beside(problem);
        boolean[] gone = new boolean[n];
        EliminationTree tree = new EliminationTree();
        Comparator<Integer> byId = Comparator.comparing(item -> problem.items().get(item).id());
        Integer[] all = new Integer[n];
        Arrays.setAll(all, i -> i);
        Deque<Task> open = new ArrayDeque<>();
        split(List.of(all), beside, gone).forEach(part -> open.add(new Task(part, tree.roots)));
        while (!open.isEmpty()) {
            Task task = open.remove();
            int best = -1;
            int most = -1;
            for (int item : task.items().stream().sorted(byId).toList()) {
                int neighbours = neighbours(item, beside, gone);
                if (neighbours > most) {
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
    private static int[][] beside(ChoiceProblem problem) {
        List<Set<Integer>> beside = new ArrayList<>();
        problem.items().forEach(item -> beside.add(new TreeSet<>()));
        for (ChoiceProblem.Limit limit : problem.limits()) {
            List<Integer> clique = limit.terms().stream().map(ChoiceProblem.Term::item).toList();
            clique.forEach(item -> beside.get(item).addAll(clique));
        }
        for (ChoiceProblem.Pairing pairing : problem.pairings()) {
            beside.get(pairing.itemA()).add(pairing.itemB());
            beside.get(pairing.itemB()).add(pairing.itemA());
        }
        int[][] arrays = new int[beside.size()][];
        for (int i = 0; i < arrays.length; i++) {
            beside.get(i).remove(i);
            arrays[i] = beside.get(i).stream().mapToInt(Integer::intValue).toArray();
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
