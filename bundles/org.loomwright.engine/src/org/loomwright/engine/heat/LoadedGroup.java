// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.Plan;

/**
 * Finds what counts for grouping at given currents of one case. A conductor at or below the practice's share of its grouped
 * rating is not counted (BS 7671 523.5), and that rating depends in turn on what is counted, so that several sets may agree
 * with themselves: this is the largest of them. It begins with every conductor counted and leaves out, again and again, those
 * that carry too little of the rating that the others leave them; each that is left out only raises the ratings of the rest.
 */
public final class LoadedGroup {
    private final Plan plan;
    private final GroupCount groups;
    /** Every conductor loaded: where each search begins. */
    private final List<ConductorRating> full;

    /**
     * Prepares the ratings of a case.
     *
     * @param groups counts of the same plan
     */
    public LoadedGroup(Plan plan, Plan.Case state, GroupCount groups) {
        this.plan = plan;
        this.groups = groups;
        boolean[] all = new boolean[plan.conductors().size()];
        Arrays.fill(all, true);
        full = Ratings.of(plan, state, groups.counts(all));
    }

    /**
     * Ratings with what the currents load.
     *
     * @param currentA largest current of each conductor of the plan, A
     */
    public List<ConductorRating> ratings(double[] currentA) {
        boolean[] loaded = new boolean[full.size()];
        Arrays.fill(loaded, true);
        List<ConductorRating> ratings = full;
        while (true) {
            boolean[] still = Ratings.loaded(plan, ratings, currentA);
            boolean same = true;
            for (int i = 0; i < loaded.length; i++) {
                same &= loaded[i] == (loaded[i] && still[i]);
                loaded[i] &= still[i];
            }
            if (same) {
                return ratings;
            }
            ratings = counting(groups.counts(loaded), ratings);
        }
    }

    /** The worse of two for each conductor. */
    public List<ConductorRating> worse(List<ConductorRating> one, List<ConductorRating> other) {
        int[] counts = new int[one.size()];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = Math.max(one.get(i).counted(), other.get(i).counted());
        }
        return counting(counts, one);
    }

    private List<ConductorRating> counting(int[] counts, List<ConductorRating> ratings) {
        List<ConductorRating> counting = new ArrayList<>(ratings);
        for (int i = 0; i < counts.length; i++) {
            ConductorRating before = ratings.get(i);
            if (before.counted() != counts[i]) {
                Plan.Grouping table = plan.cables().get(plan.conductors().get(i).cable()).grouping();
                counting.set(i, before.grouped(counts[i], AmpacityTables.groupingFactor(table, counts[i])));
            }
        }
        return counting;
    }
}
