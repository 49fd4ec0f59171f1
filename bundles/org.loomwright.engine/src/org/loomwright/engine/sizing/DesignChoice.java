// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.choice.ChoiceEffort;
import org.loomwright.engine.choice.ChoiceOutcome;
import org.loomwright.engine.choice.ChoiceProblem;
import org.loomwright.engine.choice.ChoiceSolver;

/**
 * Solves a design. Where demands contradict each other or no option meets one, the demand is loosened to what is possible and
 * taken note of, so that the rest still gets its best sizes and the check can say how far it is off.
 */
final class DesignChoice {
    private static final long NODES = 4_000_000;

    private final Design design;
    private final Objectives objectives;
    private final Monitor monitor;
    private final Set<String> given;
    private final Struck struck = new Struck();

    /**
     * A design to be solved.
     *
     * @param given demands that were loosened before, and are now; their ids are added to it
     */
    DesignChoice(Design design, Objectives objectives, Set<String> given, Monitor monitor) {
        this.design = design;
        this.objectives = objectives;
        this.given = given;
        this.monitor = monitor;
        struck.addAll(design.struck());
    }

    /**
     * The choice.
     *
     * @param options option of each item
     * @param cost    cost, and the bound that no choice undercuts
     */
    record Solved(int[] options, double cost, double bound) {
    }

    /** The best choice, with what cannot be met loosened. */
    Solved best() {
        List<ChoiceProblem.Item> items = new ArrayList<>();
        for (int i = 0; i < design.open().size(); i++) {
            items.add(objectives.item(i, struck));
        }
        Map<String, ChoiceProblem.Limit> limits = new LinkedHashMap<>(design.limits());
        Map<String, ChoiceProblem.Pairing> pairings = new LinkedHashMap<>(design.pairings());
        limits.keySet().removeIf(id -> given.contains(id) && !id.startsWith("drop ") && !id.startsWith("voltage "));
        pairings.keySet().removeAll(given);
        limits.replaceAll((id, limit) -> possible(limit));
        for (int attempt = 0;; attempt++) {
            ChoiceOutcome outcome = ChoiceSolver.solve(new ChoiceProblem(items, all(limits, items), List.copyOf(pairings.values()),
                    objectives.objective()), new ChoiceEffort(NODES, this::cancelled));
            if (outcome instanceof ChoiceOutcome.Chosen chosen) {
                return new Solved(chosen.options().stream().mapToInt(Integer::intValue).toArray(), chosen.cost(), chosen.bound());
            }
            if (!(outcome instanceof ChoiceOutcome.Impossible impossible) || attempt > 4 * items.size() + 200) {
                throw new IllegalStateException("no choice of sections was found within the effort permitted");
            }
            loosen(impossible.conflicts(), limits, pairings);
        }
    }

    /** The limit, loosened to the least it can be where it is below that whatever the others take. */
    private ChoiceProblem.Limit possible(ChoiceProblem.Limit limit) {
        double least = 0;
        for (ChoiceProblem.Term term : limit.terms()) {
            double smallest = Double.POSITIVE_INFINITY;
            for (int o = 0; o < term.values().size(); o++) {
                boolean out = struck.why(term.item(), o) != null;
                smallest = out ? smallest : StrictMath.min(smallest, term.values().get(o));
            }
            least += Double.isInfinite(smallest) ? term.values().get(nearest(term.item())) : smallest;
        }
        if (least <= limit.atMost()) {
            return limit;
        }
        given.add(limit.id());
        return new ChoiceProblem.Limit(limit.id(), least, limit.terms());
    }

    /**
     * Where no option meets everything: of a cable the largest that its terminals take, of a protector the smallest that its loads
     * do not open.
     */
    private int nearest(int item) {
        int count = design.open().options(item);
        boolean cable = design.open().isCable(item);
        for (int k = 0; k < count; k++) {
            int option = cable ? count - 1 - k : k;
            Constraint why = struck.why(item, option);
            String rule = why == null ? "" : why.rule();
            boolean never = cable ? "terminal-fit".equals(rule) || "incomplete".equals(rule) || "no price".equals(rule)
                    : "device-loading".equals(rule) || "inrush-margin".equals(rule);
            if (!never) {
                return option;
            }
        }
        return count - 1;
    }

    private boolean cancelled() {
        if (monitor.isCanceled()) {
            throw new CancellationException("cancelled while sizing");
        }
        return false;
    }

    /** The limits, and the options struck as limits of single items. */
    private List<ChoiceProblem.Limit> all(Map<String, ChoiceProblem.Limit> limits, List<ChoiceProblem.Item> items) {
        List<ChoiceProblem.Limit> all = new ArrayList<>(limits.values());
        for (int i = 0; i < items.size(); i++) {
            List<Double> values = new ArrayList<>();
            boolean any = false;
            boolean none = true;
            for (int o = 0; o < items.get(i).options().size(); o++) {
                boolean out = struck.why(i, o) != null;
                any |= out;
                none &= out;
                values.add(out ? 1.0 : 0.0);
            }
            if (none) {
                given.add("option " + items.get(i).id());
                values.set(nearest(i), 0.0);
            }
            if (any) {
                all.add(new ChoiceProblem.Limit("options of " + items.get(i).id(), 0.5, List.of(new ChoiceProblem.Term(i, values))));
            }
        }
        return all;
    }

    /** Loosens one of the demands that contradict each other: a sum to the least it can be, else what can be spared best. */
    private void loosen(List<ChoiceOutcome.Conflict> conflicts, Map<String, ChoiceProblem.Limit> limits,
            Map<String, ChoiceProblem.Pairing> pairings) {
        for (ChoiceOutcome.Conflict conflict : conflicts) {
            ChoiceProblem.Limit limit = limits.get(conflict.id());
            if (limit != null && conflict.least() > conflict.atMost()) {
                given.add(conflict.id());
                limits.put(conflict.id(), new ChoiceProblem.Limit(conflict.id(), conflict.least(), limit.terms()));
                return;
            }
        }
        ChoiceOutcome.Conflict spared = null;
        for (ChoiceOutcome.Conflict conflict : conflicts) {
            if (!conflict.id().startsWith("options of ") && (spared == null || rank(conflict.id()) < rank(spared.id()))) {
                spared = conflict;
            }
        }
        if (spared != null) {
            given.add(spared.id());
            limits.remove(spared.id());
            pairings.remove(spared.id());
            return;
        }
        String item = conflicts.get(0).id().substring("options of ".length());
        throw new IllegalStateException("the options of " + item + " contradict themselves");
    }

    /** Wishes go before voltages, voltages before what protects conductors. */
    private static int rank(String id) {
        return id.startsWith("selectivity") ? 0 : id.startsWith("voltage ") || id.startsWith("drop ") ? 2
                : id.contains(" seen ") ? 1 : 3;
    }
}
