// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;

/** Single cores of 2.5 mm2, 30 A at 40 degrees Celsius, together in one run; factor 0.5 from seven on. */
class LoadedGroupTest {

    private static Plan bundle(int circuits) {
        PlanFixture fixture = new PlanFixture().place("a", 0, 0, 0, null).place("b", 1000, 0, 0, null)
                .run("R1", "a", "b", 1000, null, null).device("X1", "box", "1:plus").device("X2", "box", "1:plus")
                .state("hot", c -> c.ambient(40));
        for (int i = 1; i <= circuits; i++) {
            fixture.cable("W" + i, 2.5, 1, "X1.1", "X2.1").lay("W" + i, "R1");
        }
        return fixture.build();
    }

    private static int[] counts(Plan plan, double... amps) {
        LoadedGroup group = new LoadedGroup(plan, plan.cases().get(0), new GroupCount(plan));
        List<ConductorRating> ratings = group.ratings(amps);
        int[] counts = ratings.stream().mapToInt(ConductorRating::counted).toArray();
        assertEquals(Ratings.of(plan, plan.cases().get(0), counts), ratings);
        return counts;
    }

    @Test
    void whatIsAboveTheShareOfTheWholeGroupsRatingCounts() {
        // 8 A is 27 % of 30 A, and 53 % of the 15 A that seven together may carry
        assertArrayEquals(new int[] {7, 7, 7, 7, 7, 7, 7}, counts(bundle(7), 8, 8, 8, 8, 8, 8, 8));
    }

    @Test
    void whatIsBelowTheShareOfTheWholeGroupsRatingDoesNot() {
        // 4 A is 27 % of 15 A
        assertArrayEquals(new int[] {1, 1, 1, 1, 1, 1, 1}, counts(bundle(7), 4, 4, 4, 4, 4, 4, 4));
        // 0.30 x 15 A = 4.5 A, at that share and not above it
        assertArrayEquals(new int[] {1, 1, 1, 1, 1, 1, 1}, counts(bundle(7), 4.5, 4.5, 4.5, 4.5, 4.5, 4.5, 4.5));
    }

    @Test
    void oneLeftOutMayLeaveOutMore() {
        // of seven the limit is 0.30 x 0.5 x 30 = 4.5 A, of six 5.4 A, of three 6.3 A, of two 7.2 A; each left out leaves out
        // the next
        assertEquals(1, counts(bundle(7), 12, 7, 6, 5, 5, 5, 4)[0]);
        assertEquals(7, counts(bundle(7), 12, 7, 6, 5, 5, 5, 5)[0]);
        assertEquals(3, counts(bundle(7), 12, 7, 6.5, 5, 5, 5, 4)[0]);
    }

    @Test
    void theWorseOfTwoHasTheHigherCounts() {
        Plan plan = bundle(7);
        LoadedGroup group = new LoadedGroup(plan, plan.cases().get(0), new GroupCount(plan));
        List<ConductorRating> few = group.ratings(new double[] {20, 20, 20, 0, 0, 0, 0});
        List<ConductorRating> other = group.ratings(new double[] {0, 0, 0, 0, 0, 20, 20});
        assertArrayEquals(new int[] {3, 3, 3, 4, 4, 4, 4}, few.stream().mapToInt(ConductorRating::counted).toArray());
        assertArrayEquals(new int[] {3, 3, 3, 3, 3, 2, 2}, other.stream().mapToInt(ConductorRating::counted).toArray());
        List<ConductorRating> worse = group.worse(few, other);
        assertEquals(Ratings.of(plan, plan.cases().get(0), new int[] {3, 3, 3, 4, 4, 4, 4}), worse);
        assertEquals(worse, group.worse(other, few));
    }

    @Test
    void itIsTheLargestSetThatAgreesWithItself() {
        Plan plan = bundle(8);
        Plan.Case state = plan.cases().get(0);
        GroupCount groups = new GroupCount(plan);
        Random random = new Random(5235);
        int several = 0;
        for (int trial = 0; trial < 60; trial++) {
            double[] amps = random.doubles(8, 2, 10).toArray();
            int largest = -1;
            int agreeing = 0;
            int[] countsOfLargest = null;
            for (int set = 0; set < 256; set++) {
                boolean[] loaded = new boolean[8];
                for (int i = 0; i < 8; i++) {
                    loaded[i] = (set >> i & 1) == 1;
                }
                int[] counts = groups.counts(loaded);
                List<ConductorRating> ratings = Ratings.of(plan, state, counts);
                if (Arrays.equals(loaded, Ratings.loaded(plan, ratings, amps))) {
                    agreeing++;
                    if (Integer.bitCount(set) > largest) {
                        largest = Integer.bitCount(set);
                        countsOfLargest = counts;
                    }
                }
            }
            several += agreeing > 1 ? 1 : 0;
            assertArrayEquals(countsOfLargest, counts(plan, amps), "currents " + Arrays.toString(amps));
        }
        assertTrue(several > 5, "trials in which more than one set agrees with itself: " + several);
    }
}
