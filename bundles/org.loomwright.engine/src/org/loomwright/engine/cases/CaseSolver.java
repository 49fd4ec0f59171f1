// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
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

/**
 * Solves cases. Which conductors count for grouping depends on the currents, and the currents a little on the temperatures
 * that follow from the ratings, so both are found in rounds: first with cold conductors, then with what the last round loads
 * and warms. After a few rounds a count only grows any more, so that one that would alternate keeps the worse.
 */
public final class CaseSolver {
    private static final int FREE_ROUNDS = 3;
    private static final int MOST_ROUNDS = 8;
    /** A case without an operating point is only shown where it breaks down; finer ratings do not change that. */
    private static final int UNSOLVED_ROUNDS = 1;

    /** Three figures of the factor are shown; what a design network would still bear is shown nowhere. */
    private static final double EDGE_TOLERANCE = 1e-4;
    private static final double COARSE_EDGE_TOLERANCE = 1e-2;

    private static final FlowOptions WARM = withEdge(FlowOptions.standard(), true, EDGE_TOLERANCE);
    private static final FlowOptions COLD = withEdge(FlowOptions.standard(), false, COARSE_EDGE_TOLERANCE);
    private static final FlowOptions DESIGN = withEdge(FlowOptions.standard(), true, COARSE_EDGE_TOLERANCE);

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
        return solveAll(plan, plan.cases(), monitor);
    }

    /**
     * Solves some cases of a plan, side by side where the machine can: a case takes nothing from another, so the figures are
     * the same, bit for bit, in whatever order they are worked on.
     *
     * @param states cases wanted; the result is in their order
     */
    public static List<SolvedCase> solveAll(Plan plan, List<Plan.Case> states, Monitor monitor) {
        SolvedCase[] solved = new SolvedCase[states.size()];
        IntStream.range(0, states.size()).parallel().forEach(i -> {
            solved[i] = solve(plan, states.get(i), monitor);
            synchronized (monitor) {
                monitor.worked(1);
            }
        });
        return List.of(solved);
    }

    private SolvedCase solve(Plan.Case state, Monitor monitor) {
        CycleHeat cycles = new CycleHeat(plan, state);
        SolvedCase.Solved running = solved(state, NetworkOptions.running(null), COLD, monitor);
        SolvedCase.Solved base = cycles.duties()
                ? solved(state, NetworkOptions.running(null).variant(NetworkOptions.Variant.BASE), COLD, monitor)
                : running;
        LoadedGroup group = new LoadedGroup(plan, state, groups);
        List<ConductorRating> ratings = group.ratings(largestA(running, base));
        double[] peakC = cycles.peakC(running, base, ratings);
        for (int round = 1;; round++) {
            CycleHeat.Warming warming = cycles.warming(peakC, running, ratings);
            running = solved(state, NetworkOptions.running(warming.ratings()).heldAt(warming.heldC()), WARM, monitor);
            base = cycles.duties() ? base(state, ratings, peakC, running, monitor) : running;
            List<ConductorRating> next = group.ratings(largestA(running, base));
            next = round > FREE_ROUNDS ? group.worse(next, ratings) : next;
            double[] nextC = cycles.peakC(running, base, ratings);
            int last = running.point().status() == OperatingPoint.Status.SOLVED ? MOST_ROUNDS : UNSOLVED_ROUNDS;
            boolean sameRatings = next.equals(ratings);
            if (round == last || sameRatings && cycles.settled(running, nextC, ratings)) {
                SolvedCase.Solved design = solved(state, NetworkOptions.design(running.at(), running.point()), DESIGN, monitor);
                return new SolvedCase(plan, state, running, base, design, ratings);
            }
            if (!sameRatings) {
                ratings = next;
                nextC = cycles.peakC(running, base, ratings);
            }
            peakC = nextC;
        }
    }

    /** The network while loads with a duty are off: conductors that warm in cycles as warm as while they are on. */
    private SolvedCase.Solved base(Plan.Case state, List<ConductorRating> ratings, double[] peakC, SolvedCase.Solved running,
            Monitor monitor) {
        double[] heldC = peakC.clone();
        for (int i = 0; i < heldC.length; i++) {
            heldC[i] = Double.isNaN(heldC[i]) ? Double.NaN : running.conductorC(i);
        }
        NetworkOptions options = NetworkOptions.running(ratings).heldAt(heldC).variant(NetworkOptions.Variant.BASE);
        return solved(state, options, WARM, monitor);
    }

    private SolvedCase.Solved solved(Plan.Case state, NetworkOptions options, FlowOptions flow, Monitor monitor) {
        if (monitor.isCanceled()) {
            throw new CancellationException("cancelled while solving " + state.id());
        }
        CaseNetwork at = NetworkBuilder.build(plan, state, options);
        return new SolvedCase.Solved(at, FlowSolver.solve(at.network(), flow, monitor));
    }

    private double[] largestA(SolvedCase.Solved running, SolvedCase.Solved base) {
        double[] amps = new double[plan.conductors().size()];
        for (int i = 0; i < amps.length; i++) {
            amps[i] = StrictMath.max(StrictMath.abs(running.conductorA(i)), StrictMath.abs(base.conductorA(i)));
        }
        return amps;
    }

    private static FlowOptions withEdge(FlowOptions as, boolean feedback, double scaleTolerance) {
        return new FlowOptions(feedback, as.loadScale(), as.floorV(), as.smallestOhm(), as.highestC(),
                feedback ? as.relativeTolerance() : 1e-6, as.newtonSteps(), as.stateChanges(), scaleTolerance);
    }
}
