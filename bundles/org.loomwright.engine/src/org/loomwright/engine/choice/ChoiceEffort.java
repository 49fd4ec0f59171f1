// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** How much a search may do: counted in partial choices, never in time, so that the same problem ends the same way everywhere. */
public final class ChoiceEffort {
    private final long most;
    private final BooleanSupplier cancelled;
    private long nodes;

    /**
     * An effort.
     *
     * @param most      partial choices looked at before the search ends unproven
     * @param cancelled asked before each
     */
    public ChoiceEffort(long most, BooleanSupplier cancelled) {
        this.most = most;
        this.cancelled = cancelled;
    }

    /** Partial choices so far. */
    public long nodes() {
        return nodes;
    }

    /** Asks whether it is cancelled, without any effort. */
    void check() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("cancelled while choosing");
        }
    }

    void node() {
        check();
        if (++nodes > most) {
            throw new Spent();
        }
    }

    boolean spent() {
        return nodes >= most;
    }

    /** The effort is spent. */
    static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Spent() {
            super("the search was ended after the partial choices permitted", null, false, false);
        }
    }
}
