// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;
import org.loomwright.engine.protection.Fault.End;
import org.loomwright.engine.protection.Fault.Target;

/**
 * One way in which a supply conductor is fed: from one of its ends. A conductor that can be fed from both ends has two.
 *
 * @param nearTerminal terminal at the end where the current comes in
 * @param farTerminal  terminal at the other end
 * @param next         protective devices (elements) before the near end with no other between; empty when there is none
 * @param bareA        largest current of the sources that come to the near end without any device, A
 * @param upstream     all devices between the sources and the near end, the nearest first
 * @param shares       current of each upstream device over that of the conductor, the least of the faults looked at: above 1
 *                     for one of several conductors in parallel, below 1 for one of several devices in parallel
 * @param faults       the faults looked at
 */
public record Feed(int nearTerminal, int farTerminal, List<Integer> next, double bareA, List<Integer> upstream,
        List<Double> shares, List<Fault> faults) {
    public Feed {
        next = List.copyOf(next);
        upstream = List.copyOf(upstream);
        shares = List.copyOf(shares);
        faults = List.copyOf(faults);
    }

    /** The fault of that kind, null when it was not looked at (no body beside the conductor, for instance). */
    public Fault fault(Extreme extreme, End end, Target target) {
        for (Fault fault : faults) {
            if (fault.extreme() == extreme && fault.end() == end && fault.target() == target) {
                return fault;
            }
        }
        return null;
    }

    /** The fault with the largest current from this side at the near end, null when none flows. */
    public Fault largestNear() {
        return most(Extreme.LARGEST, End.NEAR);
    }

    /** The fault with the largest current at the far end, null when none flows. */
    public Fault largestFar() {
        return most(Extreme.LARGEST, End.FAR);
    }

    /** The fault with the smallest current through the conductor at the far end, of those that flow; null when none does. */
    public Fault smallestFar() {
        return least(End.FAR);
    }

    /** The fault with the smallest current from this side at the near end, of those that flow; null when none does. */
    public Fault smallestNear() {
        return least(End.NEAR);
    }

    private Fault most(Extreme extreme, End end) {
        Fault most = null;
        for (Fault fault : faults) {
            if (fault.extreme() == extreme && fault.end() == end && fault.throughA() > (most == null ? 0 : most.throughA())) {
                most = fault;
            }
        }
        return most;
    }

    private Fault least(End end) {
        Fault least = null;
        for (Fault fault : faults) {
            if (fault.extreme() == Extreme.SMALLEST && fault.end() == end && fault.throughA() > 0
                    && (least == null || fault.throughA() < least.throughA())) {
                least = fault;
            }
        }
        return least;
    }
}
