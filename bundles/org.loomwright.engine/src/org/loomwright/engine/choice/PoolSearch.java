// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.loomwright.engine.choice.ChoiceProblem.FreePools;
import org.loomwright.engine.choice.ChoiceProblem.Option;

/**
 * Least cost where pools of a kind are free until they are used up. The cost p max(0, u - f) of using u of a pool of f is the
 * largest of q (u - f) over prices q from 0 to p; with prices fixed the costs are a plain sum again and bound the true cost from
 * below (Lagrangian relaxation: Geoffrion, Mathematical Programming Study 2, 1974). Prices are bettered by subgradient steps;
 * what gap they leave is closed by branch and bound over single options.
 */
final class PoolSearch {
    private static final int STEPS = 40;
    private static final int MOST_BRANCHES = 400;
    /** Partial choices after which no further branch is begun; the gap is told then. */
    private static final long MOST_NODES = 100_000;

    private final ChoiceProblem problem;
    private final Tables tables;
    private final ChoiceEffort effort;
    private final Map<Integer, Double> free;
    private final Map<Integer, Double> priceOf = new TreeMap<>();
    private ChoiceSolver.Proof best;

    PoolSearch(ChoiceProblem problem, Tables tables, FreePools objective, ChoiceEffort effort) {
        this.problem = problem;
        this.tables = tables;
        this.effort = effort;
        free = new TreeMap<>(objective.freeAmount());
        for (ChoiceProblem.Item item : problem.items()) {
            for (Option option : item.options()) {
                if (free.containsKey(option.kind()) && option.amount() > 0) {
                    priceOf.merge(option.kind(), option.cost() / option.amount(), StrictMath::max);
                }
            }
        }
        free.keySet().retainAll(priceOf.keySet());
    }

    /** Part of the search that is left: options struck, prices to start from, its bound. */
    private record Branch(Domains domains, Map<Integer, Double> prices, double bound, int number) {
    }

    ChoiceSolver.Proof best(Domains narrowed) {
        Map<Integer, Double> start = new TreeMap<>();
        free.keySet().forEach(kind -> start.put(kind, priceOf.get(kind) / 2));
        PriorityQueue<Branch> open = new PriorityQueue<>(
                Comparator.comparingDouble(Branch::bound).thenComparingInt(Branch::number));
        open.add(new Branch(narrowed, start, 0, 0));
        int number = 0;
        long begun = effort.nodes();
        double bound = Double.POSITIVE_INFINITY;
        while (!open.isEmpty()) {
            Branch branch = open.remove();
            if (best != null && branch.bound() >= best.cost() - slack()) {
                break;
            }
            if (number > MOST_BRANCHES || effort.nodes() - begun > MOST_NODES || effort.spent()) {
                bound = branch.bound();
                break;
            }
            Relaxed relaxed;
            try {
                relaxed = relax(branch);
            } catch (ChoiceEffort.Spent spent) {
                if (best == null) {
                    throw spent;
                }
                bound = branch.bound();
                break;
            }
            if (relaxed == null || best != null && relaxed.bound >= best.cost() - slack()) {
                continue;
            }
            int item = mostUncertain(relaxed, branch.domains());
            if (item < 0) {
                // the prices leave a gap although all options are decided: the choice itself is exact
                continue;
            }
            int option = relaxed.options[item];
            Domains with = branch.domains().copy();
            for (int o : with.of(item)) {
                if (o != option) {
                    with.close(item, o);
                }
            }
            Domains without = branch.domains().copy();
            without.close(item, option);
            for (Domains part : List.of(with, without)) {
                if (part.narrow()) {
                    open.add(new Branch(part, relaxed.prices, relaxed.bound, ++number));
                }
            }
        }
        return best == null ? null : new ChoiceSolver.Proof(best.options(), best.cost(),
                bound >= best.cost() - slack() ? best.cost() : bound);
    }

    /** A millionth counts as proven: prices are found by steps, not exactly. */
    private double slack() {
        return 1e-6 * best.cost();
    }

    /** The best bound found for a branch, the choice it was found with, and its prices. */
    private record Relaxed(double bound, int[] options, Map<Integer, Double> prices) {
    }

