// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A joint choice: one option for every item, so that all limits and pairings hold, at least cost. In the literature a
 * multiple-choice knapsack problem with many constraints (Kellerer, Pferschy, Pisinger, Knapsack Problems, 2004, chapter 11).
 *
 * @param items     what is chosen; ids differ
 * @param limits    sums that must not be exceeded
 * @param pairings  which options of two items go together
 * @param objective what counts as cost
 */
public record ChoiceProblem(List<Item> items, List<Limit> limits, List<Pairing> pairings, Objective objective) {
    public ChoiceProblem {
        items = List.copyOf(items);
        limits = List.copyOf(limits);
        pairings = List.copyOf(pairings);
        Set<String> ids = new HashSet<>();
        for (Item item : items) {
            if (!ids.add(item.id())) {
                throw new IllegalArgumentException("two items are called " + item.id());
            }
        }
        for (Limit limit : limits) {
            for (Term term : limit.terms()) {
                if (term.values().size() != items.get(term.item()).options().size()) {
                    throw new IllegalArgumentException(limit.id() + ": " + term.values().size() + " values for "
                            + items.get(term.item()).options().size() + " options of " + items.get(term.item()).id());
                }
            }
        }
    }

    /** The same choice with another objective. */
    public ChoiceProblem with(Objective other) {
        return new ChoiceProblem(items, limits, pairings, other);
    }

    /** Something that takes one of its options; an item without options makes the problem impossible. */
    public record Item(String id, List<Option> options) {
        public Item {
            options = List.copyOf(options);
        }
    }

    /**
     * One option.
     *
     * @param label  for people
     * @param cost   cost, 0 or above
     * @param tie    decides between choices of equal cost, 0 or above
     * @param kind   what it is an instance of, for counting different kinds and for pools; -1 for none
     * @param amount amount of its kind that it takes, 0 or above
     */
    public record Option(String label, double cost, double tie, int kind, double amount) {
        public Option {
            if (!(cost >= 0 && tie >= 0 && amount >= 0) || Double.isInfinite(cost) || Double.isInfinite(tie)) {
                throw new IllegalArgumentException(label + ": cost " + cost + ", tie " + tie + ", amount " + amount
                        + "; expected 0 or above");
            }
        }
    }

    /**
     * The sum of the values of the options chosen stays at or below a figure.
     *
     * @param id     for people; ids of limits differ from each other
     * @param atMost the figure
     * @param terms  one for each item that takes part, no item twice
     */
    public record Limit(String id, double atMost, List<Term> terms) {
        public Limit {
            terms = List.copyOf(terms);
        }
    }

    /** What an item adds to a limit: a value for each of its options. */
    public record Term(int item, List<Double> values) {
        public Term {
            values = List.copyOf(values);
        }

        double least() {
            return values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        }
    }

    /** Which options of two items go together: {@code allowed.get(a).get(b)}. */
    public record Pairing(String id, int itemA, int itemB, List<List<Boolean>> allowed) {
        public Pairing {
            allowed = allowed.stream().map(List::copyOf).toList();
        }
    }

    /** What counts as cost. */
    public sealed interface Objective {
    }

    /** The sum of the options' costs. */
    public record LeastCost() implements Objective {
    }

    /** The number of different kinds, those that are there anyway not counted; then the sum of costs. */
    public record FewestKinds(Set<Integer> thereAnyway) implements Objective {
        public FewestKinds {
            thereAnyway = Set.copyOf(thereAnyway);
        }
    }

    /**
     * The sum of costs, where the first so many of a kind's amount are free and the rest costs in proportion. All options of a
     * kind must cost the same for each unit of amount.
     */
    public record FreePools(Map<Integer, Double> freeAmount) implements Objective {
        public FreePools {
            freeAmount = Map.copyOf(freeAmount);
        }
    }
}
