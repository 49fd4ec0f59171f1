// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.Plan;

/**
 * Finds what counts for grouping at given currents. A conductor at or below the practice's share of its grouped rating is not
 * counted (BS 7671 523.5), and that rating depends in turn on what is counted, so that several sets may agree with
 * themselves: this is the largest of them. It begins with every conductor counted and leaves out, again and again, those that
 * carry too little of the rating that the others leave them; each that is left out only raises the ratings of the rest.
 */
public final class LoadedGroup {
    private LoadedGroup() {
    }

    /**
     * What is together with each conductor.
     *
     * @param currentA largest current of each conductor of the plan, A
     * @return counts as in {@link GroupCount#counts}
     */
    public static int[] counts(Plan plan, Plan.Case state, GroupCount groups, double[] currentA) {
        boolean[] loaded = new boolean[plan.conductors().size()];
        Arrays.fill(loaded, true);
        while (true) {
            int[] counts = groups.counts(loaded);
            List<ConductorRating> ratings = Ratings.of(plan, state, counts);
            boolean[] still = Ratings.loaded(plan, ratings, currentA);
            boolean same = true;
            for (int i = 0; i < loaded.length; i++) {
                same &= loaded[i] == (loaded[i] && still[i]);
                loaded[i] &= still[i];
            }
            if (same) {
                return counts;
            }
        }
    }
}
