// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How a fault is cleared: the devices that open, one after the other, until nothing flows. Each is taken at its slowest curve and
 * the coldest ambient; while others open, it keeps what it has melted so far (shares of its time at each current add up; common
 * practice).
 *
 * @param steps       devices in the order in which they open
 * @param seconds     time until the current has ceased, s; infinite when it never does
 * @param letThroughA2s integral of the conductor's squared current until then, A2s
 * @param remainingA  current that flows on when no further device opens, A; 0 when cleared
 * @param known       false when a device on the way states no curve; times are then only those of the others
 */
public record Clearing(List<Step> steps, double seconds, double letThroughA2s, double remainingA, boolean known) {
    public Clearing {
        steps = List.copyOf(steps);
    }

    /**
     * One device that opens.
     *
     * @param protector element of the plan
     * @param atS       when, s
     * @param currentA  its current until then, A
     * @param throughA  the conductor's current until then, A
     */
    public record Step(int protector, double atS, double currentA, double throughA) {
    }

    /** Whether the current ceases within a time, s. */
    public boolean within(double limitS) {
        return seconds <= limitS;
    }

    /**
     * Follows a fault until it is cleared.
     *
     * @param flow   the fault, nothing opened yet
     * @param curves curves of the devices at the coldest ambient, by element; null where none are stated
     * @param watched the conductor whose let-through is wanted
     */
    static Clearing of(FaultFlow flow, CurvePair[] curves, Watched watched) {
        List<Step> steps = new ArrayList<>();
        Map<Integer, Double> progress = new TreeMap<>();
        FaultFlow now = flow;
        double at = 0;
        double squared = 0;
        boolean known = true;
        while (now.currentA() != 0) {
            int next = -1;
            double soonestS = Double.POSITIVE_INFINITY;
            List<Integer> carrying = now.protectors();
            for (int e : carrying) {
                known &= curves[e] != null;
                double left = curves[e] == null ? Double.POSITIVE_INFINITY
                        : (1 - progress.getOrDefault(e, 0.0)) * curves[e].slowestS(StrictMath.abs(now.elementA(e)));
                if (left < soonestS) {
                    soonestS = left;
                    next = e;
                }
            }
            double throughA = watched.throughA(now);
            if (next < 0) {
                return new Clearing(steps, Double.POSITIVE_INFINITY, throughA == 0 ? squared : Double.POSITIVE_INFINITY,
                        StrictMath.abs(now.currentA()), known);
            }
            for (int e : carrying) {
                if (curves[e] != null) {
                    progress.merge(e, soonestS / curves[e].slowestS(StrictMath.abs(now.elementA(e))), Double::sum);
                }
            }
            at += soonestS;
            squared += throughA * throughA * soonestS;
            steps.add(new Step(next, at, StrictMath.abs(now.elementA(next)), throughA));
            FaultNetwork opened = now.network().without(now.network().branch(FaultBranch.Kind.ELEMENT, next));
            now = opened.faultA(now.from(), now.to()) == 0 ? FaultFlow.none(opened, now.from(), now.to())
                    : opened.fault(now.from(), now.to());
        }
        return new Clearing(steps, steps.isEmpty() ? 0 : at, squared, 0, known);
    }

    /** What of a fault's current counts for a conductor. */
    @FunctionalInterface
    interface Watched {
        /** Current through the conductor, A, 0 or above. */
        double throughA(FaultFlow flow);
    }
}
