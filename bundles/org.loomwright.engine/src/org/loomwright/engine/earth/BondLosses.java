// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;

/**
 * Takes out one strap at a time, then two at a time among those that carry a share of the return current. A case in which none of
 * them carries anything stays as it is and is left out: taking out what carries nothing changes nothing.
 */
final class BondLosses {
    static final String PAIRS_SHARE = "bond-loss.pairs-share";
    static final String PAIRS_MAX = "bond-loss.pairs-max";
    private static final Comparator<LossRow> WORST_FIRST = Comparator.comparing(LossRow::rank)
            .thenComparing(Comparator.comparingDouble((LossRow row) -> row.worst() == null ? 0
                    : row.worst().weight()).reversed());

    private final Plan plan;
    private final List<SolvedCase> cases;
    private final List<EarthNetwork> networks;
    private final LossEffects effects;
    private final FaultClearing clearing;
    private final LossWords words;
    private final Monitor monitor;

    BondLosses(Plan plan, List<SolvedCase> cases, List<EarthNetwork> networks, LossEffects effects, FaultClearing clearing,
            LossWords words, Monitor monitor) {
        this.plan = plan;
        this.cases = cases;
        this.networks = networks;
        this.effects = effects;
        this.clearing = clearing;
        this.words = words;
        this.monitor = monitor;
    }

    /** Each strap lost, in the plan's order. */
    List<LossRow> singles() {
        List<LossRow> rows = new ArrayList<>();
        for (int b = 0; b < plan.bonds().size(); b++) {
            rows.add(row(List.of(b)));
            monitor.worked(1);
        }
        return rows;
    }

    /** Pairs that are harmful and worse than either alone, in the plan's order. */
    List<LossRow> pairs(List<LossRow> singles) {
        List<Integer> matter = mattering(singles);
        List<LossRow> rows = new ArrayList<>();
        for (int i = 0; i < matter.size(); i++) {
            for (int j = i + 1; j < matter.size(); j++) {
                LossRow row = row(List.of(matter.get(i), matter.get(j)));
                if (row.rank().harmful() && worse(row, singles.get(matter.get(i)), singles.get(matter.get(j)))) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    /** The worst first; of like ones the plan's first. */
    static List<LossRow> ranked(List<LossRow> rows) {
        return rows.stream().sorted(WORST_FIRST).toList();
    }

    private LossRow row(List<Integer> bonds) {
        List<LossCase> found = new ArrayList<>();
        LossCase worst = null;
        for (int k = 0; k < cases.size(); k++) {
            if (monitor.isCanceled()) {
                throw new CancellationException("cancelled while taking out straps");
            }
            if (LossEffects.carriedA(cases.get(k), bonds) > StrapLoads.NOTHING_A) {
                LossCase each = effects.of(cases.get(k), networks.get(k), bonds);
                found.add(each);
                worst = worst == null || worse(each, worst) ? each : worst;
            }
        }
        List<LossRow.Uncleared> uncleared = clearing.without(bonds);
        LossRank rank = worst == null ? LossRank.IDLE : worst.rank();
        if (!uncleared.isEmpty() && LossRank.DOES_NOT_CLEAR.compareTo(rank) < 0) {
            rank = LossRank.DOES_NOT_CLEAR;
        }
        return new LossRow(bonds, found, uncleared, rank, worst, words.symptom(rank, bonds, worst, uncleared));
    }

    private static boolean worse(LossCase a, LossCase b) {
        int rank = a.rank().compareTo(b.rank());
        return rank != 0 ? rank < 0 : a.weight() > b.weight();
    }

    /** Worse than either alone: in rank, or in what gets hot that stays cool when either is lost alone. */
    private static boolean worse(LossRow pair, LossRow first, LossRow second) {
        if (pair.rank().compareTo(first.rank()) < 0 && pair.rank().compareTo(second.rank()) < 0) {
            return true;
        }
        Set<String> alone = new HashSet<>(hot(first));
        alone.addAll(hot(second));
        return !alone.containsAll(hot(pair));
    }

    private static Set<String> hot(LossRow row) {
        return row.cases().stream().flatMap(each -> each.hot().stream()).map(part -> part.detour().element())
                .collect(Collectors.toSet());
    }

    /**
     * Straps with more than the practice's share of the largest strap current of a case, no more than it says. One whose ends
     * nothing else joins lies on no closed way: its loss changes nothing for the detours of others, so it is left out.
     */
    private List<Integer> mattering(List<LossRow> singles) {
        double[] share = new double[plan.bonds().size()];
        for (SolvedCase solved : cases) {
            double largest = 0;
            for (int b = 0; b < share.length; b++) {
                largest = StrictMath.max(largest, LossEffects.carriedA(solved, List.of(b)));
            }
            for (int b = 0; b < share.length && largest > StrapLoads.NOTHING_A; b++) {
                share[b] = StrictMath.max(share[b], LossEffects.carriedA(solved, List.of(b)) / largest);
            }
        }
        List<Integer> matter = new ArrayList<>();
        for (int b = 0; b < share.length; b++) {
            boolean alone = singles.get(b).cases().stream().allMatch(each -> each.strandedA() > 0);
            if (!alone && share[b] > plan.practice().value(PAIRS_SHARE)) {
                matter.add(b);
            }
        }
        matter.sort(Comparator.comparingDouble((Integer b) -> share[b]).reversed());
        int most = (int) plan.practice().value(PAIRS_MAX);
        return matter.subList(0, StrictMath.min(most, matter.size())).stream().sorted().toList();
    }
}
