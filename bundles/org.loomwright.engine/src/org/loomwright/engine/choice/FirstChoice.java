// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Pairing;

/**
 * Some choice to begin with: from the options that take least, steps to cheaper ones as long as everything holds, the largest
 * saving for what it takes first. It is no more than a figure to undercut.
 */
final class FirstChoice {
    private final ChoiceProblem problem;
    private final Domains domains;
    private final Costs costs;
    private final List<Limit> limits;
    private final List<List<int[]>> termsOf;
    private final List<List<Pairing>> pairingsOf = new ArrayList<>();
    private final double[] room;

    FirstChoice(ChoiceProblem problem, List<Limit> limits, List<List<int[]>> termsOf, Domains domains, Costs costs) {
        this.problem = problem;
        this.limits = limits;
        this.termsOf = termsOf;
        this.domains = domains;
        this.costs = costs;
        problem.items().forEach(item -> pairingsOf.add(new ArrayList<>()));
        problem.pairings().forEach(pairing -> {
            pairingsOf.get(pairing.itemA()).add(pairing);
            pairingsOf.get(pairing.itemB()).add(pairing);
        });
        room = limits.stream().mapToDouble(limit -> limit.atMost() + Domains.allowance(limit.atMost())).toArray();
    }

    /** Its cost, or -1 when the options that take least do not hold together. */
    long cost() {
        int[] choice = new int[problem.items().size()];
        for (int i = 0; i < choice.length; i++) {
            choice[i] = leastTaking(i);
            for (int[] term : termsOf.get(i)) {
                room[term[0]] -= value(term, choice[i]);
            }
        }
        for (double left : room) {
            if (left < 0) {
                return -1;
            }
        }
        for (int i = 0; i < choice.length; i++) {
            if (!paired(i, choice[i], choice)) {
                return -1;
            }
        }
        while (step(choice)) {
            continue;
        }
        long cost = 0;
        for (int i = 0; i < choice.length; i++) {
            cost += costs.cost(i, choice[i]);
        }
        return cost;
    }

    private int leastTaking(int item) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int o : domains.of(item)) {
            double sum = 0;
            for (int[] term : termsOf.get(item)) {
                sum += value(term, o) / StrictMath.max(1e-9, StrictMath.abs(limits.get(term[0]).atMost()));
            }
            if (sum < least) {
                least = sum;
                best = o;
            }
        }
        return best;
    }

    private boolean step(int[] choice) {
        int bestItem = -1;
        int bestOption = -1;
        double bestWorth = 0;
        for (int i = 0; i < choice.length; i++) {
            for (int o : domains.of(i)) {
                long saved = costs.cost(i, choice[i]) - costs.cost(i, o);
                if (saved <= 0 || !paired(i, o, choice)) {
                    continue;
                }
                double taken = taken(i, choice[i], o);
                double worth = saved / (taken + 1e-6);
                if (worth > bestWorth) {
                    bestWorth = worth;
                    bestItem = i;
                    bestOption = o;
                }
            }
        }
        if (bestItem < 0) {
            return false;
        }
        for (int[] term : termsOf.get(bestItem)) {
            room[term[0]] += value(term, choice[bestItem]) - value(term, bestOption);
        }
        choice[bestItem] = bestOption;
        return true;
    }

    /** Largest share of what is left of any limit; infinite when it does not fit. */
    private double taken(int item, int from, int to) {
        double most = 0;
        for (int[] term : termsOf.get(item)) {
            double more = value(term, to) - value(term, from);
            if (more > room[term[0]]) {
                return Double.POSITIVE_INFINITY;
            }
            most = StrictMath.max(most, more > 0 ? more / room[term[0]] : 0);
        }
        return most;
    }

    private double value(int[] term, int option) {
        return limits.get(term[0]).terms().get(term[1]).values().get(option);
    }

    private boolean paired(int item, int option, int[] choice) {
        for (Pairing pairing : pairingsOf.get(item)) {
            boolean a = pairing.itemA() == item;
            if (!pairing.allowed().get(a ? option : choice[pairing.itemA()]).get(a ? choice[pairing.itemB()] : option)) {
                return false;
            }
        }
        return true;
    }
}
