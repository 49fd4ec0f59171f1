// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.fixture.RecordChange;
import org.loomwright.engine.fixture.TestTables;

class GroupCountTest {
    private static final Plan.Grouping CONDUCTORS = new Plan.Grouping("by conductors", "made for tests", true,
            List.of(2, 3, 6, 100), List.of(1.0, 0.7, 0.6, 0.5));

    /**
     * A twin with its own return, two single supplies with structure return, and a supply with its return, all in R1; one in a
     * duct.
     */
    private static PlanFixture bundle() {
        PlanFixture fixture = new PlanFixture().place("a", 0, 0, 0, null).place("b", 1000, 0, 0, null)
                .run("R1", "a", "b", 1000, null, null).run("R2", "a", "b", 1000, null, null)
                .device("X1", "box", "1:plus", "2:plus", "3:plus", "4:plus", "5:plus", "N:minus")
                .device("X2", "box", "1:plus", "2:plus", "3:plus", "4:plus", "5:plus", "N:minus")
                .twin("T", 2.5, 1, "X1.1", "X2.1", "X1.N", "X2.N").lay("T", "R1")
                .cable("S2", 2.5, 1, "X1.2", "X2.2").lay("S2", "R1").cable("S3", 2.5, 1, "X1.3", "X2.3").lay("S3", "R1", "R2")
                .cable("P", 2.5, 1, "X1.4", "X2.4").lay("P", "R1").cable("N", 2.5, 1, "X1.N", "X2.N").lay("N", "R1")
                .cable("D", 2.5, 1, "X1.5", "X2.5").lay("D", "R1/K1");
        return fixture;
    }

    private static PlanFixture tables(PlanFixture fixture, Plan.Grouping grouping, int loadedCores) {
        Plan.Ampacity table = RecordChange.with(TestTables.ampacity(), "loadedCores", loadedCores);
        for (String cable : List.of("T", "S2", "S3", "P", "N", "D")) {
            fixture.set(cable, "ampacity", table);
            if (grouping != null) {
                fixture.set(cable, "grouping", grouping);
            }
        }
        return fixture;
    }

    private static int[] counts(Plan plan, String... idle) {
        boolean[] loaded = new boolean[plan.conductors().size()];
        Arrays.fill(loaded, true);
        for (String id : idle) {
            loaded[PlanIndex.conductor(plan, id)] = false;
        }
        return new GroupCount(plan).counts(loaded);
    }

    @Test
    void conductorsCountEveryLoadedCoreInTheSameRun() {
        Plan plan = tables(bundle(), CONDUCTORS, 1).build();
        // T@1 T@2 S2 S3 P N D: six cores lie open in R1, the one in the duct is alone
        assertArrayEquals(new int[] {6, 6, 6, 6, 6, 6, 1}, counts(plan));
    }

    @Test
    void aTwinsRatingAlreadyIncludesItsOwnPair() {
        Plan plan = tables(bundle(), CONDUCTORS, 2).build();
        int[] counts = counts(plan);
        assertEquals(5, counts[PlanIndex.conductor(plan, "T@1")]);
        assertEquals(1, counts(plan, "S2@1", "S3@1", "P@1", "N@1")[PlanIndex.conductor(plan, "T@1")]);
        assertEquals(6, counts[PlanIndex.conductor(plan, "P@1")]);
    }

    @Test
    void circuitsCountCablesAndPairsOfSingles() {
        Plan plan = tables(bundle(), null, 2).build();
        // the twin, and four single cores as two circuits
        assertArrayEquals(new int[] {3, 3, 3, 3, 3, 3, 1}, counts(plan));
        // with one single core fewer there are still two circuits begun
        assertEquals(3, counts(plan, "S2@1")[PlanIndex.conductor(plan, "P@1")]);
        assertEquals(2, counts(plan, "S2@1", "S3@1")[PlanIndex.conductor(plan, "P@1")]);
    }

    @Test
    void withATableForOneLoadedCoreEverySingleIsACircuit() {
        Plan plan = tables(bundle(), null, 1).build();
        assertArrayEquals(new int[] {5, 5, 5, 5, 5, 5, 1}, counts(plan));
    }

    @Test
    void structureReturnIsOneConductorOwnReturnTwo() {
        Plan structure = tables(bundle(), CONDUCTORS, 1).build();
        int with = counts(structure)[PlanIndex.conductor(structure, "S2@1")];
        int without = counts(structure, "N@1")[PlanIndex.conductor(structure, "S2@1")];
        assertEquals(1, with - without);
    }

    @Test
    void idleConductorsCountOnlyForThemselves() {
        Plan plan = tables(bundle(), CONDUCTORS, 1).build();
        int[] counts = counts(plan, "T@1", "T@2", "S2@1", "P@1", "N@1");
        assertEquals(1, counts[PlanIndex.conductor(plan, "S3@1")]);
        assertEquals(2, counts[PlanIndex.conductor(plan, "S2@1")]);
        assertArrayEquals(new int[] {1, 1, 1, 1, 1, 1, 1}, new GroupCount(plan).counts(new boolean[7]));
    }

    @Test
    void coresAtOrBelowTheIgnoredShareAreNotLoaded() {
        Plan plan = tables(bundle(), null, 2).build();
        Plan.Case state = plan.cases().get(0);
        List<ConductorRating> ratings = Ratings.of(plan, state, new GroupCount(plan).counts(new boolean[7]));
        double share = plan.practice().value("conductor.grouping-ignore");
        double[] amps = new double[ratings.size()];
        amps[0] = share * ratings.get(0).correctedA();
        amps[1] = -1.001 * share * ratings.get(1).correctedA();
        boolean[] loaded = Ratings.loaded(plan, ratings, amps);
        assertEquals("[false, true, false]", Arrays.toString(Arrays.copyOf(loaded, 3)));
    }
}
