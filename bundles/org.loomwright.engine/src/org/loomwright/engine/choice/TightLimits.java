// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Term;

/** The limits that can still bind: not those that hold whatever is chosen, nor those that follow from another. */
final class TightLimits {
    private TightLimits() {
    }

    static List<Limit> of(ChoiceProblem problem, Domains domains) {
        Map<List<Integer>, List<Limit>> byItems = new LinkedHashMap<>();
        for (Limit limit : problem.limits()) {
            if (canBind(limit, domains)) {
                List<Integer> items = limit.terms().stream().map(Term::item).sorted().toList();
                List<Limit> alike = byItems.computeIfAbsent(items, k -> new ArrayList<>());
                if (alike.stream().noneMatch(other -> follows(limit, other, domains))) {
                    alike.removeIf(other -> follows(other, limit, domains));
                    alike.add(limit);
                }
            }
        }
        return byItems.values().stream().flatMap(List::stream).toList();
    }

    private static boolean canBind(Limit limit, Domains domains) {
        double most = 0;
        for (Term term : limit.terms()) {
            double largest = 0;
            for (int o : domains.of(term.item())) {
                largest = StrictMath.max(largest, term.values().get(o));
            }
            most += largest;
        }
        return most > limit.atMost();
    }

    /** True when a limit holds wherever the other does: relative to the figures, its values are nowhere above the other's. */
    private static boolean follows(Limit limit, Limit other, Domains domains) {
        if (!(limit.atMost() > 0 && other.atMost() > 0)) {
            return false;
        }
        for (Term term : limit.terms()) {
            Term beside = other.terms().stream().filter(t -> t.item() == term.item()).findFirst().orElseThrow();
            for (int o : domains.of(term.item())) {
                if (term.values().get(o) * other.atMost() > beside.values().get(o) * limit.atMost()) {
                    return false;
                }
            }
        }
        return true;
    }
}
