// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Pairing;
import org.loomwright.engine.choice.ChoiceProblem.Term;

/**
 * Options that are still open, item by item. {@link #narrow} strikes those that no choice can contain: bounds consistency of
 * the limits and arc consistency of the pairings (Mackworth, Consistency in networks of relations, 1977).
 */
final class Domains {
    /** Sums are compared with this share of the limit to spare, for rounding. */
    static final double ROUNDING = 1e-9;

    private final ChoiceProblem problem;
    private final boolean[][] open;

    private Domains(ChoiceProblem problem, boolean[][] open) {
        this.problem = problem;
        this.open = open;
    }

    /** All options. */
    static Domains all(ChoiceProblem problem) {
        boolean[][] open = new boolean[problem.items().size()][];
        for (int i = 0; i < open.length; i++) {
            open[i] = new boolean[problem.items().get(i).options().size()];
            Arrays.fill(open[i], true);
        }
        return new Domains(problem, open);
    }

    Domains copy() {
        boolean[][] other = new boolean[open.length][];
        for (int i = 0; i < other.length; i++) {
            other[i] = open[i].clone();
        }
        return new Domains(problem, other);
    }

    boolean isOpen(int item, int option) {
        return open[item][option];
    }

    void close(int item, int option) {
        open[item][option] = false;
    }

    /** Open options of an item, ascending. */
    int[] of(int item) {
        int[] found = new int[open[item].length];
        int count = 0;
        for (int o = 0; o < found.length; o++) {
            if (open[item][o]) {
                found[count++] = o;
            }
        }
        return Arrays.copyOf(found, count);
    }

    static double allowance(double atMost) {
        return ROUNDING * StrictMath.max(1e-12, StrictMath.abs(atMost));
    }

    /** Strikes what cannot be; false when an item has nothing left. */
    boolean narrow() {
        for (boolean[] item : open) {
            if (!any(item)) {
                return false;
            }
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Limit limit : problem.limits()) {
                int struck = narrow(limit);
                if (struck < 0) {
                    return false;
                }
                changed |= struck > 0;
            }
            for (Pairing pairing : problem.pairings()) {
                int struck = narrow(pairing);
                if (struck < 0) {
                    return false;
                }
                changed |= struck > 0;
            }
        }
        return true;
    }

    private int narrow(Limit limit) {
        double least = 0;
        double[] leastOf = new double[limit.terms().size()];
        for (int k = 0; k < leastOf.length; k++) {
            leastOf[k] = least(limit.terms().get(k));
            least += leastOf[k];
        }
        double most = limit.atMost() + allowance(limit.atMost());
        int struck = 0;
        for (int k = 0; k < leastOf.length; k++) {
            Term term = limit.terms().get(k);
            for (int o : of(term.item())) {
                if (least - leastOf[k] + term.values().get(o) > most) {
                    open[term.item()][o] = false;
                    struck++;
                }
            }
            if (!any(open[term.item()])) {
                return -1;
            }
        }
        return leastOf.length == 0 && 0 > most ? -1 : struck;
    }

    private int narrow(Pairing pairing) {
        int struck = 0;
        for (int a : of(pairing.itemA())) {
            boolean partner = false;
            for (int b : of(pairing.itemB())) {
                partner |= pairing.allowed().get(a).get(b);
            }
            if (!partner) {
                open[pairing.itemA()][a] = false;
                struck++;
            }
        }
        for (int b : of(pairing.itemB())) {
            boolean partner = false;
            for (int a : of(pairing.itemA())) {
                partner |= pairing.allowed().get(a).get(b);
            }
            if (!partner) {
                open[pairing.itemB()][b] = false;
                struck++;
            }
        }
        return any(open[pairing.itemA()]) && any(open[pairing.itemB()]) ? struck : -1;
    }

    double least(Term term) {
        double least = Double.POSITIVE_INFINITY;
        for (int o = 0; o < open[term.item()].length; o++) {
            if (open[term.item()][o]) {
                least = StrictMath.min(least, term.values().get(o));
            }
        }
        return least;
    }

    /** Items with more than one option left. */
    List<Integer> undecided() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < open.length; i++) {
            if (of(i).length > 1) {
                found.add(i);
            }
        }
        return found;
    }

    private static boolean any(boolean[] options) {
        for (boolean option : options) {
            if (option) {
                return true;
            }
        }
        return false;
    }
}
