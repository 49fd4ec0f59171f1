// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.choice.ChoiceOutcome.Conflict;
import org.loomwright.engine.choice.ChoiceProblem.LeastCost;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Pairing;

/**
 * Why nothing meets all demands: limits and pairings that contradict each other, none of which can be spared (the deletion
 * filter of Chinneck, Feasibility and Infeasibility in Optimization, 2008, in halves instead of one by one).
 */
final class Conflicts {
    private final ChoiceProblem problem;
    private final ChoiceEffort effort;
    private final boolean shown;

    private Conflicts(ChoiceProblem problem, ChoiceEffort effort, boolean shown) {
        this.problem = problem;
        this.shown = shown;
        this.effort = effort;
    }

    static List<Conflict> of(ChoiceProblem problem, ChoiceEffort effort) {
        List<Conflict> empty = problem.items().stream().filter(item -> item.options().isEmpty())
                .map(item -> new Conflict(item.id(), Double.NaN, Double.NaN)).toList();
        if (!empty.isEmpty()) {
            return empty;
        }
        for (Limit limit : problem.limits()) {
            double least = limit.terms().stream().mapToDouble(ChoiceProblem.Term::least).sum();
            if (least > limit.atMost() + Domains.allowance(limit.atMost())) {
                return List.of(new Conflict(limit.id(), least, limit.atMost()));
            }
        }
        List<Object> demands = new ArrayList<>(problem.limits());
        demands.addAll(problem.pairings());
        // what striking options alone shows is found much faster than what only a search shows
        boolean shown = !Domains.all(Tables.of(problem)).narrow();
        List<Object> needed = new Conflicts(problem, effort, shown).smallest(List.of(), demands, false);
        return needed.stream().map(demand -> demand instanceof Limit limit
                ? new Conflict(limit.id(), limit.terms().stream().mapToDouble(ChoiceProblem.Term::least).sum(), limit.atMost())
                : new Conflict(((Pairing) demand).id(), Double.NaN, Double.NaN)).toList();
    }

    /** QuickXplain (Junker, AAAI 2004): a smallest part of the demands that contradicts itself beside what is kept. */
    private List<Object> smallest(List<Object> kept, List<Object> demands, boolean keptGrew) {
        if (keptGrew && !possible(kept)) {
            return List.of();
        }
        if (demands.size() <= 1) {
            return demands;
        }
        int half = demands.size() / 2;
        List<Object> first = demands.subList(0, half);
        List<Object> second = demands.subList(half, demands.size());
        List<Object> ofSecond = smallest(joined(kept, first), second, true);
        List<Object> ofFirst = smallest(joined(kept, ofSecond), first, !ofSecond.isEmpty());
        return joined(ofFirst, ofSecond);
    }

    private boolean possible(List<Object> demands) {
        ChoiceProblem part = new ChoiceProblem(problem.items(),
                demands.stream().filter(Limit.class::isInstance).map(Limit.class::cast).toList(),
                demands.stream().filter(Pairing.class::isInstance).map(Pairing.class::cast).toList(), new LeastCost());
        return shown ? Domains.all(Tables.of(part)).narrow() : ChoiceSolver.possible(part, effort);
    }

    private static List<Object> joined(List<Object> one, List<Object> other) {
        List<Object> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }
}
