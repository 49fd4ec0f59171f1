// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.choice.ChoiceProblem.FewestKinds;
import org.loomwright.engine.choice.ChoiceProblem.FreePools;
import org.loomwright.engine.choice.ChoiceProblem.Option;

/** Every choice there is, tried. */
final class Exhaustive {
    private final ChoiceProblem problem;
    private double[] best;

    Exhaustive(ChoiceProblem problem) {
        this.problem = problem;
    }

    /** Objective and secondary figure of the best choice, or null when there is none. */
    double[] best() {
        at(0, new int[problem.items().size()]);
        return best;
    }

    private void at(int item, int[] options) {
        if (item == options.length) {
            if (holds(problem, options)) {
                double[] cost = cost(problem, options);
                if (best == null || cost[0] < best[0] - 1e-9 || cost[0] < best[0] + 1e-9 && cost[1] < best[1]) {
                    best = cost;
                }
            }
            return;
        }
        for (int o = 0; o < problem.items().get(item).options().size(); o++) {
            options[item] = o;
            at(item + 1, options);
        }
    }

    static boolean holds(ChoiceProblem problem, int[] options) {
        for (ChoiceProblem.Limit limit : problem.limits()) {
            double sum = limit.terms().stream().mapToDouble(term -> term.values().get(options[term.item()])).sum();
            if (sum > limit.atMost() + 1e-9) {
                return false;
            }
        }
        return problem.pairings().stream()
                .allMatch(pairing -> pairing.allowed().get(options[pairing.itemA()]).get(options[pairing.itemB()]));
    }

    /** The objective; beside it the sum of costs for the fewest kinds, else the sum of ties. */
    static double[] cost(ChoiceProblem problem, int[] options) {
        double cost = 0;
        double tie = 0;
        Set<Integer> kinds = new HashSet<>();
        Map<Integer, Double> used = new HashMap<>();
        Map<Integer, Double> price = new HashMap<>();
        FreePools pools = problem.objective() instanceof FreePools free ? free : new FreePools(Map.of());
        for (int i = 0; i < options.length; i++) {
            Option option = problem.items().get(i).options().get(options[i]);
            tie += option.tie();
            if (pools.freeAmount().containsKey(option.kind())) {
                used.merge(option.kind(), option.amount(), Double::sum);
                price.put(option.kind(), option.cost() / option.amount());
            } else {
                cost += option.cost();
            }
            if (option.kind() >= 0) {
                kinds.add(option.kind());
            }
        }
        for (Map.Entry<Integer, Double> each : used.entrySet()) {
            cost += price.get(each.getKey()) * Math.max(0, each.getValue() - pools.freeAmount().get(each.getKey()));
        }
        if (problem.objective() instanceof FewestKinds fewest) {
            kinds.removeAll(fewest.thereAnyway());
            return new double[] {kinds.size(), cost};
        }
        return new double[] {cost, tie};
    }
}
