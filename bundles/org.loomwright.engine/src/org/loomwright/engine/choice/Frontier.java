// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.Arrays;

/**
 * All choices of a few items that can be the best in some room: the cheapest first, without those that take no less of anything
 * than a better one.
 */
final class Frontier {
    private final Tables tables;
    private final Costs costs;
    private final int[] ranked;
    private final int[] limits;
    private final int[][] open;
    private final int[] decided;
    /** Place of each limit in this frontier's own. */
    private final int[] at;
    /** Choices that are kept; what they take, and the choices themselves. */
    private double[][] takes = new double[8][];
    private Answer[] answers = new Answer[8];
    private int size;

    /**
     * Tabulates.
     *
     * @param ranked  the items, in the order of ids
     * @param limits  limits that any of them takes part in
     * @param decided option of each item decided, -1 of the others; pairings with these are kept
     */
    Frontier(Tables tables, Domains domains, Costs costs, int[] ranked, int[] limits, int[] decided) {
        this.tables = tables;
        this.costs = costs;
        this.ranked = ranked;
        this.limits = limits;
        this.decided = decided.clone();
        open = new int[ranked.length][];
        for (int i = 0; i < open.length; i++) {
            open[i] = domains.of(ranked[i]);
        }
        at = new int[tables.atMost.length];
        for (int k = 0; k < limits.length; k++) {
            at[limits[k]] = k;
        }
        enumerate(0, 0, 0, new double[limits.length]);
        keepBest();
    }

    /** In the order of options, item by item, so that a stable sort keeps the smaller options first. */
    private void enumerate(int depth, long cost, long tie, double[] sums) {
        if (depth == ranked.length) {
            add(cost, tie, sums);
            return;
        }
        int item = ranked[depth];
        int[] of = tables.limitsOf[item];
        for (int o : open[depth]) {
            if (paired(item, o)) {
                double[] with = sums.clone();
                for (int k = 0; k < of.length; k++) {
                    with[at[of[k]]] += tables.takes[item][k][o];
                }
                decided[item] = o;
                enumerate(depth + 1, cost + costs.cost(item, o), tie + costs.tie(item, o), with);
                decided[item] = -1;
            }
        }
    }

    private void add(long cost, long tie, double[] sums) {
        int[] options = new int[ranked.length];
        for (int i = 0; i < options.length; i++) {
            options[i] = decided[ranked[i]];
        }
        if (size == answers.length) {
            answers = Arrays.copyOf(answers, 2 * size);
            takes = Arrays.copyOf(takes, 2 * size);
        }
        answers[size] = Answer.of(ranked, options, cost, tie);
        takes[size++] = sums;
    }

    private boolean paired(int item, int option) {
        for (int p : tables.pairsOf[item]) {
            int other = tables.pairs[p].other(item);
            if (decided[other] >= 0 && !tables.pairs[p].allows(item, option, decided[other])) {
                return false;
            }
        }
        return true;
    }

    private void keepBest() {
        Integer[] order = new Integer[size];
        Arrays.setAll(order, e -> e);
        Arrays.sort(order, (a, b) -> answers[a].cost != answers[b].cost ? Long.compare(answers[a].cost, answers[b].cost)
                : Long.compare(answers[a].tie, answers[b].tie));
        double[][] keptTakes = new double[size][];
        Answer[] kept = new Answer[size];
        int count = 0;
        for (int e : order) {
            boolean beaten = false;
            for (int k = 0; k < count && !beaten; k++) {
                beaten = nowhereAbove(keptTakes[k], takes[e]);
            }
            if (!beaten) {
                keptTakes[count] = takes[e];
                kept[count++] = answers[e];
            }
        }
        takes = Arrays.copyOf(keptTakes, count);
        answers = Arrays.copyOf(kept, count);
        size = count;
    }

    private static boolean nowhereAbove(double[] one, double[] other) {
        for (int k = 0; k < one.length; k++) {
            if (one[k] > other[k]) {
                return false;
            }
        }
        return true;
    }

    /** The best choice in a room up to a cost, or null. */
    Answer first(double[] room, double[] allowance, long upTo) {
        for (int e = 0; e < size; e++) {
            if (answers[e].cost > upTo) {
                return null;
            }
            if (fits(takes[e], room, allowance)) {
                return answers[e];
            }
        }
        return null;
    }

    private boolean fits(double[] of, double[] room, double[] allowance) {
        for (int k = 0; k < of.length; k++) {
            if (of[k] > room[limits[k]] + allowance[limits[k]]) {
                return false;
            }
        }
        return true;
    }
}