    private Relaxed relax(Branch branch) {
        Map<Integer, Double> prices = new TreeMap<>(branch.prices());
        Relaxed found = null;
        double reach = 1;
        long begun = effort.nodes();
        for (int step = 0; step < STEPS && (found == null || effort.nodes() - begun < MOST_NODES); step++) {
            Costs costs = costs(prices);
            ChoiceSolver.Proof proof = ChoiceSolver.additive(tables, branch.domains(), costs, effort, new double[tables.limits.length]);
            if (proof == null) {
                return null;
            }
            double bound = proof.bound();
            for (Map.Entry<Integer, Double> price : prices.entrySet()) {
                bound -= price.getValue() * free.get(price.getKey());
            }
            double cost = cost(proof.options());
            if (best == null || cost < best.cost() || cost == best.cost() && tie(proof.options()) < tie(best.options())) {
                best = new ChoiceSolver.Proof(proof.options(), cost, 0);
            }
            if (found == null || bound > found.bound) {
                found = new Relaxed(bound, proof.options(), Map.copyOf(prices));
            } else {
                reach /= 2;
            }
            if (bound >= best.cost() - slack() || !move(prices, proof.options(), best.cost() - bound, reach)) {
                break;
            }
        }
        return found;
    }

    private Costs costs(Map<Integer, Double> prices) {
        double[][] costs = new double[problem.items().size()][];
        for (int i = 0; i < costs.length; i++) {
            List<Option> options = problem.items().get(i).options();
            costs[i] = new double[options.size()];
            for (int o = 0; o < costs[i].length; o++) {
                Double price = prices.get(options.get(o).kind());
                costs[i][o] = price == null ? options.get(o).cost() : price * options.get(o).amount();
            }
        }
        return Costs.of(problem, costs);
    }

    /** A step along the subgradient, prices kept between 0 and the true ones (Polyak's step length); false when none moves. */
    private boolean move(Map<Integer, Double> prices, int[] options, double gap, double reach) {
        Map<Integer, Double> used = used(options);
        double norm = 0;
        Map<Integer, Double> direction = new TreeMap<>();
        for (Map.Entry<Integer, Double> price : prices.entrySet()) {
            double over = used.getOrDefault(price.getKey(), 0.0) - free.get(price.getKey());
            boolean stuck = over < 0 && price.getValue() <= 0 || over > 0 && price.getValue() >= priceOf.get(price.getKey());
            direction.put(price.getKey(), stuck ? 0 : over);
            norm += stuck ? 0 : over * over;
        }
        if (norm == 0) {
            return false;
        }
        for (Map.Entry<Integer, Double> price : prices.entrySet()) {
            double moved = price.getValue() + reach * gap / norm * direction.get(price.getKey());
            price.setValue(StrictMath.max(0, StrictMath.min(priceOf.get(price.getKey()), moved)));
        }
        return reach > 1e-6;
    }

    private Map<Integer, Double> used(int[] options) {
        Map<Integer, Double> used = new TreeMap<>();
        for (int i = 0; i < options.length; i++) {
            Option option = problem.items().get(i).options().get(options[i]);
            if (free.containsKey(option.kind())) {
                used.merge(option.kind(), option.amount(), Double::sum);
            }
        }
        return used;
    }

    private double cost(int[] options) {
        double sum = 0;
        for (int i = 0; i < options.length; i++) {
            Option option = problem.items().get(i).options().get(options[i]);
            sum += free.containsKey(option.kind()) ? 0 : option.cost();
        }
        for (Map.Entry<Integer, Double> used : used(options).entrySet()) {
            sum += priceOf.get(used.getKey()) * StrictMath.max(0, used.getValue() - free.get(used.getKey()));
        }
        return sum;
    }

    private double tie(int[] options) {
        double sum = 0;
        for (int i = 0; i < options.length; i++) {
            sum += problem.items().get(i).options().get(options[i]).tie();
        }
        return sum;
    }

    /** The open item with the largest amount of a kind whose pool is near its end; -1 when nothing is open. */
    private int mostUncertain(Relaxed relaxed, Domains domains) {
        Map<Integer, Double> used = used(relaxed.options);
        int found = -1;
        double most = -1;
        List<Integer> undecided = new ArrayList<>();
        for (int i = 0; i < tables.items(); i++) {
            if (domains.count(i) > 1) {
                undecided.add(i);
            }
        }
        undecided.sort(Comparator.comparing(i -> problem.items().get(i).id()));
        for (int i : undecided) {
            Option option = problem.items().get(i).options().get(relaxed.options[i]);
            boolean pooled = free.containsKey(option.kind());
            double price = pooled ? relaxed.prices.get(option.kind()) : 0;
            double doubt = pooled ? StrictMath.min(price, priceOf.get(option.kind()) - price)
                    * StrictMath.abs(used.get(option.kind()) - free.get(option.kind())) + 1e-9 * option.amount() : 0;
            if (doubt > most) {
                most = doubt;
                found = i;
            }
        }
        return found;
    }
}
