// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.GroupCount;
import org.loomwright.engine.heat.LoadedGroup;
import org.loomwright.engine.heat.Ratings;

/**
 * Solves cases. Which conductors count for grouping depends on the currents, and the currents a little on the temperatures
 * that follow from the ratings, so both are found in rounds: first with every conductor at its ambient, then with what the
 * last round loads. After a few rounds a count only grows any more, so that one that would alternate keeps the worse.
 */
public final class CaseSolver {
    private static final int FREE_ROUNDS = 3;
    private static final int MOST_ROUNDS = 8;
    /** A case without an operating point is only shown where it breaks down; finer ratings do not change that. */
    private static final int UNSOLVED_ROUNDS = 1;
    /** Temperatures of cycles within this of each other have settled, K. */
    private static final double SETTLED_K = 0.01;

    private final Plan plan;
    private final GroupCount groups;

    private CaseSolver(Plan plan) {
        this.plan = plan;
        groups = new GroupCount(plan);
    }

    /**
     * Solves one case.
     *
     * @throws CancellationException when the monitor is cancelled
     * @throws IllegalArgumentException when the plan lacks what a network needs; the message names the element
     */
    public static SolvedCase solve(Plan plan, Plan.Case state, Monitor monitor) {
        return new CaseSolver(plan).solve(state, monitor);
    }

    /** Solves all cases of a plan, in its order; see {@link #solve}. */
    public static List<SolvedCase> solveAll(Plan plan, Monitor monitor) {
        CaseSolver solver = new CaseSolver(plan);
        List<SolvedCase> solved = new ArrayList<>(plan.cases().size());
        for (Plan.Case state : plan.cases()) {
            solved.add(solver.solve(state, monitor));
            monitor.worked(1);
        }
        return solved;
    }

    private SolvedCase solve(Plan.Case state, Monitor monitor) {
        CycleHeat cycles = new CycleHeat(plan, state);
        SolvedCase.Solved running = solved(state, NetworkOptions.running(null), monitor);
        SolvedCase.Solved base = base(cycles, state, NetworkOptions.running(null), running, monitor);
        int[] counts = LoadedGroup.counts(plan, state, groups, largestA(running, base));
        List<ConductorRating> ratings = Ratings.of(plan, state, counts);
        double[] heldC = cycles.heldC(running, base, ratings);
        for (int round = 1;; round++) {
            NetworkOptions options = NetworkOptions.running(ratings).heldAt(heldC);
            running = solved(state, options, monitor);
            base = base(cycles, state, options, running, monitor);
            int[] nextCounts = LoadedGroup.counts(plan, state, groups, largestA(running, base));
            if (round > FREE_ROUNDS) {
                for (int i = 0; i < counts.length; i++) {
                    nextCounts[i] = Math.max(nextCounts[i], counts[i]);
                }
            }
            double[] nextC = cycles.heldC(running, base, ratings);
            int last = running.point().status() == OperatingPoint.Status.SOLVED ? MOST_ROUNDS : UNSOLVED_ROUNDS;
            if (round == last || Arrays.equals(counts, nextCounts) && settled(heldC, nextC)) {
                SolvedCase.Solved design = solved(state, NetworkOptions.design(running.at(), running.point()), monitor);
                return new SolvedCase(plan, state, running, base, design, ratings);
            }
            if (!Arrays.equals(counts, nextCounts)) {
                counts = nextCounts;
                ratings = Ratings.of(plan, state, counts);
                nextC = cycles.heldC(running, base, ratings);
            }
            heldC = nextC;
        }
    }

    private SolvedCase.Solved base(CycleHeat cycles, Plan.Case state, NetworkOptions options, SolvedCase.Solved running,
            Monitor monitor) {
        return cycles.duties() ? solved(state, options.variant(NetworkOptions.Variant.BASE), monitor) : running;
    }

    private SolvedCase.Solved solved(Plan.Case state, NetworkOptions options, Monitor monitor) {
        if (monitor.isCanceled()) {
            throw new CancellationException("cancelled while solving " + state.id());
        }
        CaseNetwork at = NetworkBuilder.build(plan, state, options);
        return new SolvedCase.Solved(at, FlowSolver.solve(at.network(), FlowOptions.standard(), monitor));
    }

    private double[] largestA(SolvedCase.Solved running, SolvedCase.Solved base) {
        double[] amps = new double[plan.conductors().size()];
        for (int i = 0; i < amps.length; i++) {
            amps[i] = StrictMath.max(StrictMath.abs(running.conductorA(i)), StrictMath.abs(base.conductorA(i)));
        }
        return amps;
    }

    private static boolean settled(double[] before, double[] now) {
        for (int i = 0; i < now.length; i++) {
            boolean same = Double.isNaN(before[i]) ? Double.isNaN(now[i]) : StrictMath.abs(before[i] - now[i]) <= SETTLED_K;
            if (!same) {
                return false;
            }
        }
        return true;
    }
}
