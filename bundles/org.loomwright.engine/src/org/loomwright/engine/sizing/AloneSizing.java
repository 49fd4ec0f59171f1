// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.choice.ChoiceProblem;

/**
 * Each cable sized on its own, as it is done by hand: what a load may lose is parted over the cables on its way by their lengths,
 * and each cable takes the cheapest section that keeps within its parts (common practice). Protectors as the joint choice has
 * them. Such a design keeps all limits, so the joint one never costs more.
 */
final class AloneSizing {
    private final Plan plan;
    private final Design design;
    private final Objectives objectives;

    AloneSizing(Plan plan, Design design, Objectives objectives) {
        this.plan = plan;
        this.design = design;
        this.objectives = objectives;
    }

    /**
     * Options of all items, or null when there is no such design. A cable that has no section for its parts takes the one that
     * loses least, and the others part what it leaves.
     */
    int[] choice(int[] joint) {
        OpenItems open = design.open();
        int[] choice = joint.clone();
        Set<Integer> fixed = new HashSet<>();
        while (true) {
            Map<Integer, double[]> shares = shares(choice, fixed);
            int before = fixed.size();
            for (int i = 0; i < open.cables().size(); i++) {
                if (!fixed.contains(i)) {
                    choice[i] = least(i, joint, shares);
                    if (choice[i] < 0) {
                        choice[i] = largest(i, joint);
                        fixed.add(i);
                    }
                }
            }
            if (fixed.size() == before) {
                return holds(choice) ? choice : null;
            }
        }
    }

    private int least(int item, int[] joint, Map<Integer, double[]> shares) {
        int best = -1;
        for (int o = 0; o < design.open().options(item); o++) {
            if (fits(item, o, joint, shares) && (best < 0 || objectives.copperKg(item, o) < objectives.copperKg(item, best))) {
                best = o;
            }
        }
        return best;
    }

    private int largest(int item, int[] joint) {
        for (int o = design.open().options(item) - 1; o > 0; o--) {
            if (fits(item, o, joint, Map.of())) {
                return o;
            }
        }
        return joint[item];
    }

    private boolean holds(int[] choice) {
        for (ChoiceProblem.Limit limit : design.limits().values()) {
            double sum = limit.terms().stream().mapToDouble(term -> term.values().get(choice[term.item()])).sum();
            if (sum > limit.atMost() + 1e-9 * StrictMath.abs(limit.atMost())) {
                return false;
            }
        }
        return true;
    }

    private boolean fits(int item, int option, int[] joint, Map<Integer, double[]> shares) {
        if (design.struck().why(item, option) != null || shares.containsKey(item) && shares.get(item)[option] > 1 + 1e-9) {
            return false;
        }
        for (ChoiceProblem.Pairing pairing : design.pairings().values()) {
            boolean a = pairing.itemA() == item;
            if ((a || pairing.itemB() == item)
                    && !pairing.allowed().get(a ? option : joint[pairing.itemA()]).get(a ? joint[pairing.itemB()] : option)) {
                return false;
            }
        }
        return true;
    }

    /** For each item and option the largest share that it takes of what any limit allots to it. */
    private Map<Integer, double[]> shares(int[] choice, Set<Integer> fixed) {
        OpenItems open = design.open();
        Map<Integer, double[]> shares = new HashMap<>();
        for (ChoiceProblem.Limit limit : design.limits().values()) {
            List<ChoiceProblem.Term> terms = limit.terms().stream()
                    .filter(term -> open.isCable(term.item()) && !fixed.contains(term.item())).toList();
            double left = limit.atMost() - limit.terms().stream().filter(term -> !terms.contains(term))
                    .mapToDouble(term -> term.values().get(choice[term.item()])).sum();
            double whole = terms.stream().mapToDouble(term -> lengthMm(term.item())).sum();
            for (ChoiceProblem.Term term : terms) {
                double[] of = shares.computeIfAbsent(term.item(), i -> new double[open.options(i)]);
                double allotted = left * lengthMm(term.item()) / whole;
                for (int o = 0; o < of.length; o++) {
                    double taken = term.values().get(o);
                    of[o] = StrictMath.max(of[o], taken <= 0 ? 0 : allotted > 0 ? taken / allotted : Double.POSITIVE_INFINITY);
                }
            }
        }
        return shares;
    }

    private double lengthMm(int item) {
        return design.open().cable(item).cables().stream().mapToDouble(w -> plan.cables().get(w).lengthMm()).sum();
    }
}
