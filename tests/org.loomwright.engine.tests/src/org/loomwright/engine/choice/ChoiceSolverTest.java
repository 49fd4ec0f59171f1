// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.choice.ChoiceOutcome.Chosen;
import org.loomwright.engine.choice.ChoiceOutcome.Conflict;
import org.loomwright.engine.choice.ChoiceOutcome.Impossible;
import org.loomwright.engine.choice.ChoiceProblem.FewestKinds;
import org.loomwright.engine.choice.ChoiceProblem.FreePools;
import org.loomwright.engine.choice.ChoiceProblem.Item;
import org.loomwright.engine.choice.ChoiceProblem.LeastCost;
import org.loomwright.engine.choice.ChoiceProblem.Limit;
import org.loomwright.engine.choice.ChoiceProblem.Option;
import org.loomwright.engine.choice.ChoiceProblem.Pairing;
import org.loomwright.engine.choice.ChoiceProblem.Term;

class ChoiceSolverTest {
    private static ChoiceEffort effort() {
        return new ChoiceEffort(50_000_000, () -> false);
    }

    private static int[] array(Chosen chosen) {
        return chosen.options().stream().mapToInt(Integer::intValue).toArray();
    }

    private static ChoiceProblem small(int seed) {
        Random shape = new Random(seed);
        boolean fuses = shape.nextBoolean();
        int boxes = 1 + shape.nextInt(2);
        return new RandomChoice(seed, 3).tree(boxes, fuses ? 1 : 2, 1 + shape.nextInt(2), fuses);
    }

    private static void agrees(ChoiceProblem problem, int seed) {
        double[] best = new Exhaustive(problem).best();
        ChoiceOutcome outcome = ChoiceSolver.solve(problem, effort());
        if (best == null) {
            assertInstanceOf(Impossible.class, outcome, "seed " + seed);
            return;
        }
        Chosen chosen = assertInstanceOf(Chosen.class, outcome, "seed " + seed);
        assertTrue(Exhaustive.holds(problem, array(chosen)), "seed " + seed);
        double[] cost = Exhaustive.cost(problem, array(chosen));
        assertEquals(best[0], cost[0], 1e-6 * (1 + best[0]), "seed " + seed);
        assertEquals(best[1], cost[1], 1e-6 * (1 + best[1]), "seed " + seed);
        assertEquals(cost[0], chosen.cost(), 1e-6 * (1 + best[0]), "seed " + seed);
        assertEquals(0, chosen.gap(), 1e-8, "seed " + seed);
    }

    @Test
    void leastCostAgreesWithTryingEverything() {
        for (int seed = 0; seed < 300; seed++) {
            agrees(small(seed), seed);
        }
    }

    @Test
    void fewestKindsAgreesWithTryingEverything() {
        for (int seed = 0; seed < 200; seed++) {
            agrees(small(seed).with(new FewestKinds(new RandomChoice(seed, 3).anyway())), seed);
        }
    }

    @Test
    void freePoolsAgreeWithTryingEverything() {
        for (int seed = 0; seed < 200; seed++) {
            ChoiceProblem problem = small(seed).with(new FreePools(new RandomChoice(seed, 3).pools()));
            double[] best = new Exhaustive(problem).best();
            ChoiceOutcome outcome = ChoiceSolver.solve(problem, effort());
            if (best == null) {
                assertInstanceOf(Impossible.class, outcome);
            } else {
                Chosen chosen = (Chosen) outcome;
                assertEquals(best[0], Exhaustive.cost(problem, array(chosen))[0], 1e-6 * (1 + best[0]), "seed " + seed);
                assertEquals(0, chosen.gap(), 1e-8, "seed " + seed);
            }
        }
    }

