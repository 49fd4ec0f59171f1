// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.Arrays;

/** The best choice of a subtree. */
final class Answer {
    final int item;
    final int option;
    final Answer[] below;
    final long cost;
    final long tie;

    Answer(int item, int option, Answer[] below, long cost, long tie) {
        this.item = item;
        this.option = option;
        this.below = below;
        this.cost = cost;
        this.tie = tie;
    }

    void into(int[] options) {
        options[item] = option;
        for (Answer answer : below) {
            answer.into(options);
        }
    }

    /**
     * Cheaper; if equal with the smaller tie; if equal with the smaller options, item by item in the order of their ids.
     *
     * @param rank place of each item in the order of ids
     */
    boolean isBetter(Answer than, int[] rank) {
        if (cost != than.cost || tie != than.tie) {
            return cost < than.cost || cost == than.cost && tie < than.tie;
        }
        return Arrays.compare(byRank(rank), than.byRank(rank)) < 0;
    }

    private int[] byRank(int[] rank) {
        int[] options = new int[rank.length];
        Arrays.fill(options, -1);
        into(options);
        int[] ranked = new int[rank.length];
        for (int i = 0; i < options.length; i++) {
            ranked[rank[i]] = options[i];
        }
        return ranked;
    }
}
