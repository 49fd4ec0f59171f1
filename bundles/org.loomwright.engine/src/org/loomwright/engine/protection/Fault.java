// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;

/**
 * One bolted fault at one end of a conductor.
 *
 * @param conductor index in the plan
 * @param terminal  terminal at the end where the fault is
 * @param end       whether that end is near the source or far from it, for the way this fault is fed
 * @param target    to what
 * @param partner   terminal of the return, or body
 * @param extreme   with the largest or the smallest current
 * @param linked    links between batteries are closed (else open, where that matters)
 * @param totalA    current at the fault, A; 0 when nothing closes the loop
 * @param throughA  what of it comes along the conductor (far end), or to its end from this side (near end), A
 * @param openV     voltage before the fault, V
 * @param loopOhm   open voltage over current, ohm; infinite without a current
 * @param clearing  how it is cleared, slowest curves, coldest ambient
 * @param trips     batteries (elements) whose own management may disconnect first
 */
public record Fault(int conductor, int terminal, End end, Target target, int partner, Extreme extreme, boolean linked,
        double totalA, double throughA, double openV, double loopOhm, Clearing clearing, List<Integer> trips) {
    public Fault {
        trips = List.copyOf(trips);
    }

    /** Which end of a conductor, seen from the source. */
    public enum End { NEAR, FAR }

    /** What a fault goes to. */
    public enum Target {
        /** The conductor's own return. */
        RETURN,
        /** The structure body that it runs along. */
        BODY
    }

    /** Whether a current flows at all. */
    public boolean wayBack() {
        return totalA > 0;
    }
}
