// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Cores that share a current have the same section, and when any one of them is lost the rest carry the whole within their
 * ratings; the current then parts by conductance.
 */
final class ParallelShareRule implements Rule {

    @Override
    public String slug() {
        return "parallel-share";
    }

    @Override
    public String says() {
        return "Cores that share a current are alike, and with any one lost the rest carry it within their ratings.";
    }

    @Override
    public List<String> limits() {
        return List.of(ParallelMends.CHOICE, ParallelMends.FROM);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (List<Integer> group : groups(context.plan()).values()) {
            if (group.size() < 2) {
                continue;
            }
            if (!ParallelMends.allowed(context.practice())) {
                findings.add(forbidden(context, group));
            }
            unequal(context, group, findings);
            for (SolvedCase solved : context.settled()) {
                lost(context, solved, group, findings);
            }
        }
        return findings;
    }

    private static Map<List<Object>, List<Integer>> groups(Plan plan) {
        Map<List<Object>, List<Integer>> groups = new LinkedHashMap<>();
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor core = plan.conductors().get(c);
            if (core.parallelGroup() != null) {
                List<Object> key = List.of(core.parallelGroup(), StrictMath.min(core.a(), core.b()),
                        StrictMath.max(core.a(), core.b()));
                groups.computeIfAbsent(key, k -> new ArrayList<>()).add(c);
            }
        }
        return groups;
    }

    private Finding forbidden(CheckContext context, List<Integer> group) {
        Practice.Choice choice = context.practice().choices().get(ParallelMends.CHOICE);
        Quantity is = Quantity.of(group.size(), "1");
        Quantity wanted = Quantity.of(1, "1");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(group.get(0)),
                context.names().shownConductor(group.get(0)) + " is one of " + group.size()
                        + " cores that share a current, which the practice does not allow")
                .figures(is, wanted)
                .because(choice.name() + " of the practice is " + choice.value() + " (" + choice.source() + ").");
        group.subList(1, group.size()).forEach(c -> builder.causedBy(context.names().conductor(c), "core beside it", null));
        return builder.mend(Mend.inWords("Lay one cable of the section that carries it all.")).build();
    }

    private void unequal(CheckContext context, List<Integer> group, List<Finding> findings) {
        Plan.Conductor first = context.plan().conductors().get(group.get(0));
        for (int c : group.subList(1, group.size())) {
            Plan.Conductor core = context.plan().conductors().get(c);
            if (core.sectionMm2() != first.sectionMm2()) {
                Quantity is = Quantity.of(core.sectionMm2(), "mm2");
                Quantity wanted = Quantity.of(first.sectionMm2(), "mm2");
                findings.add(Finding.of(slug(), Severity.ERROR, context.names().conductor(c),
                        context.names().shownConductor(c) + " has " + is + " beside " + wanted + " of "
                                + context.names().shownConductor(group.get(0)) + "; cores in parallel must be alike")
                        .figures(is, wanted)
                        .because("Unlike cores do not share the current as their ratings do.")
                        .causedBy(context.names().conductor(group.get(0)), "core beside it", wanted).build());
            }
        }
    }

    private void lost(CheckContext context, SolvedCase solved, List<Integer> group, List<Finding> findings) {
        double total = 0;
        double siemens = 0;
        for (int c : group) {
            Plan.Conductor core = context.plan().conductors().get(c);
            total += solved.running().conductorA(c) * (core.a() == context.plan().conductors().get(group.get(0)).a() ? 1 : -1);
            siemens += 1 / ohm(context.plan(), c);
        }
        total = StrictMath.abs(total);
        for (int c : group) {
            double worst = 0;
            int gone = -1;
            for (int other : group) {
                double amps = other == c ? 0 : total / ohm(context.plan(), c) / (siemens - 1 / ohm(context.plan(), other));
                if (amps > worst) {
                    worst = amps;
                    gone = other;
                }
            }
            double ratedA = solved.ratings().get(c).correctedA();
            if (Beyond.above(worst, ratedA)) {
                findings.add(finding(context, solved, c, gone, total, worst, ratedA));
            }
        }
    }

    private Finding finding(CheckContext context, SolvedCase solved, int conductor, int gone, double total, double amps,
            double ratedA) {
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(ratedA, "A");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(conductor),
                context.names().shownConductor(conductor) + " would carry " + is + " with "
                        + context.names().shownConductor(gone) + " lost, rated for " + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because("Together they carry " + Quantity.of(total, "A") + "; a lost core is not noticed.")
                .causedBy(context.names().conductor(gone), "core that may be lost", null)
                .derived(new Derivation("current with one core lost", is, "Itotal x G / (sum of G of those left)",
                        List.of(new Derivation.Input("Itotal", Quantity.of(total, "A"), "operating point of the case"),
                                new Derivation.Input("1/G", Quantity.of(1000 * ohm(context.plan(), conductor), "mohm"),
                                        context.names().conductor(conductor))),
                        "IEC 60364-4-43 (recalled), Ohm's law"));
        new SectionMends(context.plan(), context.names()).forRating(conductor, solved.ratings().get(conductor), amps)
                .ifPresent(builder::mend);
        return builder.build();
    }

    private static double ohm(Plan plan, int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        return core.r20MaxOhmPerM() * plan.cables().get(core.cable()).lengthMm() / 1000 + core.jointsOhm();
    }
}
