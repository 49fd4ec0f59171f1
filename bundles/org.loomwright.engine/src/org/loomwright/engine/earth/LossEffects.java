// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.earth.LossCase.BodyShift;
import org.loomwright.engine.earth.LossCase.Detour;
import org.loomwright.engine.earth.LossCase.HotPart;
import org.loomwright.engine.earth.LossCase.LostLoad;
import org.loomwright.engine.flow.OperatingPoint;

/** What one case comes to without some straps, compared with the same case with them. */
final class LossEffects {
    static final String STRANDED = "bond-loss.stranded";
    /** Moves of a body below this are not told, V. */
    private static final double TOLD_V = 1e-3;

    private final Plan plan;
    private final PlanItems items;
    private final LossSolver solver;
    private final LossHeat heat;
    private final LossFunctions functions;
    private final int minus;

    LossEffects(Plan plan, PlanItems items, LossSolver solver, int minus) {
        this.plan = plan;
        this.items = items;
        this.solver = solver;
        this.minus = minus;
        heat = new LossHeat(plan);
        functions = new LossFunctions(plan);
    }

    /** The loss of some bonds in a case that has an operating point with them. */
    LossCase of(SolvedCase solved, EarthNetwork before, List<Integer> bonds) {
        EarthNetwork after = new EarthNetwork(plan, solver.running(solved, bonds), minus);
        OperatingPoint.Status status = after.solved().point().status();
        boolean settled = status == OperatingPoint.Status.SOLVED;
        double carriedA = carriedA(solved, bonds);
        LossDetours ways = new LossDetours(plan, items, before, after, solved.ratings(), carriedA);
        List<Detour> detours = settled ? ways.all() : List.of();
        List<HotPart> hot = heat.of(solved, detours, once(() -> solver.base(solved, bonds)));
        List<Detour> path = settled ? ways.path(largest(solved, bonds)) : List.of();
        double strandedA = strandedA(solved, after, bonds);
        List<LostLoad> loads = functions.loads(solved, after);
        List<Integer> sources = functions.sources(solved, after);
        LossRank rank = rank(hot, strandedA, !loads.isEmpty() || !sources.isEmpty() || !settled);
        double weight = rank == LossRank.BURNS || rank == LossRank.OVERLOADS ? hot.get(0).times()
                : rank == LossRank.STRANDS ? strandedA : carriedA;
        return new LossCase(solved.state().name(), BodyLevels.cranking(solved.state()), status, carriedA, strandedA, path,
                detours, hot, settled ? shifts(before, after) : List.of(), loads, sources, rank, weight);
    }

    /** What the largest of some bonds carries in a case, A. */
    static double carriedA(SolvedCase solved, List<Integer> bonds) {
        return amps(solved, largest(solved, bonds));
    }

    private static int largest(SolvedCase solved, List<Integer> bonds) {
        int largest = bonds.get(0);
        for (int bond : bonds) {
            largest = amps(solved, bond) > amps(solved, largest) ? bond : largest;
        }
        return largest;
    }

    private static double amps(SolvedCase solved, int bond) {
        return StrictMath.abs(solved.running().itemA(solved.running().at().bondItem()[bond]));
    }

    /** The largest current that the bonds together took out of a part that nothing joins with their other ends now, A. */
    private double strandedA(SolvedCase solved, EarthNetwork after, List<Integer> bonds) {
        double stranded = 0;
        int[] nodes = after.solved().at().terminalNode();
        for (int bond : bonds) {
            Plan.Bond lost = plan.bonds().get(bond);
            boolean[] part = after.reach(nodes[lost.a()]);
            if (!part[nodes[lost.b()]]) {
                stranded = StrictMath.max(stranded, StrictMath.max(crossing(solved, nodes, part, bonds),
                        crossing(solved, nodes, after.reach(nodes[lost.b()]), bonds)));
            }
        }
        return stranded;
    }

    /** What the bonds together took out of a part before, A. */
    private double crossing(SolvedCase solved, int[] nodes, boolean[] part, List<Integer> bonds) {
        double sum = 0;
        for (int bond : bonds) {
            Plan.Bond lost = plan.bonds().get(bond);
            double amps = solved.running().itemA(solved.running().at().bondItem()[bond]);
            sum += (part[nodes[lost.a()]] ? amps : 0) - (part[nodes[lost.b()]] ? amps : 0);
        }
        return StrictMath.abs(sum);
    }

    private LossRank rank(List<HotPart> hot, double strandedA, boolean stops) {
        if (!hot.isEmpty()) {
            return hot.get(0).burns() ? LossRank.BURNS : LossRank.OVERLOADS;
        }
        return strandedA >= plan.practice().value(STRANDED) ? LossRank.STRANDS : stops ? LossRank.STOPS : LossRank.BEARS;
    }

    private List<BodyShift> shifts(EarthNetwork before, EarthNetwork after) {
        List<BodyShift> shifts = new ArrayList<>();
        for (int body = 0; body < plan.bodies().size(); body++) {
            BodyShift shift = new BodyShift(body, before.bodyV(body), after.bodyV(body));
            if (!Double.isNaN(shift.beforeV()) && shift.moveV() > TOLD_V) {
                shifts.add(shift);
            }
        }
        shifts.sort((a, b) -> Double.compare(b.moveV(), a.moveV()));
        return shifts;
    }

    private static Supplier<SolvedCase.Solved> once(Supplier<SolvedCase.Solved> maker) {
        SolvedCase.Solved[] made = new SolvedCase.Solved[1];
        return () -> {
            if (made[0] == null) {
                made[0] = maker.get();
            }
            return made[0];
        };
    }
}
