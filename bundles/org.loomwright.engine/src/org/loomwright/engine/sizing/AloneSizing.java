// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** Options of all items, or null when some cable has none that keeps within its parts. */
    int[] choice(int[] joint) {
        OpenItems open = design.open();
        Map<Integer, double[]> shares = shares();
        int[] choice = joint.clone();
        for (int i = 0; i < open.cables().size(); i++) {
            int best = -1;
            for (int o = 0; o < open.options(i); o++) {
                if (fits(i, o, joint, shares) && (best < 0 || objectives.copperKg(i, o) < objectives.copperKg(i, best))) {
                    best = o;
                }
            }
            if (best < 0) {
                return null;
            }
            choice[i] = best;
        }
        return choice;
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
    private Map<Integer, double[]> shares() {
        OpenItems open = design.open();
        Map<Integer, double[]> shares = new HashMap<>();
        for (ChoiceProblem.Limit limit : design.limits().values()) {
            List<ChoiceProblem.Term> terms = limit.terms().stream().filter(term -> open.isCable(term.item())).toList();
            double whole = terms.stream().mapToDouble(term -> lengthMm(term.item())).sum();
            for (ChoiceProblem.Term term : terms) {
                double[] of = shares.computeIfAbsent(term.item(), i -> new double[open.options(i)]);
                double allotted = limit.atMost() * lengthMm(term.item()) / whole;
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
