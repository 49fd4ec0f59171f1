// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.choice.ChoiceProblem.Limit;

/**
 * Least sum of costs, proven: depth-first branch and bound over an elimination tree (AND/OR search, Dechter and Mateescu 2007;
 * Marinescu and Dechter, AND/OR branch-and-bound search, Artificial Intelligence 173, 2009). What lies below a decided item falls
 * apart into subtrees that are solved each on its own, from what the limits leave to it.
 *
 * <p>A subtree's best choice is kept with the room it was found in and the room it takes: with any room between the two it is
 * still the best, and with less room than the former it cannot get cheaper, which gives bounds.
 */
final class AdditiveSearch {
    private final List<Subtree> roots = new ArrayList<>();
    private final int items;
    /** Cost of some choice, or -1. */
    private final long first;

    /** Domains must be narrowed already. */
    AdditiveSearch(ChoiceProblem problem, Domains domains, Costs costs, ChoiceEffort effort) {
        items = problem.items().size();
        List<Limit> limits = TightLimits.of(problem, domains);
        double[] room = limits.stream().mapToDouble(Limit::atMost).toArray();
        double[] allowance = limits.stream().mapToDouble(limit -> Domains.allowance(limit.atMost())).toArray();
        int[] decided = new int[items];
        Arrays.fill(decided, -1);
        Integer[] order = new Integer[items];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparing(i -> problem.items().get(i).id()));
        int[] rank = new int[items];
        for (int r = 0; r < items; r++) {
            rank[order[r]] = r;
        }
        EliminationTree tree = EliminationTree.of(new ChoiceProblem(problem.items(), limits, problem.pairings(),
                problem.objective()));
        List<List<int[]>> termsOf = DualPrices.termsOf(items, limits);
        first = new FirstChoice(problem, limits, termsOf, domains, costs).cost();
        DualPrices dual = new DualPrices(items, limits, termsOf, domains, costs);
        double[] prices = first < 0 ? new double[limits.size()] : dual.towards(first);
        Subtree.Shared shared = new Subtree.Shared(problem, domains, costs, effort, dual, prices, rank, room, allowance, decided);
        tree.roots().forEach(root -> roots.add(new Subtree(root, limits, termsOf, shared)));
    }

    /**
     * Strikes options that no choice up to the first one's cost can contain (fixing by reduced costs: Dantzig, Fulkerson, Johnson
     * 1954); true when there were any.
     */
    boolean strike(Domains from) {
        if (first < 0) {
            return false;
        }
        boolean struck = false;
        for (Subtree root : roots) {
            long others = roots.stream().filter(other -> other != root).mapToLong(other -> other.floor).sum();
            struck |= root.strike(from, root.priced - root.worth(), first - others);
        }
        return struck;
    }

    /** Options of all items, or null when nothing meets the limits. */
    Found best() {
        long cost = 0;
        int[] options = new int[items];
        for (Subtree root : roots) {
            long others = roots.stream().filter(other -> other != root).mapToLong(other -> other.floor).sum();
            Answer answer = root.best(first < 0 ? Long.MAX_VALUE / 4 : first - others);
            if (answer == null) {
                return null;
            }
            cost += answer.cost;
            answer.into(options);
        }
        return new Found(options, cost);
    }

    /** Least costs without any regard to limits between items: no choice is cheaper. */
    long floor() {
        return roots.stream().mapToLong(root -> root.floor).sum();
    }

    /** A best choice. */
    record Found(int[] options, long cost) {
    }
}
