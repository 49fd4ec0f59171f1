// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import org.loomwright.engine.choice.ChoiceProblem;
import org.loomwright.engine.result.Figures;

/** Why an item did not get a smaller section or rating. */
final class Reasons {
    private final OpenItems open;
    private final Design design;

    Reasons(OpenItems open, Design design) {
        this.open = open;
        this.design = design;
    }

    /** What speaks against the next smaller section or rating; null where nothing does. */
    Constraint limiting(int item, int[] choice) {
        int smaller = choice[item] - 1;
        if (smaller < 0) {
            return null;
        }
        Constraint why = design.struck().why(item, smaller);
        if (why != null) {
            return why;
        }
        for (ChoiceProblem.Pairing pairing : design.pairings().values()) {
            boolean a = pairing.itemA() == item;
            if ((a || pairing.itemB() == item) && !pairing.allowed().get(a ? smaller : choice[pairing.itemA()])
                    .get(a ? choice[pairing.itemB()] : smaller)) {
                return design.meaning(pairing.id());
            }
        }
        Constraint found = null;
        double most = 0;
        for (ChoiceProblem.Limit limit : design.limits().values()) {
            double sum = 0;
            boolean mine = false;
            for (ChoiceProblem.Term term : limit.terms()) {
                mine |= term.item() == item;
                sum += term.values().get(term.item() == item ? smaller : choice[term.item()]);
            }
            double over = (sum - limit.atMost()) / StrictMath.max(1e-9, StrictMath.abs(limit.atMost()));
            if (mine && over > most) {
                most = over;
                found = design.meaning(limit.id());
            }
        }
        return found;
    }

    /** The same in words. */
    String why(int item, int[] choice, Constraint limiting) {
        if (choice[item] == 0) {
            return open.isCable(item) ? "the smallest section of the part" : "the smallest rating on offer";
        }
        String next = open.isCable(item) ? Figures.three(open.cable(item).options().get(choice[item] - 1).sectionMm2()) + " mm2"
                : Figures.three(open.way(item).options().get(choice[item] - 1).ratingA()) + " A";
        if (limiting == null) {
            return next + " would do here but cost more elsewhere";
        }
        String where = limiting.element().equals(open.id(item)) ? "" : " at " + limiting.element();
        return "with " + next + " " + limiting.rule() + " would not hold" + where
                + (limiting.caseName() == null ? "" : " in " + limiting.caseName());
    }
}
