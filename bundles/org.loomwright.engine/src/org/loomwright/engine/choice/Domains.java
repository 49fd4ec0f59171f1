// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Options that are still open, item by item. {@link #narrow} strikes those that no choice can contain: bounds consistency of
 * the limits and arc consistency of the pairings (Mackworth, Consistency in networks of relations, 1977).
 */
final class Domains {
    /** Sums are compared with this share of the limit to spare, for rounding. */
    static final double ROUNDING = 1e-9;

    private final Tables tables;
    private final boolean[][] open;
    private final int[] count;

    private Domains(Tables tables, boolean[][] open, int[] count) {
        this.tables = tables;
        this.open = open;
        this.count = count;
    }

    /** All options. */
    static Domains all(Tables tables) {
        boolean[][] open = new boolean[tables.items()][];
        for (int i = 0; i < open.length; i++) {
            open[i] = new boolean[tables.options[i]];
            Arrays.fill(open[i], true);
        }
        return new Domains(tables, open, tables.options.clone());
    }

    Domains copy() {
        boolean[][] other = new boolean[open.length][];
        for (int i = 0; i < other.length; i++) {
            other[i] = open[i].clone();
        }
        return new Domains(tables, other, count.clone());
    }

    boolean isOpen(int item, int option) {
        return open[item][option];
    }

    void close(int item, int option) {
        if (open[item][option]) {
            open[item][option] = false;
            count[item]--;
        }
    }

    /** Leaves one option of an item open. */
    void decide(int item, int option) {
        for (int o = 0; o < open[item].length; o++) {
            if (o != option) {
                close(item, o);
            }
        }
    }

    /** Number of open options of an item. */
    int count(int item) {
        return count[item];
    }

    /** Open options of an item, ascending. */
    int[] of(int item) {
        int[] found = new int[count[item]];
        int at = 0;
        for (int o = 0; at < found.length; o++) {
            if (open[item][o]) {
                found[at++] = o;
            }
        }
        return found;
    }

    static double allowance(double atMost) {
        return ROUNDING * StrictMath.max(1e-12, StrictMath.abs(atMost));
    }

    /** Strikes what cannot be; false when an item has nothing left. */
    boolean narrow() {
        for (int i = 0; i < count.length; i++) {
            if (count[i] == 0) {
                return false;
            }
        }
        int limits = tables.atMost.length;
        Deque<Integer> waiting = new ArrayDeque<>();
        boolean[] waits = new boolean[limits + tables.pairs.length];
        Arrays.fill(waits, true);
        for (int d = 0; d < waits.length; d++) {
            waiting.add(d);
        }
        while (!waiting.isEmpty()) {
            int demand = waiting.remove();
            waits[demand] = false;
            if (!(demand < limits ? limit(demand, waiting, waits) : pair(demand - limits, waiting, waits))) {
                return false;
            }
        }
        return true;
    }

    private boolean limit(int limit, Deque<Integer> waiting, boolean[] waits) {
        int[] items = tables.itemsOf[limit];
        double[][] values = tables.values[limit];
        double[] leastOf = new double[items.length];
        double least = 0;
        for (int k = 0; k < items.length; k++) {
            leastOf[k] = least(items[k], values[k]);
            least += leastOf[k];
        }
        double most = tables.atMost[limit] + tables.allowance[limit];
        for (int k = 0; k < items.length; k++) {
            int item = items[k];
            boolean struck = false;
            for (int o = 0; o < open[item].length; o++) {
                if (open[item][o] && least - leastOf[k] + values[k][o] > most) {
                    close(item, o);
                    struck = true;
                }
            }
            if (struck && !wake(item, waiting, waits)) {
                return false;
            }
        }
        return items.length > 0 || !(0 > most);
    }

    private boolean pair(int at, Deque<Integer> waiting, boolean[] waits) {
        Tables.Pair pair = tables.pairs[at];
        return supported(pair, pair.a(), pair.b(), waiting, waits) && supported(pair, pair.b(), pair.a(), waiting, waits);
    }

    /** Strikes options of an item that go with none of the other's. */
    private boolean supported(Tables.Pair pair, int item, int other, Deque<Integer> waiting, boolean[] waits) {
        boolean struck = false;
        for (int o = 0; o < open[item].length; o++) {
            if (open[item][o]) {
                boolean partner = false;
                for (int p = 0; p < open[other].length && !partner; p++) {
                    partner = open[other][p] && pair.allows(item, o, p);
                }
                if (!partner) {
                    close(item, o);
                    struck = true;
                }
            }
        }
        return !struck || wake(item, waiting, waits);
    }

    /** What an item takes part in has to be looked at again; false when it has nothing left. */
    private boolean wake(int item, Deque<Integer> waiting, boolean[] waits) {
        if (count[item] == 0) {
            return false;
        }
        for (int limit : tables.limitsOf[item]) {
            add(limit, waiting, waits);
        }
        for (int pair : tables.pairsOf[item]) {
            add(tables.atMost.length + pair, waiting, waits);
        }
        return true;
    }

    private static void add(int demand, Deque<Integer> waiting, boolean[] waits) {
        if (!waits[demand]) {
            waits[demand] = true;
            waiting.add(demand);
        }
    }

    /** The least of an item's open options. */
    double least(int item, double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (int o = 0; o < values.length; o++) {
            if (open[item][o]) {
                least = StrictMath.min(least, values[o]);
            }
        }
        return least;
    }

    /** The most of an item's open options. */
    double most(int item, double[] values) {
        double most = Double.NEGATIVE_INFINITY;
        for (int o = 0; o < values.length; o++) {
            if (open[item][o]) {
                most = StrictMath.max(most, values[o]);
            }
        }
        return most;
    }
}
