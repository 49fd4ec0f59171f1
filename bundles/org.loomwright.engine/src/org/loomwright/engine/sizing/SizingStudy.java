// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.DesignFigures;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/**
 * Sections and ratings, chosen together: a feeder shared by ten loads and their ten branch cables share one budget.
 *
 * <p>The network is solved with the largest of all options; that gives currents and, with them, the demands on every option as a
 * problem of choice, whose least cost is found with proof. The choice is put to the flow solver and the check. What they find is
 * learnt, and the problem solved again with the currents of the new choice, until a choice comes out that was put to the check
 * already. In a tree with the constant currents of the drop network the demands do not change between rounds; elsewhere the proof
 * holds for the demands at the currents of the last round.
 */
public final class SizingStudy {
    /** Rules that sections and ratings answer for. */
    public static final Set<String> RULES = Set.of("drop-class", "load-undervolt", "start-dip", "charge-path-drop",
            "relay-pull-in", "conductor-hot", "section-min", "parallel-share", "device-rating", "overload-band",
            "short-withstand", "fault-clears", "return-protected", "breaking-capacity", "device-loading", "inrush-margin",
            "selectivity", "terminal-fit", "cutout-sense", "case-earth");
    private static final int MOST_ROUNDS = 20;
    /** From here on what a round demanded is kept beside what the next demands. */
    private static final int KEEPING_ROUND = 6;

    private final Plan plan;
    private final List<AssemblyProblem> problems;
    private final SizingOptions options;
    private final Monitor monitor;
    private final OpenItems open;
    private final Objectives objectives;
    private final GroupMemory groups = new GroupMemory();
    private final OptionRatings ratings = new OptionRatings();
    private final Cuts cuts;
    private final Set<String> given = new LinkedHashSet<>();

    private SizingStudy(Plan plan, List<AssemblyProblem> problems, SizingOptions options, Monitor monitor) {
        this.plan = plan;
        this.options = options;
        this.monitor = monitor;
        open = OpenItems.of(plan, options);
        Set<String> sized = new LinkedHashSet<>();
        open.cables().forEach(item -> item.cables().forEach(w -> sized.add(plan.cables().get(w).id())));
        this.problems = problems.stream().filter(problem -> !sized.contains(problem.element())).toList();
        objectives = new Objectives(plan, open, options);
        cuts = new Cuts(open);
    }

    /**
     * Sizes a plan.
     *
     * @param plan     the plan
     * @param problems what could not be assembled
     * @throws java.util.concurrent.CancellationException when the monitor is cancelled
     * @throws org.loomwright.engine.assembly.Practice.MissingLimitException when the practice lacks a limit
     */
    public static SizingResult run(Plan plan, List<AssemblyProblem> problems, SizingOptions options, Monitor monitor) {
        return new SizingStudy(plan, problems, options, monitor).run();
    }

    /** Sizes what was assembled; a way in which nothing is fitted, though a cable leads away from it, gets its protector too. */
    public static SizingResult run(AssemblyResult assembled, SizingOptions options, Monitor monitor) {
        FilledWays filled = new FilledWays(assembled);
        return filled.told(run(filled.plan(), assembled.problems(), options, monitor), monitor);
    }

    private SizingResult run() {
        int[] choice = new int[open.size()];
        for (int i = 0; i < choice.length; i++) {
            choice[i] = open.options(i) - 1;
        }
        CheckContext context = solved(choice);
        List<Finding> findings = List.of();
        Design kept = new Design(open);
        Set<List<Integer>> tried = new LinkedHashSet<>();
        for (int round = 1;; round++) {
            Design design = DesignLimits.of(context, open, groups, ratings);
            design.addAll(cuts.design());
            if (round > KEEPING_ROUND) {
                keep(kept, design, round);
                design.addAll(kept);
            }
            DesignChoice.Solved best = new DesignChoice(design, objectives, given, monitor).best();
            // what was put to the check already is not put to it again: there is nothing new in it to be learnt
            boolean same = round > 1 && Arrays.equals(best.options(), choice);
            boolean learnt = false;
            boolean known = false;
            if (!same) {
                choice = best.options();
                context = solved(choice);
                findings = findings(context);
                learnt = cuts.learn(context, choice, findings);
                known = !tried.add(Arrays.stream(choice).boxed().toList());
            }
            monitor.worked(1);
            if (same || !learnt && known && findings.isEmpty() || round == MOST_ROUNDS) {
                return new SizingReport(plan, open, objectives, options, design, context, findings, given, monitor)
                        .result(best, round);
            }
        }
    }

    /** What earlier rounds demanded, under names of their own. */
    private static void keep(Design kept, Design design, int round) {
        design.limits().forEach((id, limit) -> {
            Map<Integer, double[]> values = new LinkedHashMap<>();
            limit.terms().forEach(term -> values.put(term.item(),
                    term.values().stream().mapToDouble(Double::doubleValue).toArray()));
            if (!id.contains(" round ")) {
                kept.limit(id + " round " + round, limit.atMost(), values, design.meaning(id));
            }
        });
    }

    private CheckContext solved(int[] choice) {
        Plan sized = SizedPlan.of(plan, open, choice);
        List<SolvedCase> cases = CaseSolver.solveAll(sized, monitor);
        cases.forEach(groups::see);
        CheckContext context = new CheckContext(sized, cases, NetFinder.find(sized), problems, new SharedStudies(monitor));
        // needed in any case, worked out beside what does not need it
        ForkJoinPool.commonPool().execute(context::protection);
        return context;
    }

    private List<Finding> findings(CheckContext context) {
        List<Finding> all = new ArrayList<>();
        for (Finding finding : DesignFigures.findings(context, RULES, monitor)) {
            if (finding.accepted() == null && finding.severity() != Severity.NOTE) {
                all.add(finding);
            }
        }
        return all;
    }
}
