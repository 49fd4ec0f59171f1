// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * What one case comes to when straps are lost, at once, with the conductors as warm as before.
 *
 * @param caseName  case
 * @param cranking  the case is a start
 * @param status    whether the case still has an operating point
 * @param carriedA  what the straps carried before, the largest of them, A
 * @param strandedA of that, what is left without a declared way from one end to the other, A
 * @param path      where the current goes instead, from one end of the first strap to the other; empty when it stops
 * @param detours   all that carry more than before, the largest rise first
 * @param hot       of these, what carries more than it bears
 * @param bodies    bodies whose potential moves, those left without any first, then the largest move; empty when there is no
 *                  operating point after the loss
 * @param loads     loads that are no longer supplied as they were, in the plan's order
 * @param sources   charging sources that no longer deliver, elements of the plan
 * @param rank      what it comes to
 * @param weight    orders cases of one rank, the larger the worse
 */
public record LossCase(String caseName, boolean cranking, OperatingPoint.Status status, double carriedA, double strandedA,
        List<Detour> path, List<Detour> detours, List<HotPart> hot, List<BodyShift> bodies, List<LostLoad> loads,
        List<Integer> sources, LossRank rank, double weight) {
    public LossCase {
        path = List.copyOf(path);
        detours = List.copyOf(detours);
        hot = List.copyOf(hot);
        bodies = List.copyOf(bodies);
        loads = List.copyOf(loads);
        sources = List.copyOf(sources);
    }

    /**
     * Something that carries more than before.
     *
     * @param kind    what it is
     * @param index   its index in the plan's list of that kind
     * @param element id of its element as findings name it
     * @param beforeA current before, without sign, A
     * @param afterA  current after, without sign, A
     * @param ratedA  continuous rating in the case, A; NaN when not known
     */
    public record Detour(NetworkIndex.Kind kind, int index, String element, double beforeA, double afterA, double ratedA) {
    }

    /**
     * Something that carries more than it bears.
     *
     * @param detour   what it is, with its currents
     * @param countsA  current that counts against the rating: the mean square over the cycle where loads come and go, A
     * @param beforeC  temperature before, degrees Celsius; NaN for what is no conductor; likewise below
     * @param afterC   peak temperature after; infinite when it warms without end
     * @param maxC     continuous limit of its insulation
     * @param destroyedC short-time limit of its insulation
     */
    public record HotPart(Detour detour, double countsA, double beforeC, double afterC, double maxC, double destroyedC) {

        /** True for a conductor whose insulation is destroyed. */
        public boolean burns() {
            return afterC >= destroyedC;
        }

        /** How far beyond what it bears: rise over permitted rise, or current over rating. */
        public double times() {
            return Double.isNaN(afterC) ? countsA / detour.ratedA() : detour.afterA() / detour.ratedA();
        }
    }

    /** A body whose potential against the battery's minus moves, V; after is NaN when nothing ties it to a source any more. */
    public record BodyShift(int body, double beforeV, double afterV) {
        /** True when it stands further from the battery's minus than before, or is left without potential. */
        public boolean rises() {
            return Double.isNaN(afterV) || StrictMath.abs(afterV) > StrictMath.abs(beforeV);
        }

        /** How far it moves, V; infinite for one without potential. */
        public double moveV() {
            return Double.isNaN(afterV) ? Double.POSITIVE_INFINITY : StrictMath.abs(afterV - beforeV);
        }
    }

    /**
     * A load (element) that no longer gets what it got, V at its terminals; after is NaN when nothing feeds it any more, and when
     * the case has no operating point after the loss.
     */
    public record LostLoad(int demand, double beforeV, double afterV) {
    }
}
