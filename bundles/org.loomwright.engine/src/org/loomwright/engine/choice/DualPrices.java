// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

/**
 * What a unit of each limit is worth: with these prices on what the options take, every item for itself takes its cheapest, and
 * the sum less the worth of all limits is a bound from below (Lagrangian relaxation, Fisher, Management Science 27, 1981). Prices
 * are found by subgradient steps (Held, Wolfe, Crowder, Mathematical Programming 6, 1974); any prices give a valid bound.
 */
final class DualPrices {
    private static final int STEPS = 300;
    private static final int PATIENCE = 10;
    /** Bounds are found in floating point, costs are whole. */
    static final double ROUNDING_UNITS = 0.01;

    private final Tables tables;
    private final Costs costs;
    private final int[][] open;

    DualPrices(Tables tables, Domains domains, Costs costs) {
        this.tables = tables;
        this.costs = costs;
        open = new int[tables.items()][];
        for (int i = 0; i < open.length; i++) {
            open[i] = domains.of(i);
        }
    }

    /**
     * Prices in units of cost, one for each limit.
     *
     * @param goal  cost of some choice, which the bound is driven towards
     * @param start prices to begin with
     */
    double[] towards(double goal, double[] start) {
        double[] prices = start.clone();
        double[] best = start.clone();
        double[] over = new double[prices.length];
        double most = Double.NEGATIVE_INFINITY;
        double reach = 1;
        int since = 0;
        for (int step = 0; step < STEPS && reach > 1e-3; step++) {
            double bound = bound(prices, over);
            since++;
            if (bound > most) {
                since = bound > most + 1e-4 * StrictMath.abs(most) ? 0 : since;
                most = bound;
                System.arraycopy(prices, 0, best, 0, prices.length);
            }
            if (since > PATIENCE) {
                since = 0;
                reach /= 2;
                System.arraycopy(best, 0, prices, 0, prices.length);
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

    /** The bound of some prices; what the cheapest options take of each limit beyond it goes into an array. */
    private double bound(double[] prices, double[] over) {
        double bound = 0;
        for (int l = 0; l < over.length; l++) {
            over[l] = -tables.atMost[l];
            bound -= prices[l] * tables.atMost[l];
        }
        for (int i = 0; i < open.length; i++) {
            int option = cheapest(i, prices);
            bound += price(i, option, prices);
            int[] at = tables.limitsOf[i];
            for (int k = 0; k < at.length; k++) {
                over[at[k]] += tables.takes[i][k][option];
            }
        }
        return bound;
    }

    /** No choice costs less. */
    double bound(double[] prices) {
        double bound = 0;
        for (int l = 0; l < prices.length; l++) {
            bound -= prices[l] * (tables.atMost[l] + tables.allowance[l]);
        }
        for (int i = 0; i < open.length; i++) {
            bound += least(i, prices);
        }
        return bound;
    }

    /**
     * Strikes options that no choice up to a cost can contain (fixing by reduced costs: Dantzig, Fulkerson, Johnson 1954); true
     * when there were any.
     */
    boolean strike(Domains from, double[] prices, long upTo) {
        double bound = bound(prices);
        boolean struck = false;
        for (int i = 0; i < open.length; i++) {
            double least = least(i, prices);
            for (int option : open[i]) {
                if (bound + price(i, option, prices) - least - ROUNDING_UNITS > upTo) {
                    from.close(i, option);
                    struck = true;
                }
            }
        }
        return struck;
    }

    private double scale(int limit) {
        return StrictMath.max(1e-9, StrictMath.abs(tables.atMost[limit]));
    }

    /** The least that an item costs with prices on what it takes. */
    double least(int item, double[] prices) {
        return price(item, cheapest(item, prices), prices);
    }

    /** The option of an item that is cheapest with prices on what it takes. */
    int cheapest(int item, double[] prices) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int o : open[item]) {
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
        int[] at = tables.limitsOf[item];
        double[][] takes = tables.takes[item];
        for (int k = 0; k < at.length; k++) {
            sum += prices[at[k]] * takes[k][option];
        }
        return sum;
    }
}
