// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Pairing;
import org.loomwright.engine.choice.ChoiceProblem.Term;

/** An item with all that depends on it. */
final class Subtree {
    /** Kept answers a subtree; more take longer to look through than they save. */
    private static final int KEPT = 400;
    /** Bounds are found in floating point, costs are whole. */
    private static final double ROUNDING_UNITS = 0.01;

    private final ChoiceProblem problem;
    private final Domains domains;
    private final Costs costs;
    private final ChoiceEffort effort;
    private final DualPrices dual;
    private final double[] prices;
    private final int[] rank;
    private final double[] room;
    private final double[] allowance;
    private final int[] decided;
    private final int item;
    private final int[] options;
    private final Subtree[] below;
    /** Limits that any item in it takes part in. */
    private final int[] limits;
    /** Limits that the item itself takes part in, its values by option, and the least that the items below add. */
    private final int[] own;
    private final double[][] values;
    private final double[] leastBelow;
    private final double[] leastOwn;
    private final double[] least;
    private final List<Pairing> ownPairings = new ArrayList<>();
    /** Items above that pair with items in the subtree. */
    private final int[] partnersAbove;
    final long floor;
    /** Least sum of costs with prices on what is taken of limits. */
    final double priced;
    private final Map<List<Integer>, List<Kept>> kept = new HashMap<>();

    /** An answer kept: of a room, the room it takes; the answer null when there is none, or only a bound is known. */
    private record Kept(double[] in, double[] takes, Answer answer, long bound) {
    }

    /**
     * What all subtrees of a search share: the problem, and the room that the decisions made so far leave.
     *
     * @param rank      place of each item in the order of ids
     * @param room      what is left of each limit
     * @param allowance what each limit may be exceeded by, for rounding
     * @param decided   option of each item decided, -1 of the others
     */
    record Shared(ChoiceProblem problem, Domains domains, Costs costs, ChoiceEffort effort, DualPrices dual, double[] prices,
            int[] rank, double[] room, double[] allowance, int[] decided) {
    }

    Subtree(EliminationTree.Node node, List<Limit> all, List<List<int[]>> termsOf, Shared shared) {
        problem = shared.problem();
        domains = shared.domains();
        costs = shared.costs();
        effort = shared.effort();
        dual = shared.dual();
        prices = shared.prices();
        rank = shared.rank();
        room = shared.room();
        allowance = shared.allowance();
        decided = shared.decided();
        item = node.item();
        below = node.children().stream().map(child -> new Subtree(child, all, termsOf, shared)).toArray(Subtree[]::new);
        options = domains.of(item);
        List<int[]> terms = termsOf.get(item);
        own = terms.stream().mapToInt(term -> term[0]).toArray();
        values = new double[own.length][];
        Map<Integer, Double> leastOf = new HashMap<>();
        for (Subtree child : below) {
            for (int k = 0; k < child.limits.length; k++) {
                leastOf.merge(child.limits[k], child.least[k], Double::sum);
            }
        }
        leastBelow = new double[own.length];
        leastOwn = new double[own.length];
        for (int k = 0; k < own.length; k++) {
            Term term = all.get(own[k]).terms().get(terms.get(k)[1]);
            values[k] = term.values().stream().mapToDouble(Double::doubleValue).toArray();
            leastOwn[k] = domains.least(term);
            leastBelow[k] = leastOf.getOrDefault(own[k], 0.0);
            leastOf.merge(own[k], leastOwn[k], Double::sum);
        }
        limits = leastOf.keySet().stream().sorted().mapToInt(Integer::intValue).toArray();
        least = Arrays.stream(limits).mapToDouble(leastOf::get).toArray();
        for (Pairing pairing : problem.pairings()) {
            if (pairing.itemA() == item || pairing.itemB() == item) {
                ownPairings.add(pairing);
            }
        }
        partnersAbove = partners();
        long cheapest = Long.MAX_VALUE;
        for (int option : options) {
            cheapest = StrictMath.min(cheapest, costs.cost(item, option));
        }
        for (Subtree child : below) {
            cheapest += child.floor;
        }
        floor = cheapest;
        double sum = dual.least(item, prices);
        for (Subtree child : below) {
            sum += child.priced;
        }
        priced = sum;
    }

    /** Worth of the room left. */
    double worth() {
        double worth = 0;
        for (int limit : limits) {
            worth += prices[limit] * (room[limit] + allowance[limit]);
        }
        return worth;
    }

    /** Bound by the worth of the room left. */
    private long pricedBound() {
        return (long) StrictMath.ceil(priced - worth() - ROUNDING_UNITS);
    }

