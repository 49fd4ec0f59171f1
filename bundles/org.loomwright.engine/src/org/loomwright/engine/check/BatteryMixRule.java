// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Batteries in one bank are of one chemistry, in series also of one capacity; side by side they share the current by their
 * capacity, and at rest little flows between them. The share counts where all of them give or all take, at the same charge,
 * and the bank's current is large enough to matter: above the idle share of its capacity. Cranking lasts seconds and is left
 * out.
 */
final class BatteryMixRule implements Rule {
    private static final String SHARE = "battery-mix.share";
    private static final String IDLE = "battery-mix.idle";

    @Override
    public String slug() {
        return "battery-mix";
    }

    @Override
    public String says() {
        return "Batteries of one bank are alike, share the current, and do not charge each other at rest.";
    }

    @Override
    public List<String> limits() {
        return List.of(SHARE, IDLE);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        BatteryBanks banks = BatteryBanks.of(context.plan());
        banks.branches().forEach(branch -> series(context, branch, findings));
        for (List<List<Integer>> bank : banks.banks()) {
            chemistry(context, bank, findings);
            for (SolvedCase solved : context.settled()) {
                if (!"cranking".equals(solved.state().kind())) {
                    share(context, solved, bank, findings);
                    idle(context, solved, bank, findings);
                }
            }
        }
        return findings;
    }

    private static Plan.Cell cell(CheckContext context, int e) {
        return (Plan.Cell) context.plan().elements().get(e);
    }

    private void series(CheckContext context, List<Integer> branch, List<Finding> findings) {
        Plan.Cell top = cell(context, branch.get(0));
        for (int e : branch) {
            Plan.Cell other = cell(context, e);
            boolean capacity = Beyond.above(other.capacityAh(), top.capacityAh()) || Beyond.below(other.capacityAh(),
                    top.capacityAh());
            if (!other.chemistry().equals(top.chemistry())) {
                findings.add(unlike(context, branch.get(0), e, "in series"));
            } else if (capacity) {
                String id = context.names().element(e);
                Quantity is = Quantity.of(other.capacityAh(), "Ah");
                Quantity wanted = Quantity.of(top.capacityAh(), "Ah");
                findings.add(Finding.of(slug(), Severity.ERROR, id, "Battery " + context.names().shown(id) + " of " + is
                        + " is in series with " + context.names().shown(context.names().element(branch.get(0))) + " of " + wanted)
                        .figures(is, wanted)
                        .because("The smaller one is empty and reversed while the larger still gives, and overcharged on the "
                        + "way back.")
                        .causedBy(context.names().element(branch.get(0)), "other battery of the pair", wanted)
                        .mend(Mend.inWords("Put batteries of one type and age in series.")).build());
            }
        }
    }

    private void chemistry(CheckContext context, List<List<Integer>> bank, List<Finding> findings) {
        int first = bank.get(0).get(0);
        for (List<Integer> branch : bank) {
            if (!cell(context, branch.get(0)).chemistry().equals(cell(context, first).chemistry())) {
                findings.add(unlike(context, first, branch.get(0), "side by side"));
            }
        }
    }

    private Finding unlike(CheckContext context, int first, int other, String how) {
        String id = context.names().element(other);
        String firstId = context.names().element(first);
        String firstShown = context.names().shown(firstId) + " (" + cell(context, first).chemistry() + ")";
        String otherShown = context.names().shown(id) + " (" + cell(context, other).chemistry() + ")";
        return Finding.of(slug(), Severity.ERROR, id, "Battery " + otherShown + " and " + firstShown + " are " + how)
                .because("They want different charging voltages and rest at different ones: one is never full or one is "
                + "overcharged.")
                .causedBy(firstId, "of another chemistry", null)
                .mend(Mend.inWords("Use one chemistry in the bank, or part them by a charging converter.")).build();
    }

