// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * One strap lost in one case, without the rest of the earth study: the state at the moment of the loss, conductors as warm as
 * before.
 *
 * @param after   the case with the strap open; its design network and ratings are those from before
 * @param harmful something is harmed, or a large current is left without a declared way
 * @param told    what it comes to, a sentence each, what a person would notice first
 * @param more    ids of the elements that carry more than before, as findings name them
 */
public record StrapLoss(SolvedCase after, boolean harmful, List<String> told, Set<String> more) {
    public StrapLoss {
        told = List.copyOf(told);
        more = Set.copyOf(more);
    }

    /**
     * Takes the strap out.
     *
     * @param context plan and names; the plan is that of the case
     * @param bond    bond of the plan
     * @throws CancellationException when the monitor is cancelled
     */
    public static StrapLoss of(CheckContext context, SolvedCase solved, int bond, Monitor monitor) {
        LossSolver solver = new LossSolver(monitor);
        List<Integer> bonds = List.of(bond);
        SolvedCase.Solved running = solver.running(solved, bonds);
        SolvedCase.Solved base = solved.base() == solved.running() ? running : solver.base(solved, bonds);
        SolvedCase after = new SolvedCase(solved.plan(), solved.state(), running, base, solved.design(), solved.ratings());
        if (solved.running().point().status() != OperatingPoint.Status.SOLVED) {
            return new StrapLoss(after, false, List.of("The case has no operating point with the strap either."), Set.of());
        }
        if (LossEffects.carriedA(solved, bonds) <= StrapLoads.NOTHING_A) {
            return new StrapLoss(after, false, List.of("Nothing changes: it carries nothing in this case."), Set.of());
        }
        return told(context, solved, after, solver, bonds);
    }

    private static StrapLoss told(CheckContext context, SolvedCase solved, SolvedCase after, LossSolver solver,
            List<Integer> bonds) {
        Plan plan = context.plan();
        int minus = StructureLevels.minus(plan, solved);
        LossCase loss = new LossEffects(plan, new PlanItems(plan, context.names()), solver, minus).of(solved,
                new EarthNetwork(plan, solved.running(), minus), bonds);
        LossWords words = new LossWords(plan, new EarthNames(plan, context.names()));
        List<String> told = new ArrayList<>();
        told.add(words.symptom(loss.rank(), bonds, loss, List.of()));
        told.add(words.way(loss));
        loss.hot().stream().skip(loss.rank().compareTo(LossRank.OVERLOADS) <= 0 ? 1 : 0)
                .forEach(part -> told.add(sentence(words.hot(part))));
        told.addAll(words.moved(loss));
        Set<String> more = new LinkedHashSet<>();
        loss.detours().forEach(detour -> more.add(detour.element()));
        loss.path().forEach(detour -> more.add(detour.element()));
        return new StrapLoss(after, loss.rank().harmful(), told, more);
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