    boolean strike(Domains from, double bound, long upTo) {
        boolean struck = false;
        double least = dual.least(item, prices);
        for (int option : options) {
            if (bound + dual.price(item, option, prices) - least - ROUNDING_UNITS > upTo) {
                from.close(item, option);
                struck = true;
            }
        }
        for (Subtree child : below) {
            struck |= child.strike(from, bound, upTo);
        }
        return struck;
    }

    private int[] partners() {
        List<Integer> inside = new ArrayList<>();
        collect(inside);
        List<Integer> partners = new ArrayList<>();
        for (Pairing pairing : problem.pairings()) {
            boolean a = inside.contains(pairing.itemA());
            boolean b = inside.contains(pairing.itemB());
            int partner = a && !b ? pairing.itemB() : b && !a ? pairing.itemA() : -1;
            if (partner >= 0 && !partners.contains(partner)) {
                partners.add(partner);
            }
        }
        return partners.stream().mapToInt(Integer::intValue).toArray();
    }

    private void collect(List<Integer> inside) {
        inside.add(item);
        for (Subtree child : below) {
            child.collect(inside);
        }
    }

    private List<Kept> keptHere() {
        Integer[] key = new Integer[partnersAbove.length];
        for (int k = 0; k < key.length; k++) {
            key[k] = decided[partnersAbove[k]];
        }
        return kept.computeIfAbsent(Arrays.asList(key), k -> new ArrayList<>());
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

    /** No choice of the subtree is cheaper in the present room. */
    private long bound() {
        long bound = StrictMath.max(floor, pricedBound());
        for (Kept each : keptHere()) {
            if (each.bound > bound && atMost(each.in)) {
                bound = each.bound;
            }
        }
        return bound;
    }

    /** The best choice in the present room, or null when there is none up to a cost. */
    Answer best(long upTo) {
        for (int k = 0; k < limits.length; k++) {
            if (least[k] > room[limits[k]] + allowance[limits[k]]) {
                return null;
            }
        }
        if (pricedBound() > upTo) {
            return null;
        }
        List<Kept> known = keptHere();
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
        double[] takes = new double[limits.length];
        add(answer, takes, limits);
        for (int k = 0; k < takes.length; k++) {
            // rounding: not more than the room that it was found in
            takes[k] = StrictMath.min(takes[k], room[limits[k]]);
        }
        return takes;
    }

    private void add(Answer answer, double[] sums, int[] of) {
        for (int k = 0; k < own.length; k++) {
            sums[Arrays.binarySearch(of, own[k])] += values[k][answer.option];
        }
        for (int c = 0; c < below.length; c++) {
            below[c].add(answer.below[c], sums, of);
        }
    }

    private boolean fits(int option) {
        for (int k = 0; k < own.length; k++) {
            if (values[k][option] + leastBelow[k] > room[own[k]] + allowance[own[k]]) {
                return false;
            }
        }
        for (Pairing pairing : ownPairings) {
            int other = pairing.itemA() == item ? pairing.itemB() : pairing.itemA();
            if (decided[other] >= 0 && !(pairing.itemA() == item ? pairing.allowed().get(option).get(decided[other])
                    : pairing.allowed().get(decided[other]).get(option))) {
                return false;
            }
        }
        return true;
    }

    private void decide(int option) {
        decided[item] = option;
        for (int k = 0; k < own.length; k++) {
            room[own[k]] -= values[k][option];
        }
    }

    private void restore(double[] before) {
        decided[item] = -1;
        for (int k = 0; k < own.length; k++) {
            room[own[k]] = before[k];
        }
    }

    private Answer search(long upTo) {
        effort.node();
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
            if (fits(option) && costs.cost(item, option) + loosest <= upTo) {
                decide(option);
                long bound = boundBelow();
                restore(before);
                if (bound < Long.MAX_VALUE) {
                    candidates.add(new long[] {costs.cost(item, option) + StrictMath.max(bound, loosest), option});
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
            int option = (int) candidate[1];
            decide(option);
            Answer answer = with(option, limit);
            restore(before);
            if (answer != null && (best == null || answer.isBetter(best, rank))) {
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
        if (below.length == 0) {
            return 0;
        }
        for (Subtree child : below) {
            if (Arrays.stream(child.partnersAbove).anyMatch(partner -> partner == item)) {
                return 0;
            }
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
        long open = limit - costs.cost(item, option);
        long[] bounds = new long[below.length];
        for (int c = 0; c < below.length; c++) {
            bounds[c] = below[c].bound();
            if (bounds[c] == Long.MAX_VALUE) {
                return null;
            }
            open -= bounds[c];
        }
        Answer[] answers = new Answer[below.length];
        long cost = costs.cost(item, option);
        long tie = costs.tie(item, option);
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
        return cost > limit ? null : new Answer(item, option, answers, cost, tie);
    }
}
