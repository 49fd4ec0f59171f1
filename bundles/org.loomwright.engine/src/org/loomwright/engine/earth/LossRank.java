// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

/** What the loss of a strap comes to, the worst first. */
public enum LossRank {
    /** A conductor gets so hot that its insulation is destroyed. */
    BURNS,
    /** A conductor, strap, contact or joint carries more than it bears for long. */
    OVERLOADS,
    /** A fault to the structure is no longer cleared in time. */
    DOES_NOT_CLEAR,
    /** A current as large as the practice names is left without any declared way. */
    STRANDS,
    /** Loads or charging sources do not work, or less than they should; nothing is harmed. */
    STOPS,
    /** The current has other ways that can carry it. */
    BEARS,
    /** The strap carries nothing in any case. */
    IDLE;

    /** True when the loss breaks what must still hold. */
    public boolean harmful() {
        return compareTo(STRANDS) <= 0;
    }
}
