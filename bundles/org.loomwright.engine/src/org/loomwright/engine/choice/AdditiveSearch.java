// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Least sum of costs, proven: depth-first branch and bound over an elimination tree (AND/OR search, Dechter and Mateescu 2007;
 * Marinescu and Dechter, AND/OR branch-and-bound search, Artificial Intelligence 173, 2009). What lies below a decided item falls
 * apart into subtrees that are solved each on its own, from what the limits leave to it.
 *
 * <p>A subtree's best choice is kept with the room it was found in and the room it takes: with any room between the two it is
 * still the best, and with less room than the former it cannot get cheaper, which gives bounds. A small subtree is tabulated.
 *
 * <p>Before, options are struck that cannot be in a best choice: those beside which another is never worse, and those that prices
 * on the limits show to be too expensive beside a choice at hand.
 */
final class AdditiveSearch {
    private static final int ROUNDS = 6;

    private final Tables all;
    private final Domains left;
    private final Costs costs;
    private final ChoiceEffort effort;
    private Tables tables;
    private DualPrices dual;
    /** Prices of the limits as numbered in the problem. */
    private final double[] prices;
    private double[] tightPrices;
    /** The best choice at hand and its cost; null and the largest cost when there is none. */
    private int[] first;
    private long firstCost = Long.MAX_VALUE / 4;

    /**
     * Prepares a search.
     *
     * @param domains options that are open, narrowed already; they stay as they are
     * @param prices  prices of the limits to begin with, as numbered in the problem; they are bettered
     */
    AdditiveSearch(Tables all, Domains domains, Costs costs, ChoiceEffort effort, double[] prices) {
        this.all = all;
        this.costs = costs;
        this.effort = effort;
        this.prices = prices;
        left = domains.copy();
        boolean going = true;
        for (int round = 0; round < ROUNDS && going; round++) {
            going = prepare();
        }
    }

    /** A round of striking; true when another may help. */
    private boolean prepare() {
        effort.check();
        tables = TightLimits.of(all, left);
        while (Dominance.strike(tables, left, costs) && left.narrow()) {
            tables = TightLimits.of(all, left);
        }
        dual = new DualPrices(tables, left, costs);
        tightPrices = new double[tables.limits.length];
        for (int l = 0; l < tightPrices.length; l++) {
            tightPrices[l] = prices[tables.limits[l]];
        }
        FirstChoice some = new FirstChoice(tables, left, costs);
        if (first == null) {
            consider(some.fromLeast());
        }
        if (first == null) {
            return false;
        }
        tightPrices = dual.towards(firstCost, tightPrices);
        for (int l = 0; l < tightPrices.length; l++) {
            prices[tables.limits[l]] = tightPrices[l];
        }
        consider(some.at(dual, tightPrices));
        if (!dual.strike(left, tightPrices, firstCost)) {
            return false;
        }
        if (!left.narrow()) {
            throw new IllegalStateException("a choice at hand was struck");
        }
        return true;
    }

    private void consider(int[] choice) {
        if (choice == null) {
            return;
        }
        long cost = 0;
        for (int i = 0; i < choice.length; i++) {
            cost += costs.cost(i, choice[i]);
        }
        if (cost < firstCost) {
            firstCost = cost;
            first = choice;
        }
    }

    /** Options of all items, or null when nothing meets the limits. */
    Found best() {
        double[] room = tables.atMost.clone();
        int[] decided = new int[tables.items()];
        Arrays.fill(decided, -1);
        Subtree.Shared shared = new Subtree.Shared(tables, left, costs, effort, dual, tightPrices, room, decided);
        List<Subtree> roots = new ArrayList<>();
        EliminationTree.of(tables).roots().forEach(root -> roots.add(new Subtree(root, shared)));
        long bound = 0;
        for (Subtree root : roots) {
            long least = root.bound();
            if (least == Long.MAX_VALUE) {
                return null;
            }
            bound += least;
        }
        long cost = 0;
        int[] options = new int[tables.items()];
        for (Subtree root : roots) {
            long least = root.bound();
            Answer answer = root.best(firstCost - (bound - least));
            if (answer == null) {
                return null;
            }
            bound += answer.cost - least;
            cost += answer.cost;
            answer.into(options);
        }
        return new Found(options, cost);
    }

    /** A choice that meets the limits, or null when none is at hand. */
    Found atHand() {
        return first == null ? null : new Found(first, firstCost);
    }

    /** No choice is cheaper. */
    long floor() {
        double bound = dual.bound(tightPrices);
        return StrictMath.max(0, (long) StrictMath.ceil(bound - DualPrices.ROUNDING_UNITS));
    }

    /** A best choice. */
    record Found(int[] options, long cost) {
    }
}
