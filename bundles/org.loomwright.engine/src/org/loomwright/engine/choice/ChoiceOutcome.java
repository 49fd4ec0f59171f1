// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.List;

/** How the search for a choice ended. */
public sealed interface ChoiceOutcome {

    /**
     * The best choice found.
     *
     * @param options  index of the option of each item
     * @param cost     its cost; for the fewest kinds the number of kinds
     * @param bound    no choice costs less than this
     * @param nodes    partial choices looked at
     */
    record Chosen(List<Integer> options, double cost, double bound, long nodes) implements ChoiceOutcome {
        public Chosen {
            options = List.copyOf(options);
        }

        /** What the best choice may at most be cheaper, as a share of the cost found; 0 means proven. */
        public double gap() {
            return cost > bound ? (cost - bound) / cost : 0;
        }
    }

    /**
     * The effort was spent before any choice was found, or before it was proven that there is none.
     *
     * @param nodes partial choices looked at
     */
    record Unfinished(long nodes) implements ChoiceOutcome {
    }

    /** No choice meets everything; the conflicts cannot be met together, and leaving out any of them makes the rest possible. */
    record Impossible(List<Conflict> conflicts) implements ChoiceOutcome {
        public Impossible {
            conflicts = List.copyOf(conflicts);
        }
    }

    /**
     * One of the demands that contradict each other.
     *
     * @param id     of the limit or pairing, or of an item that has no option
     * @param least  least value of the limit whatever is chosen for its items; NaN for a pairing or an item
     * @param atMost what it may be; NaN likewise
     */
    record Conflict(String id, double least, double atMost) {
    }
}
