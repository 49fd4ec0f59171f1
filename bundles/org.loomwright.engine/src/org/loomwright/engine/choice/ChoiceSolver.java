// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.Arrays;
import org.loomwright.engine.choice.ChoiceOutcome.Chosen;
import org.loomwright.engine.choice.ChoiceOutcome.Impossible;
import org.loomwright.engine.choice.ChoiceProblem.FewestKinds;
import org.loomwright.engine.choice.ChoiceProblem.FreePools;

/**
 * Finds the choice of least cost and says how far it is proven. Equal costs are decided by the least sum of ties, then by the
 * smallest options, item by item in the order of their ids, so that the result does not depend on the order of the items.
 */
public final class ChoiceSolver {
    private static final long COARSE_NODES = 200_000;

    private ChoiceSolver() {
    }

    /**
     * Solves a problem.
     *
     * @param effort shared with other problems of the same task, if any
     * @throws java.util.concurrent.CancellationException when the effort is cancelled
     */
    public static ChoiceOutcome solve(ChoiceProblem problem, ChoiceEffort effort) {
        try {
            return solved(problem, effort);
        } catch (ChoiceEffort.Spent spent) {
            return new ChoiceOutcome.Unfinished(effort.nodes());
        }
    }

    private static ChoiceOutcome solved(ChoiceProblem problem, ChoiceEffort effort) {
        Tables tables = Tables.of(problem);
        Domains domains = Domains.all(tables);
        if (!domains.narrow()) {
            return new Impossible(Conflicts.of(problem, effort));
        }
        Proof proof;
        if (problem.objective() instanceof FewestKinds kinds) {
            proof = new KindSearch(problem, tables, kinds, effort).best(domains);
        } else if (problem.objective() instanceof FreePools pools) {
            proof = new PoolSearch(problem, tables, pools, effort).best(domains);
        } else {
            proof = additive(tables, domains, Costs.of(problem), effort, new double[tables.limits.length]);
        }
        return proof == null ? new Impossible(Conflicts.of(problem, effort))
                : new Chosen(Arrays.stream(proof.options()).boxed().toList(), proof.cost(), proof.bound(), effort.nodes());
    }

    /** A choice, its cost, and what no choice undercuts. */
    record Proof(int[] options, double cost, double bound) {
    }

    /**
     * The least sum of costs; null when there is no choice.
     *
     * @param domains options that are open, narrowed already; they stay as they are
     * @param prices  prices of the limits to begin with; they are bettered
     */
    static Proof additive(Tables tables, Domains domains, Costs costs, ChoiceEffort effort, double[] prices) {
        AdditiveSearch search = new AdditiveSearch(tables, domains, costs, effort, prices);
        try {
            AdditiveSearch.Found found = search.best();
            return found == null ? null : new Proof(found.options(), costs.toCost(found.cost()), costs.toCost(found.cost()));
        } catch (ChoiceEffort.Spent spent) {
            AdditiveSearch.Found found = search.atHand();
            if (found == null) {
                found = coarser(tables, domains, costs, spent);
            }
            return new Proof(found.options(), costs.toCost(found.cost()),
                    costs.toCost(StrictMath.min(search.floor(), found.cost())));
        }
    }

    /** Some choice, from fewer and fewer options, when the effort for all of them is spent. */
    private static AdditiveSearch.Found coarser(Tables tables, Domains domains, Costs costs, ChoiceEffort.Spent spent) {
        for (int step = 2; step <= 64; step *= 2) {
            Domains few = domains.copy();
            for (int i = 0; i < tables.items(); i++) {
                int[] open = few.of(i);
                for (int k = 0; k < open.length; k++) {
                    if ((open.length - 1 - k) % step != 0) {
                        few.close(i, open[k]);
                    }
                }
            }
            if (few.narrow()) {
                try {
                    AdditiveSearch.Found found = new AdditiveSearch(tables, few, costs,
                            new ChoiceEffort(COARSE_NODES, () -> false), new double[tables.limits.length]).best();
                    if (found != null) {
                        return found;
                    }
                } catch (ChoiceEffort.Spent again) {
                    continue;
                }
            }
        }
        throw spent;
    }

    /** Whether anything meets these limits and pairings. */
    static boolean possible(ChoiceProblem problem, ChoiceEffort effort) {
        Tables tables = Tables.of(problem);
        Domains domains = Domains.all(tables);
        return domains.narrow() && new AdditiveSearch(tables, domains, Costs.nothing(problem), effort,
                new double[tables.limits.length]).best() != null;
    }
}
