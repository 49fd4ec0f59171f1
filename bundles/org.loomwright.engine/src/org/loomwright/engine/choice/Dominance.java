// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

/**
 * Options beside which another of the same item is never worse: it costs no more, takes no more of any limit, and goes with
 * whatever they go with. Of options that are equal in cost and tie the first stands, as among equal choices.
 */
final class Dominance {
    private final Tables tables;
    private final Domains domains;
    private final Costs costs;

    private Dominance(Tables tables, Domains domains, Costs costs) {
        this.tables = tables;
        this.domains = domains;
        this.costs = costs;
    }

    /** Strikes them; true when there were any. */
    static boolean strike(Tables tables, Domains domains, Costs costs) {
        Dominance dominance = new Dominance(tables, domains, costs);
        boolean struck = false;
        for (int i = 0; i < tables.items(); i++) {
            for (int o : domains.of(i)) {
                if (dominance.dominated(i, o)) {
                    domains.close(i, o);
                    struck = true;
                }
            }
        }
        return struck;
    }

    private boolean dominated(int item, int option) {
        for (int other : domains.of(item)) {
            if (other != option && cheaper(item, other, option) && takesNoMore(item, other, option)
                    && goesWith(item, other, option)) {
                return true;
            }
        }
        return false;
    }

    private boolean cheaper(int item, int other, int option) {
        long cost = costs.cost(item, other) - costs.cost(item, option);
        long tie = costs.tie(item, other) - costs.tie(item, option);
        return cost < 0 || cost == 0 && (tie < 0 || tie == 0 && other < option);
    }

    private boolean takesNoMore(int item, int other, int option) {
        for (double[] takes : tables.takes[item]) {
            if (takes[other] > takes[option]) {
                return false;
            }
        }
        return true;
    }

    private boolean goesWith(int item, int other, int option) {
        for (int p : tables.pairsOf[item]) {
            Tables.Pair pair = tables.pairs[p];
            int partner = pair.other(item);
            for (int q = 0; q < tables.options[partner]; q++) {
                if (domains.isOpen(partner, q) && pair.allows(item, option, q) && !pair.allows(item, other, q)) {
                    return false;
                }
            }
        }
        return true;
    }
}
