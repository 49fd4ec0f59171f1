// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** An item with all that depends on it. */
final class Subtree {
    /** Kept answers a subtree; more take longer to look through than they save. */
    private static final int KEPT = 400;
    /** Subtrees with at most so many choices are tabulated. */
    private static final int TABULATED = 400;

    private final Shared shared;
    private final Tables tables;
    private final double[] room;
    private final int item;
    private final int[] options;
    private final Subtree[] below;
    /** Items in it, in the order of ids. */
    private final int[] ranked;
    /** Limits that any item in it takes part in, and the least that it takes of each. */
    private final int[] limits;
    private final double[] least;
    /** Limits of the item itself; the least that it takes, and that the items below add. */
    private final int[] own;
    private final double[][] values;
    private final double[] leastOwn;
    private final double[] leastBelow;
    /** Items above that pair with items in the subtree. */
    private final int[] partnersAbove;
    /** Whether something below pairs with the item. */
    private final boolean pairsBelow;
    private final boolean tabulated;
    /** Least sum of costs without regard to limits; with prices on what is taken of them. */
    private final long floor;
    private final double priced;
    private final Map<IntBuffer, List<Kept>> kept = new HashMap<>();
    private final Map<IntBuffer, Frontier> frontiers = new HashMap<>();
    /** The only frontier where nothing above pairs with the subtree. */
    private Frontier alone;

    /** An answer kept: of a room, the room it takes; the answer null when there is none, or only a bound is known. */
    private record Kept(double[] in, double[] takes, Answer answer, long bound) {
    }

    /**
     * What all subtrees of a search share: the problem, and the room that the decisions made so far leave.
     *
     * @param prices  worth of a unit of each limit
     * @param room    what is left of each limit
     * @param decided option of each item decided, -1 of the others
     */
    record Shared(Tables tables, Domains domains, Costs costs, ChoiceEffort effort, DualPrices dual, double[] prices,
            double[] room, int[] decided) {
    }

    Subtree(EliminationTree.Node node, Shared shared) {
        this.shared = shared;
        tables = shared.tables();
        room = shared.room();
        item = node.item();
        options = shared.domains().of(item);
        below = node.children().stream().map(child -> new Subtree(child, shared)).toArray(Subtree[]::new);
        ranked = IntStream.concat(IntStream.of(item), Arrays.stream(below).flatMapToInt(child -> IntStream.of(child.ranked)))
                .boxed().sorted(Comparator.comparing(i -> tables.rank[i])).mapToInt(Integer::intValue).toArray();
        own = tables.limitsOf[item];
        values = tables.takes[item];
        double[] sums = new double[tables.atMost.length];
        TreeSet<Integer> in = new TreeSet<>();
        for (Subtree child : below) {
            for (int k = 0; k < child.limits.length; k++) {
                in.add(child.limits[k]);
                sums[child.limits[k]] += child.least[k];
            }
        }
        leastOwn = new double[own.length];
        leastBelow = new double[own.length];
        for (int k = 0; k < own.length; k++) {
            in.add(own[k]);
            leastBelow[k] = sums[own[k]];
            leastOwn[k] = shared.domains().least(item, values[k]);
            sums[own[k]] += leastOwn[k];
        }
        limits = in.stream().mapToInt(Integer::intValue).toArray();
        least = Arrays.stream(limits).mapToDouble(l -> sums[l]).toArray();
        partnersAbove = partners();
        pairsBelow = Arrays.stream(below).anyMatch(child -> Arrays.stream(child.partnersAbove).anyMatch(p -> p == item));
        tabulated = choices() <= TABULATED;
        floor = Arrays.stream(options).mapToLong(o -> shared.costs().cost(item, o)).min().orElse(0)
                + Arrays.stream(below).mapToLong(child -> child.floor).sum();
        priced = shared.dual().least(item, shared.prices()) + Arrays.stream(below).mapToDouble(child -> child.priced).sum();
    }