    private void share(CheckContext context, SolvedCase solved, List<List<Integer>> bank, List<Finding> findings) {
        Practice.Limit limit = context.practice().limit(SHARE);
        double sumA = 0;
        double sumAh = 0;
        boolean sameWay = true;
        for (List<Integer> branch : bank) {
            double amps = solved.running().elementA(branch.get(0));
            sameWay &= sumA * amps >= 0;
            sumA += amps;
            sumAh += cell(context, branch.get(0)).capacityAh();
        }
        if (!sameWay || !sameCharge(solved, bank) || !(StrictMath.abs(sumA) > context.practice().value(IDLE) * sumAh)) {
            return;
        }
        for (List<Integer> branch : bank) {
            double amps = solved.running().elementA(branch.get(0));
            double capacityAh = cell(context, branch.get(0)).capacityAh();
            double ratio = amps / sumA / (capacityAh / sumAh);
            if (Beyond.above(ratio, limit.value())) {
                String id = context.names().element(branch.get(0));
                Quantity is = Quantity.of(ratio, "1");
                findings.add(Finding.of(slug(), Severity.WARNING, id, "Battery " + context.names().shown(id) + " carries " + is
                        + " times its share of the bank's current, " + Quantity.of(StrictMath.abs(amps), "A") + " of "
                        + Quantity.of(StrictMath.abs(sumA), "A"))
                        .inCase(solved.state().name()).figures(is, Quantity.of(limit.value(), "1"))
                        .because("Its cables, or the battery itself, have less resistance than those beside it; it is worn "
                        + "out first.")
                        .mend(Mend.inWords("Lead cables of equal length from each battery to the bars, or take plus at one "
                        + "end of the bank and "
                                + "minus at the other."))
                        .derived(new Derivation("share of the battery", is, "(I / Isum) / (C / Csum)", List.of(
                                new Derivation.Input("I", Quantity.of(StrictMath.abs(amps), "A"), id),
                                new Derivation.Input("Isum", Quantity.of(StrictMath.abs(sumA), "A"), "batteries of the bank"),
                                new Derivation.Input("C", Quantity.of(capacityAh, "Ah"), id),
                                new Derivation.Input("Csum", Quantity.of(sumAh, "Ah"), "batteries of the bank")), limit.source()))
                        .build());
            }
        }
    }

    private static boolean sameCharge(SolvedCase solved, List<List<Integer>> bank) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Plan.CellState state : solved.state().cells()) {
            if (bank.stream().anyMatch(branch -> branch.contains(state.cell()))) {
                least = StrictMath.min(least, state.charge());
                most = StrictMath.max(most, state.charge());
            }
        }
        return !Beyond.above(most, least);
    }

    private void idle(CheckContext context, SolvedCase solved, List<List<Integer>> bank, List<Finding> findings) {
        Practice.Limit limit = context.practice().limit(IDLE);
        double givenA = 0;
        for (List<Integer> branch : bank) {
            givenA += StrictMath.max(0, -solved.running().elementA(branch.get(0)));
        }
        for (List<Integer> branch : bank) {
            double amps = StrictMath.min(givenA, solved.running().elementA(branch.get(0)));
            double limitA = limit.value() * cell(context, branch.get(0)).capacityAh();
            if (!solved.state().engineRunning() && Beyond.above(amps, limitA)) {
                String id = context.names().element(branch.get(0));
                Quantity is = Quantity.of(amps, "A");
                Quantity wanted = Quantity.of(limitA, "A");
                findings.add(Finding.of(slug(), Severity.WARNING, id, "Battery " + context.names().shown(id)
                        + " is charged with " + is
                        + " by those beside it, " + wanted + " at most at rest")
                        .inCase(solved.state().name()).figures(is, wanted)
                        .because("Their open-circuit voltages differ; the bank discharges itself in circles.")
                        .mend(Mend.inWords("Bring them to the same charge before joining them, and use batteries of one type "
                        + "and age."))
                        .derived(new Derivation("permitted current between batteries", wanted, "share x C", List.of(
                                new Derivation.Input("share", Quantity.of(limit.value(), limit.unit()), limit.name() + ", "
                                + limit.source()),
                                new Derivation.Input("C", Quantity.of(cell(context, branch.get(0)).capacityAh(), "Ah"), id)),
                                limit.source())).build());
            }
        }
    }
}
