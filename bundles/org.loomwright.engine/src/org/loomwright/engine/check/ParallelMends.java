// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.check.DropBreakdown.Share;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.Ratings;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;

/**
 * Finds cables beside which a second one of the same kind mends a finding, where the practice allows conductors in parallel. Each
 * then carries its equal part; the rule for parallel conductors still holds: with any one lost the rest carry it all.
 */
final class ParallelMends {
    static final String CHOICE = "parallel-share.use";
    static final String FROM = "parallel-share.proposed-from";
    private static final String ALLOWED = "allowed";
    private static final int A_PAIR = 2;

    private final CheckContext context;
    private final Plan plan;

    ParallelMends(CheckContext context) {
        this.context = context;
        plan = context.plan();
    }

    /** Whether a practice allows conductors that share a current. */
    static boolean allowed(Practice practice) {
        return ALLOWED.equals(practice.choice(CHOICE, List.of(ALLOWED, "forbidden")));
    }

    /**
     * A second cable beside the one that loses most, or a second pair where one is not enough, so that a drop keeps a limit.
     *
     * @param limitV permitted drop, V
     */
    Optional<Mend> forDrop(DropBreakdown parts, double limitV) {
        return forDrop(parts, 0, limitV);
    }

    /** The same for a drop that is only partly in the breakdown; {@code restV} is the part beside it, which stays, V. */
    Optional<Mend> forDrop(DropBreakdown parts, double restV, double limitV) {
        if (!allowed(plan.practice())) {
            return Optional.empty();
        }
        List<Integer> cables = cables(parts);
        for (int first = 0; first < cables.size(); first++) {
            double dropV = restV + parts.dropV() - saved(parts, cables.get(first));
            if (!Beyond.above(dropV, limitV)) {
                return Optional.of(mend(List.of(cables.get(first)), dropV, limitV));
            }
        }
        if (cables.size() < A_PAIR) {
            return Optional.empty();
        }
        double dropV = restV + parts.dropV() - saved(parts, cables.get(0)) - saved(parts, cables.get(1));
        return Beyond.above(dropV, limitV) ? Optional.empty() : Optional.of(mend(cables.subList(0, A_PAIR), dropV, limitV));
    }

    /**
     * One cable more beside a conductor's, so that together they are rated for a current.
     *
     * @param rating  rating of the conductor in the case that counts
     * @param neededA current that each would have to be rated for without the one more, A
     */
    Optional<Mend> forRating(int conductor, ConductorRating rating, double neededA) {
        int cable = plan.conductors().get(conductor).cable();
        if (!allowed(plan.practice()) || !canBeDoubled(cable)) {
            return Optional.empty();
        }
        int cores = like(conductor).size();
        // the one more lies along the same runs and is counted there
        int counted = rating.counted() + (plan.cables().get(cable).path().isEmpty() ? 0 : 1);
        double each = Ratings.of(plan.cables().get(cable), plan.conductors().get(conductor).sectionMm2(), rating.ambientC(),
                counted).correctedA();
        double loadA = 0;
        for (SolvedCase solved : context.settled()) {
            loadA = StrictMath.max(loadA, cores * StrictMath.abs(solved.running().conductorA(conductor)));
        }
        if (Beyond.below((cores + 1) * each, cores * neededA) || Beyond.above(loadA, cores * each)) {
            return Optional.empty();
        }
        return Optional.of(new Mend("Lay " + beside(cable) + ": together they are rated for "
                + Quantity.of((cores + 1) * each, "A") + " in these surroundings.", List.of(change(cable))));
    }

    private Mend mend(List<Integer> cables, double dropV, double limitV) {
        return new Mend("Lay " + String.join(" and ", cables.stream().map(this::beside).toList()) + ": the drop becomes "
                + Quantity.of(dropV, "V") + ", permitted are " + Quantity.of(limitV, "V") + ".",
                cables.stream().map(this::change).toList());
    }

    private String beside(int cable) {
        Plan.Cable of = plan.cables().get(cable);
        return "another " + Figures.three(of.sectionMm2()) + " mm2 cable beside " + context.names().shown(of.id());
    }

    private Mend.Change change(int cable) {
        return new Mend.AddParallel(plan.cables().get(cable).id());
    }

    /** Cables of a drop that may be doubled, the one that saves most first. */
    private List<Integer> cables(DropBreakdown parts) {
        List<Integer> cables = new ArrayList<>();
        for (Share share : parts.shares()) {
            int cable = share.part() == Part.CABLE ? plan.conductors().get(share.index()).cable() : -1;
            if (cable >= 0 && !cables.contains(cable) && canBeDoubled(cable)) {
                cables.add(cable);
            }
        }
        cables.sort((a, b) -> Double.compare(saved(parts, b), saved(parts, a)));
        return cables;
    }

    /** Volts that one cable more beside a cable saves: of n alike the drop falls to n / (n + 1). */
    private double saved(DropBreakdown parts, int cable) {
        double volts = 0;
        for (Share share : parts.shares()) {
            boolean conductor = share.part() == Part.CABLE || share.part() == Part.END_JOINTS;
            if (conductor && plan.conductors().get(share.index()).cable() == cable) {
                volts += share.volts() / (like(share.index()).size() + 1);
            }
        }
        return volts;
    }

    /** The conductor and those that share its current. */
    private List<Integer> like(int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        List<Integer> alike = new ArrayList<>();
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor other = plan.conductors().get(c);
            boolean sameEnds = core.a() == other.a() && core.b() == other.b() || core.a() == other.b() && core.b() == other.a();
            if (c == conductor || core.parallelGroup() != null && sameEnds
                    && core.parallelGroup().equals(other.parallelGroup())) {
                alike.add(c);
            }
        }
        return alike;
    }

    private boolean canBeDoubled(int cable) {
        Plan.Cable of = plan.cables().get(cable);
        if (of.existing() || of.sectionMm2() < plan.practice().value(FROM)) {
            return false;
        }
        return plan.conductors().stream().filter(core -> core.cable() == cable)
                .allMatch(core -> hasRoom(core.a()) && hasRoom(core.b()));
    }

    /** A tab or pin takes one conductor; a stud so many lugs. */
    private boolean hasRoom(int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        if ("tab".equals(at.form()) || "pin".equals(at.form()) || "lead".equals(at.form())) {
            return false;
        }
        long lugs = plan.conductors().stream().filter(core -> core.a() == terminal || core.b() == terminal).count()
                + plan.bonds().stream().filter(bond -> bond.a() == terminal || bond.b() == terminal).count();
        double most = at.lugsMax() > 0 ? at.lugsMax() : plan.practice().value(TerminalFitRule.LUGS);
        return lugs + 1 <= most;
    }
}
