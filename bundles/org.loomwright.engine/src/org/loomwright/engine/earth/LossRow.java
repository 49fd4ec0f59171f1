// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;

/**
 * The loss of one strap, or of two together.
 *
 * @param bonds     bonds of the plan
 * @param cases     the cases in which any of them carries something, in the plan's order
 * @param uncleared protective devices that no longer clear, whatever the case
 * @param rank      what it comes to in the worst case
 * @param worst     that case; null when none carries anything
 * @param symptom   what a person would notice
 */
public record LossRow(List<Integer> bonds, List<LossCase> cases, List<Uncleared> uncleared, LossRank rank, LossCase worst,
        String symptom) {
    public LossRow {
        bonds = List.copyOf(bonds);
        cases = List.copyOf(cases);
        uncleared = List.copyOf(uncleared);
    }

    /**
     * A fault to the structure that was cleared in time before, and no longer is.
     *
     * @param conductor conductor that touches the structure at its far end
     * @param body      body it touches
     * @param protector protective device, element of the plan
     * @param beforeA   smallest fault current before, A
     * @param afterA    smallest fault current after, A
     * @param beforeS   time to clear before, s
     * @param afterS    time to clear after, s; infinite for never
     */
    public record Uncleared(int conductor, int body, int protector, double beforeA, double afterA, double beforeS,
            double afterS) {
    }
}