    private long choices() {
        long product = 1;
        for (int i : ranked) {
            product *= shared.domains().count(i);
            if (product > TABULATED) {
                return product;
            }
        }
        return product;
    }

    private int[] partners() {
        TreeSet<Integer> partners = new TreeSet<>();
        for (int inside : ranked) {
            for (int p : tables.pairsOf[inside]) {
                partners.add(tables.pairs[p].other(inside));
            }
        }
        for (int inside : ranked) {
            partners.remove(inside);
        }
        return partners.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The decisions above that count here because of pairings. */
    private IntBuffer above() {
        int[] key = new int[partnersAbove.length];
        for (int k = 0; k < key.length; k++) {
            key[k] = shared.decided()[partnersAbove[k]];
        }
        return IntBuffer.wrap(key);
    }

    private Frontier frontier() {
        if (partnersAbove.length > 0) {
            return frontiers.computeIfAbsent(above(), key -> tabulate());
        }
        if (alone == null) {
            alone = tabulate();
        }
        return alone;
    }

    private Frontier tabulate() {
        return new Frontier(tables, shared.domains(), shared.costs(), ranked, limits, shared.decided());
    }

    private boolean atMost(double[] in) {
        for (int k = 0; k < limits.length; k++) {
            if (room[limits[k]] > in[k]) {
                return false;
            }
        }
        return true;
    }

    private boolean atLeast(double[] takes) {
        for (int k = 0; k < limits.length; k++) {
            if (room[limits[k]] < takes[k]) {
                return false;
            }
        }
        return true;
    }

    /** Bound by the worth of the room left. */
    private long pricedBound() {
        double worth = 0;
        for (int limit : limits) {
            worth += shared.prices()[limit] * (room[limit] + tables.allowance[limit]);
        }
        return (long) StrictMath.ceil(priced - worth - DualPrices.ROUNDING_UNITS);
    }

    /** No choice of the subtree is cheaper in the present room; the largest number when there is none. */
    long bound() {
        if (tabulated) {
            Answer answer = frontier().first(room, tables.allowance, Long.MAX_VALUE);
            return answer == null ? Long.MAX_VALUE : answer.cost;
        }
        long bound = StrictMath.max(floor, pricedBound());
        for (Kept each : kept.getOrDefault(above(), List.of())) {
            if (each.bound > bound && atMost(each.in)) {
                bound = each.bound;
            }
        }
        return bound;
    }

    /** The best choice in the present room, or null when there is none up to a cost. */
    Answer best(long upTo) {
        if (tabulated) {
            return frontier().first(room, tables.allowance, upTo);
        }
        for (int k = 0; k < limits.length; k++) {
            if (least[k] > room[limits[k]] + tables.allowance[limits[k]]) {
                return null;
            }
        }
        if (pricedBound() > upTo) {
            return null;
        }
        List<Kept> known = kept.computeIfAbsent(above(), k -> new ArrayList<>());
        for (Kept each : known) {
            if (atMost(each.in)) {
                if (each.bound > upTo) {
                    return null;
                }
                if (each.answer != null && atLeast(each.takes)) {
                    return each.answer;
                }
            }
        }
        Answer answer = search(upTo);
        double[] in = new double[limits.length];
        for (int k = 0; k < in.length; k++) {
            in[k] = room[limits[k]];
        }
        known.add(new Kept(in, answer == null ? null : takes(answer), answer,
                answer != null ? answer.cost : upTo >= Long.MAX_VALUE / 8 ? Long.MAX_VALUE : upTo + 1));
        if (known.size() > KEPT) {
            known.remove(0);
        }
        return answer;
    }

    private double[] takes(Answer answer) {
        double[] sums = new double[tables.atMost.length];
        answer.takes(tables, sums);
        double[] takes = new double[limits.length];
        for (int k = 0; k < takes.length; k++) {
            // rounding: not more than the room that it was found in
            takes[k] = StrictMath.min(sums[limits[k]], room[limits[k]]);
        }
        return takes;
    }

    private boolean fits(int option) {
        for (int k = 0; k < own.length; k++) {
            if (values[k][option] + leastBelow[k] > room[own[k]] + tables.allowance[own[k]]) {
                return false;
            }
        }
        for (int p : tables.pairsOf[item]) {
            int other = shared.decided()[tables.pairs[p].other(item)];
            if (other >= 0 && !tables.pairs[p].allows(item, option, other)) {
                return false;
            }
        }
        return true;
    }

    private void decide(int option) {
        shared.decided()[item] = option;
        for (int k = 0; k < own.length; k++) {
            room[own[k]] -= values[k][option];
        }
    }

    private void restore(double[] before) {
        shared.decided()[item] = -1;
        for (int k = 0; k < own.length; k++) {
            room[own[k]] = before[k];
        }
    }

    private Answer search(long upTo) {
        shared.effort().node();
        double[] before = new double[own.length];
        for (int k = 0; k < before.length; k++) {
            before[k] = room[own[k]];
        }
        long loosest = belowAtBest(before, upTo);
        if (loosest == Long.MAX_VALUE) {
            return null;
        }
        List<long[]> candidates = new ArrayList<>();
        for (int option : options) {
            long cost = shared.costs().cost(item, option);
            if (cost + loosest <= upTo && fits(option)) {
                decide(option);
                long bound = boundBelow();
                restore(before);
                if (bound < Long.MAX_VALUE) {
                    candidates.add(new long[] {cost + StrictMath.max(bound, loosest), option});
                }
            }
        }
        candidates.sort(Comparator.<long[]>comparingLong(c -> c[0]).thenComparingLong(c -> c[1]));
        Answer best = null;
        for (long[] candidate : candidates) {
            long limit = best == null ? upTo : best.cost;
            if (candidate[0] > limit) {
                break;
            }
            decide((int) candidate[1]);
            Answer answer = with((int) candidate[1], limit);
            restore(before);
            if (answer != null && (best == null || answer.isBetter(best, ranked, tables.items()))) {
                best = answer;
            }
        }
        return best;
    }

    private long boundBelow() {
        long sum = 0;
        for (Subtree child : below) {
            long bound = child.bound();
            if (bound == Long.MAX_VALUE) {
                return bound;
            }
            sum += bound;
        }
        return sum;
    }

    /** Least cost below, were the item to take of each limit the least that any of its options takes. */
    private long belowAtBest(double[] before, long upTo) {
        if (below.length == 0 || pairsBelow) {
            return 0;
        }
        for (int k = 0; k < own.length; k++) {
            room[own[k]] -= leastOwn[k];
        }
        long sum = 0;
        for (Subtree child : below) {
            Answer answer = sum == Long.MAX_VALUE ? null : child.best(upTo);
            sum = answer == null ? Long.MAX_VALUE : sum + answer.cost;
        }
        restore(before);
        return sum;
    }

    private Answer with(int option, long limit) {
        long cost = shared.costs().cost(item, option);
        long tie = shared.costs().tie(item, option);
        long open = limit - cost;
        long[] bounds = new long[below.length];
        for (int c = 0; c < below.length; c++) {
            bounds[c] = below[c].bound();
            if (bounds[c] == Long.MAX_VALUE) {
                return null;
            }
            open -= bounds[c];
        }
        Answer[] answers = new Answer[below.length];
        for (int c = 0; c < below.length; c++) {
            if (open < 0) {
                return null;
            }
            answers[c] = below[c].best(open + bounds[c]);
            if (answers[c] == null) {
                return null;
            }
            open -= answers[c].cost - bounds[c];
            cost += answers[c].cost;
            tie += answers[c].tie;
        }
        return cost > limit ? null : new Answer(new int[] {item}, new int[] {option}, answers, cost, tie);
    }
}
