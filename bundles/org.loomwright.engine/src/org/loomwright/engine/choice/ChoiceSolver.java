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
    private static final int FIXING_ROUNDS = 4;

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
        Domains domains = Domains.all(problem);
        if (!domains.narrow()) {
            return new Impossible(Conflicts.of(problem, effort));
        }
        Proof proof;
        if (problem.objective() instanceof FewestKinds kinds) {
            proof = new KindSearch(problem, kinds, effort).best(domains);
        } else if (problem.objective() instanceof FreePools pools) {
            proof = new PoolSearch(problem, pools, effort).best(domains);
        } else {
            proof = additive(problem, domains, Costs.of(problem), effort);
        }
        return proof == null ? new Impossible(Conflicts.of(problem, effort))
                : new Chosen(Arrays.stream(proof.options()).boxed().toList(), proof.cost(), proof.bound(), effort.nodes());
    }

    /** A choice, its cost, and what no choice undercuts. */
    record Proof(int[] options, double cost, double bound) {
    }

    /** The least sum of costs; null when there is no choice. Domains must be narrowed. */
    static Proof additive(ChoiceProblem problem, Domains domains, Costs costs, ChoiceEffort effort) {
        AdditiveSearch search = new AdditiveSearch(problem, domains, costs, effort);
        Domains left = domains.copy();
        for (int round = 0; round < FIXING_ROUNDS && search.strike(left) && left.narrow(); round++) {
            search = new AdditiveSearch(problem, left, costs, effort);
        }
        try {
            AdditiveSearch.Found found = search.best();
            return found == null ? null : new Proof(found.options(), costs.toCost(found.cost()), costs.toCost(found.cost()));
        } catch (ChoiceEffort.Spent spent) {
            return coarser(problem, domains, costs, search.floor(), spent);
        }
    }

    /** Some choice, from fewer and fewer options, when the effort for all of them is spent. */
    private static Proof coarser(ChoiceProblem problem, Domains domains, Costs costs, long floor, ChoiceEffort.Spent spent) {
        for (int step = 2; step <= 64; step *= 2) {
            Domains few = domains.copy();
            for (int i = 0; i < problem.items().size(); i++) {
                int[] open = few.of(i);
                for (int k = 0; k < open.length; k++) {
                    if ((open.length - 1 - k) % step != 0) {
                        few.close(i, open[k]);
                    }
                }
            }
            if (few.narrow()) {
                try {
                    AdditiveSearch.Found found = new AdditiveSearch(problem, few, costs,
                            new ChoiceEffort(COARSE_NODES, () -> false)).best();
                    if (found != null) {
                        return new Proof(found.options(), costs.toCost(found.cost()), costs.toCost(floor));
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
        Domains domains = Domains.all(problem);
        if (!domains.narrow()) {
            return false;
        }
        double[][] nothing = new double[problem.items().size()][];
        for (int i = 0; i < nothing.length; i++) {
            nothing[i] = new double[problem.items().get(i).options().size()];
        }
        return new AdditiveSearch(problem, domains, Costs.of(problem, nothing), effort).best() != null;
    }
}
