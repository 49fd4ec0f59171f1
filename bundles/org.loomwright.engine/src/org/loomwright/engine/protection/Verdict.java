// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/** How one condition of protection turns out. */
public enum Verdict {
    /** It holds. */
    HOLDS,
    /** It does not hold. */
    FAILS,
    /** It need not hold here. */
    NOT_NEEDED,
    /** A figure that it needs is not stated: a curve, a rating, a short-time limit. */
    UNKNOWN,
    /** No protective device lies between a source and the conductor. */
    NO_DEVICE;

    /** The worse of two: no device, fails, unknown, holds, not needed. */
    public Verdict worse(Verdict other) {
        return rank() >= other.rank() ? this : other;
    }

    private int rank() {
        return switch (this) {
            case NOT_NEEDED -> 0;
            case HOLDS -> 1;
            case UNKNOWN -> 2;
            case FAILS -> 3;
            case NO_DEVICE -> 4;
        };
    }

    static Verdict of(boolean holds) {
        return holds ? HOLDS : FAILS;
    }
}
