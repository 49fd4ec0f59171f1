// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

/**
 * Some choice to begin with: from the options that are cheapest at the prices of the limits, steps that take away what is
 * exceeded at the least cost for what they take away; then steps to cheaper options as long as everything holds, of one item or
 * of two together. It is no more than a figure to undercut; the better, the less has to be looked at.
 */
final class FirstChoice {
    /** Exchanges of two items looked for, at most; each is a gain, so there are few in practice. */
    private static final int EXCHANGES = 200;

    private final Tables tables;
    private final Costs costs;
    private final int[][] open;
    private final int[] choice;
    /** What is left of each limit, rounding allowed for. */
    private final double[] room;

    FirstChoice(Tables tables, Domains domains, Costs costs) {
        this.tables = tables;
        this.costs = costs;
        open = new int[tables.items()][];
        for (int i = 0; i < open.length; i++) {
            open[i] = domains.of(i);
        }
        choice = new int[open.length];
        room = new double[tables.atMost.length];
    }

    /** From the options that are cheapest at some prices; null when no choice is found. */
    int[] at(DualPrices dual, double[] prices) {
        for (int i = 0; i < choice.length; i++) {
            choice[i] = dual.cheapest(i, prices);
        }
        return bettered();
    }

    /** From the options that take least; null when no choice is found. */
    int[] fromLeast() {
        for (int i = 0; i < choice.length; i++) {
            choice[i] = leastTaking(i);
        }
        return bettered();
    }

    private int[] bettered() {
        for (int l = 0; l < room.length; l++) {
            room[l] = tables.atMost[l] + tables.allowance[l];
        }
        for (int i = 0; i < choice.length; i++) {
            for (int k = 0; k < tables.limitsOf[i].length; k++) {
                room[tables.limitsOf[i][k]] -= tables.takes[i][k][choice[i]];
            }
        }
        if (!repaired()) {
            return null;
        }
        int exchanges = 0;
        do {
            while (step()) {
                continue;
            }
        } while (exchanges++ < EXCHANGES && exchange());
        return choice.clone();
    }

