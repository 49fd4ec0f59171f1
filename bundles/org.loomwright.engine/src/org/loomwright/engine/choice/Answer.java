// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

/** The best choice of a subtree: options of its own items, and the answers of what lies below. */
final class Answer {
    private static final Answer[] NONE = {};

    final int[] items;
    final int[] options;
    final Answer[] below;
    final long cost;
    final long tie;

    Answer(int[] items, int[] options, Answer[] below, long cost, long tie) {
        this.items = items;
        this.options = options;
        this.below = below;
        this.cost = cost;
        this.tie = tie;
    }

    /** An answer with nothing below. */
    static Answer of(int[] items, int[] options, long cost, long tie) {
        return new Answer(items, options, NONE, cost, tie);
    }

    void into(int[] all) {
        for (int i = 0; i < items.length; i++) {
            all[items[i]] = options[i];
        }
        for (Answer answer : below) {
            answer.into(all);
        }
    }

    /** What it takes of each limit is added to sums. */
    void takes(Tables tables, double[] sums) {
        for (int i = 0; i < items.length; i++) {
            int[] limits = tables.limitsOf[items[i]];
            for (int k = 0; k < limits.length; k++) {
                sums[limits[k]] += tables.takes[items[i]][k][options[i]];
            }
        }
        for (Answer answer : below) {
            answer.takes(tables, sums);
        }
    }

    /**
     * Cheaper; if equal with the smaller tie; if equal with the smaller options, item by item in the order of their ids.
     *
     * @param ranked items of both in the order of ids
     * @param all    number of all items
     */
    boolean isBetter(Answer than, int[] ranked, int all) {
        if (cost != than.cost || tie != than.tie) {
            return cost < than.cost || cost == than.cost && tie < than.tie;
        }
        int[] one = new int[all];
        int[] other = new int[all];
        into(one);
        than.into(other);
        for (int item : ranked) {
            if (one[item] != other[item]) {
                return one[item] < other[item];
            }
        }
        return false;
    }
}