    @Test
    void doesNotDependOnTheOrderOfItemsAndLimits() {
        for (int seed = 0; seed < 60; seed++) {
            ChoiceProblem problem = new RandomChoice(seed, 5).tree(3, 3, 2, seed % 2 == 0);
            int n = problem.items().size();
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                order.add(i);
            }
            Collections.shuffle(order, new Random(seed));
            List<Item> items = order.stream().map(i -> problem.items().get(i)).toList();
            List<Limit> limits = new ArrayList<>();
            for (Limit limit : problem.limits()) {
                List<Term> terms = new ArrayList<>(limit.terms().stream()
                        .map(term -> new Term(order.indexOf(term.item()), term.values())).toList());
                Collections.shuffle(terms, new Random(seed));
                limits.add(new Limit(limit.id(), limit.atMost(), terms));
            }
            Collections.shuffle(limits, new Random(seed));
            List<Pairing> pairings = problem.pairings().stream().map(pairing -> new Pairing(pairing.id(),
                    order.indexOf(pairing.itemA()), order.indexOf(pairing.itemB()), pairing.allowed())).toList();
            ChoiceOutcome one = ChoiceSolver.solve(problem, effort());
            ChoiceOutcome other = ChoiceSolver.solve(new ChoiceProblem(items, limits, pairings, new LeastCost()), effort());
            assertEquals(one.getClass(), other.getClass());
            if (one instanceof Chosen chosen) {
                for (int i = 0; i < n; i++) {
                    assertEquals(chosen.options().get(order.get(i)), ((Chosen) other).options().get(i), "seed " + seed);
                }
            }
        }
    }

    @Test
    void equalCostsAreDecidedByTheTieThenByTheFirstOption() {
        List<Option> same = List.of(new Option("a", 1, 5, -1, 0), new Option("b", 1, 2, -1, 0), new Option("c", 1, 2, -1, 0));
        ChoiceProblem problem = new ChoiceProblem(List.of(new Item("x", same), new Item("y", same)),
                List.of(), List.of(), new LeastCost());
        assertEquals(List.of(1, 1), ((Chosen) ChoiceSolver.solve(problem, effort())).options());
    }

    @Test
    void whatContradictsItselfIsTheSmallestSuchSet() {
        int found = 0;
        for (int seed = 0; seed < 400 && found < 40; seed++) {
            ChoiceProblem problem = small(seed);
            if (!(ChoiceSolver.solve(problem, effort()) instanceof Impossible impossible)) {
                continue;
            }
            found++;
            List<String> ids = impossible.conflicts().stream().map(Conflict::id).toList();
            assertNull(new Exhaustive(only(problem, ids)).best(), "seed " + seed);
            for (String spared : ids) {
                assertNotNull(new Exhaustive(only(problem, ids.stream().filter(id -> !id.equals(spared)).toList())).best(),
                        "seed " + seed + " without " + spared);
            }
        }
        assertTrue(found >= 20, found + " impossible problems");
    }

    private static ChoiceProblem only(ChoiceProblem problem, List<String> ids) {
        return new ChoiceProblem(problem.items(), problem.limits().stream().filter(limit -> ids.contains(limit.id())).toList(),
                problem.pairings().stream().filter(pairing -> ids.contains(pairing.id())).toList(), new LeastCost());
    }

    @Test
    void anItemWithoutOptionsIsNamed() {
        ChoiceProblem problem = new ChoiceProblem(List.of(new Item("W7", List.of())), List.of(), List.of(), new LeastCost());
        Impossible impossible = (Impossible) ChoiceSolver.solve(problem, effort());
        assertEquals(List.of("W7"), impossible.conflicts().stream().map(Conflict::id).toList());
    }

    @Test
    void aLimitThatNothingMeetsIsNamedWithTheLeastThatIsPossible() {
        List<Option> options = List.of(new Option("small", 1, 0, -1, 0), new Option("large", 2, 0, -1, 0));
        ChoiceProblem problem = new ChoiceProblem(List.of(new Item("W1", options)),
                List.of(new Limit("drop of E1", 0.3, List.of(new Term(0, List.of(0.9, 0.5))))), List.of(), new LeastCost());
        Impossible impossible = (Impossible) ChoiceSolver.solve(problem, effort());
        assertEquals(List.of(new Conflict("drop of E1", 0.5, 0.3)), impossible.conflicts());
    }

    private static ChoiceProblem possible(int boxes, int loads, int cases, boolean fuses) {
        for (int seed = 0;; seed++) {
            ChoiceProblem problem = new RandomChoice(seed, 10).tree(boxes, loads, cases, fuses);
            if (Domains.all(Tables.of(problem)).narrow()) {
                return problem;
            }
        }
    }

    @Test
    void sixtyLoadsAreProvenWithFewPartialChoices() {
        for (boolean fuses : new boolean[] {true, false}) {
            Chosen chosen = (Chosen) ChoiceSolver.solve(possible(6, 10, 4, fuses), effort());
            assertEquals(0, chosen.gap());
            assertTrue(chosen.nodes() < 200_000, chosen.nodes() + " partial choices");
        }
    }

    @Test
    void threeHundredLoadsAreProven() {
        ChoiceProblem problem = possible(15, 20, 2, false);
        Chosen chosen = (Chosen) ChoiceSolver.solve(problem, effort());
        assertEquals(0, chosen.gap());
    }

    @Test
    void whatIsUnprovenSaysSo() {
        ChoiceProblem problem = possible(6, 10, 4, false);
        ChoiceOutcome outcome = ChoiceSolver.solve(problem, new ChoiceEffort(1, () -> false));
        Chosen chosen = (Chosen) outcome;
        assertTrue(chosen.gap() > 0 && chosen.bound() < chosen.cost());
        assertTrue(Exhaustive.holds(problem, array(chosen)));
    }

    @Test
    void aSearchThatEndsEarlyNeverClaimsThatNothingIsPossible() {
        for (int seed = 0; seed < 40; seed++) {
            ChoiceProblem problem = small(seed);
            boolean possible = new Exhaustive(problem).best() != null;
            for (long nodes : new long[] {1, 3, 10}) {
                for (ChoiceProblem.Objective objective : List.of(new LeastCost(), new FewestKinds(Set.of()),
                        new FreePools(new RandomChoice(seed, 3).pools()))) {
                    ChoiceOutcome outcome = ChoiceSolver.solve(problem.with(objective), new ChoiceEffort(nodes, () -> false));
                    assertTrue(!possible || !(outcome instanceof Impossible), "seed " + seed + " " + objective);
                }
            }
        }
    }

    @Test
    void endsWhenCancelled() {
        assertThrows(CancellationException.class,
                () -> ChoiceSolver.solve(new RandomChoice(1, 5).tree(2, 3, 1, false), new ChoiceEffort(1000, () -> true)));
    }
}