    private int leastTaking(int item) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int o : open[item]) {
            double sum = 0;
            for (int k = 0; k < tables.limitsOf[item].length; k++) {
                sum += tables.takes[item][k][o] / scale(tables.limitsOf[item][k]);
            }
            if (sum < least) {
                least = sum;
                best = o;
            }
        }
        return best;
    }

    private double scale(int limit) {
        return StrictMath.max(1e-9, StrictMath.abs(tables.atMost[limit]));
    }

    /** Steps until nothing is exceeded; false when none takes anything away any more. */
    private boolean repaired() {
        for (int steps = 0; steps < 20 * choice.length + 20; steps++) {
            int bestItem = -1;
            int bestOption = -1;
            double bestWorth = 0;
            boolean holds = true;
            for (int i = 0; i < choice.length; i++) {
                double now = wrong(i, choice[i]);
                if (now <= 0) {
                    continue;
                }
                holds = false;
                for (int o : open[i]) {
                    double less = now - wrong(i, o);
                    if (less > 1e-12) {
                        double worth = less / (1 + StrictMath.max(0, costs.cost(i, o) - costs.cost(i, choice[i])));
                        if (worth > bestWorth) {
                            bestWorth = worth;
                            bestItem = i;
                            bestOption = o;
                        }
                    }
                }
            }
            if (holds) {
                return true;
            }
            if (bestItem < 0) {
                return false;
            }
            move(bestItem, bestOption);
        }
        return false;
    }

    /** By how much the limits of an item would be exceeded with an option, and the pairings that would not hold. */
    private double wrong(int item, int option) {
        double sum = 0;
        int[] limits = tables.limitsOf[item];
        for (int k = 0; k < limits.length; k++) {
            double left = room[limits[k]] - tables.takes[item][k][option] + tables.takes[item][k][choice[item]];
            sum += left < 0 ? -left / scale(limits[k]) : 0;
        }
        for (int p : tables.pairsOf[item]) {
            sum += tables.pairs[p].allows(item, option, choice[tables.pairs[p].other(item)]) ? 0 : 1;
        }
        return sum;
    }

    private void move(int item, int option) {
        int[] limits = tables.limitsOf[item];
        for (int k = 0; k < limits.length; k++) {
            room[limits[k]] += tables.takes[item][k][choice[item]] - tables.takes[item][k][option];
        }
        choice[item] = option;
    }

    /** The largest saving for what it takes; false when there is none. */
    private boolean step() {
        int bestItem = -1;
        int bestOption = -1;
        double bestWorth = 0;
        for (int i = 0; i < choice.length; i++) {
            for (int o : open[i]) {
                long saved = costs.cost(i, choice[i]) - costs.cost(i, o);
                if (saved > 0 && paired(i, o, -1)) {
                    double worth = saved / (taken(i, o) + 1e-6);
                    if (worth > bestWorth) {
                        bestWorth = worth;
                        bestItem = i;
                        bestOption = o;
                    }
                }
            }
        }
        if (bestItem >= 0) {
            move(bestItem, bestOption);
        }
        return bestItem >= 0;
    }

    /** Largest share of what is left of any limit; infinite when it does not fit. */
    private double taken(int item, int option) {
        double most = 0;
        int[] limits = tables.limitsOf[item];
        for (int k = 0; k < limits.length; k++) {
            double more = tables.takes[item][k][option] - tables.takes[item][k][choice[item]];
            if (more > room[limits[k]]) {
                return Double.POSITIVE_INFINITY;
            }
            most = StrictMath.max(most, more > 0 ? more / room[limits[k]] : 0);
        }
        return most;
    }

    /** A cheaper option of one item, made possible by another item that takes less; true when one was found. */
    private boolean exchange() {
        for (int i = 0; i < choice.length; i++) {
            int from = choice[i];
            for (int o : open[i]) {
                long saved = costs.cost(i, from) - costs.cost(i, o);
                if (saved <= 0) {
                    continue;
                }
                move(i, o);
                if (balanced(i, saved)) {
                    return true;
                }
                move(i, from);
            }
        }
        return false;
    }

    /** Moves one other item so that everything holds, for less than what was saved. */
    private boolean balanced(int item, long saved) {
        int[] limits = tables.limitsOf[item];
        int worst = -1;
        for (int limit : limits) {
            worst = room[limit] < 0 && (worst < 0 || room[limit] / scale(limit) < room[worst] / scale(worst)) ? limit : worst;
        }
        if (worst < 0) {
            return false;
        }
        for (int j : tables.itemsOf[worst]) {
            for (int o : open[j]) {
                if (j != item && costs.cost(j, o) - costs.cost(j, choice[j]) < saved && holds(j, o, limits)
                        && paired(j, o, -1) && paired(item, choice[item], j)) {
                    move(j, o);
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether with an option of an item these limits and its own hold. */
    private boolean holds(int item, int option, int[] others) {
        int[] limits = tables.limitsOf[item];
        double[] more = new double[limits.length];
        for (int k = 0; k < limits.length; k++) {
            more[k] = tables.takes[item][k][option] - tables.takes[item][k][choice[item]];
            if (more[k] > room[limits[k]]) {
                return false;
            }
        }
        for (int limit : others) {
            if (room[limit] < 0) {
                boolean eased = false;
                for (int k = 0; k < limits.length && !eased; k++) {
                    eased = limits[k] == limit;
                }
                if (!eased) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether an option goes with what the others have; one of them may be left out. */
    private boolean paired(int item, int option, int apartFrom) {
        for (int p : tables.pairsOf[item]) {
            int other = tables.pairs[p].other(item);
            if (other != apartFrom && !tables.pairs[p].allows(item, option, choice[other])) {
                return false;
            }
        }
        return true;
    }
}
