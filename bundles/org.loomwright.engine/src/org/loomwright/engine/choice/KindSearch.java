// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.loomwright.engine.choice.ChoiceProblem.FewestKinds;

/**
 * The fewest different kinds, then the least cost: sets of kinds are tried by size. A set is looked into only if every item has
 * an option in it and it could still undercut the best choice of its size.
 */
final class KindSearch {
    private final ChoiceProblem problem;
    private final Tables tables;
    private final FewestKinds objective;
    private final ChoiceEffort effort;
    private final Costs costs;
    private Domains domains;
    private List<Integer> kinds;
    private ChoiceSolver.Proof best;
    private boolean spent;

    KindSearch(ChoiceProblem problem, Tables tables, FewestKinds objective, ChoiceEffort effort) {
        this.problem = problem;
        this.tables = tables;
        this.objective = objective;
        this.effort = effort;
        costs = Costs.of(problem);
    }

    /** A proof in numbers of kinds; null when there is no choice. */
    ChoiceSolver.Proof best(Domains narrowed) {
        domains = narrowed;
        TreeSet<Integer> found = new TreeSet<>();
        for (int i = 0; i < problem.items().size(); i++) {
            for (int o : domains.of(i)) {
                found.add(problem.items().get(i).options().get(o).kind());
            }
        }
        found.remove(-1);
        found.removeAll(objective.thereAnyway());
        kinds = List.copyOf(found);
        for (int size = 0; size <= kinds.size(); size++) {
            choose(0, size, new ArrayList<>());
            if (best != null) {
                return new ChoiceSolver.Proof(best.options(), size, spent ? StrictMath.min(1, size) : size);
            }
        }
        if (spent) {
            // nothing was found, but not every set was looked into to the end: that is no proof
            throw new ChoiceEffort.Spent();
        }
        return null;
    }

    private void choose(int from, int more, List<Integer> chosen) {
        if (more == 0) {
            look(chosen);
            return;
        }
        for (int k = from; k <= kinds.size() - more; k++) {
            chosen.add(kinds.get(k));
            choose(k + 1, more - 1, chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void look(List<Integer> chosen) {
        Domains some = domains.copy();
        for (int i = 0; i < problem.items().size(); i++) {
            for (int o : some.of(i)) {
                int kind = problem.items().get(i).options().get(o).kind();
                if (kind >= 0 && !chosen.contains(kind) && !objective.thereAnyway().contains(kind)) {
                    some.close(i, o);
                }
            }
        }
        if (!some.narrow()) {
            return;
        }
        ChoiceSolver.Proof proof;
        try {
            proof = ChoiceSolver.additive(tables, some, costs, effort, new double[tables.limits.length]);
        } catch (ChoiceEffort.Spent unknown) {
            spent = true;
            return;
        }
        if (proof != null) {
            spent |= proof.cost() > proof.bound();
            if (best == null || proof.cost() < best.cost() || proof.cost() == best.cost() && tie(proof) < tie(best)) {
                best = proof;
            }
        }
    }

    private long tie(ChoiceSolver.Proof proof) {
        long sum = 0;
        for (int i = 0; i < proof.options().length; i++) {
            sum += costs.tie(i, proof.options()[i]);
        }
        return sum;
    }
}
