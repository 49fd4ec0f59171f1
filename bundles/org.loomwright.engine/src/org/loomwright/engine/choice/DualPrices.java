// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Term;

/**
 * What a unit of each limit is worth: with these prices on what the options take, every item for itself takes its cheapest, and the
 * sum less the worth of all limits is a bound from below (Lagrangian relaxation, Fisher, Management Science 27, 1981). Prices are
 * found by subgradient steps (Held, Wolfe, Crowder, Mathematical Programming 6, 1974); any prices give a valid bound.
 */
final class DualPrices {
    private static final int STEPS = 250;
    private static final int PATIENCE = 12;

    private final Domains domains;
    private final Costs costs;
    private final List<Limit> limits;
    private final List<List<int[]>> termsOf;
    private final int items;

    DualPrices(int items, List<Limit> limits, List<List<int[]>> termsOf, Domains domains, Costs costs) {
        this.items = items;
        this.limits = limits;
        this.termsOf = termsOf;
        this.domains = domains;
        this.costs = costs;
    }

    /**
     * Prices in units of cost, one for each limit.
     *
     * @param goal cost of some choice, which the bound is driven towards
     */
    double[] towards(double goal) {
        double[] prices = new double[limits.size()];
        double[] best = prices.clone();
        double most = Double.NEGATIVE_INFINITY;
        double reach = 1;
        int since = 0;
        for (int step = 0; step < STEPS && reach > 1e-3; step++) {
            double[] over = new double[prices.length];
            double bound = 0;
            for (int l = 0; l < over.length; l++) {
                over[l] = -limits.get(l).atMost();
                bound -= prices[l] * limits.get(l).atMost();
            }
            for (int i = 0; i < items; i++) {
                int option = cheapest(i, prices);
                bound += price(i, option, prices);
                for (int[] term : termsOf.get(i)) {
                    over[term[0]] += limits.get(term[0]).terms().get(term[1]).values().get(option);
                }
            }
            since++;
            if (bound > most) {
                since = bound > most + 1e-4 * StrictMath.abs(most) ? 0 : since;
                most = bound;
                best = prices.clone();
            }
            if (since > PATIENCE) {
                since = 0;
                reach /= 2;
                prices = best.clone();
                continue;
            }
            double norm = 0;
            for (int l = 0; l < over.length; l++) {
                over[l] /= scale(l);
                over[l] = prices[l] <= 0 && over[l] < 0 ? 0 : over[l];
                norm += over[l] * over[l];
            }
            if (norm == 0 || !(goal > bound)) {
                break;
            }
            for (int l = 0; l < over.length; l++) {
                prices[l] = StrictMath.max(0, prices[l] + reach * (goal - bound) / norm * over[l] / scale(l));
            }
        }
        return best;
    }

    private double scale(int limit) {
        return StrictMath.max(1e-9, StrictMath.abs(limits.get(limit).atMost()));
    }

    /** The least that an item costs with prices on what it takes. */
    double least(int item, double[] prices) {
        return price(item, cheapest(item, prices), prices);
    }

    private int cheapest(int item, double[] prices) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int o : domains.of(item)) {
            double price = price(item, o, prices);
            if (price < least) {
                least = price;
                best = o;
            }
        }
        return best;
    }

    double price(int item, int option, double[] prices) {
        double sum = costs.cost(item, option);
        for (int[] term : termsOf.get(item)) {
            if (prices[term[0]] != 0) {
                sum += prices[term[0]] * limits.get(term[0]).terms().get(term[1]).values().get(option);
            }
        }
        return sum;
    }

    /** For each item, its terms as pairs of limit and place in it. */
    static List<List<int[]>> termsOf(int items, List<Limit> limits) {
        List<List<int[]>> termsOf = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            termsOf.add(new ArrayList<>());
        }
        for (int l = 0; l < limits.size(); l++) {
            List<Term> terms = limits.get(l).terms();
            for (int k = 0; k < terms.size(); k++) {
                termsOf.get(terms.get(k).item()).add(new int[] {l, k});
            }
        }
        return termsOf;
    }
}
