// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * An under-voltage cut-out senses the battery's voltage, not that of a lossy feed, and its two voltages lie further apart
 * than the sensed voltage rises when it opens: by its own current times the resistance of feed and battery. Else it switches
 * on and off without end.
 */
final class CutoutSenseRule implements Rule {
    private static final String DROP = "cutout-sense.drop";

    @Override
    public String slug() {
        return "cutout-sense";
    }

    @Override
    public String says() {
        return "A cut-out senses the battery's voltage, and its two voltages lie far enough apart.";
    }

    @Override
    public List<String> limits() {
        return List.of(DROP);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Plan plan = context.plan();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Contact contact && "threshold".equals(contact.driver())
                    && contact.drivenBy() >= 0 && "cutOut".equals(plan.devices().get(contact.device()).kind())
                    && plan.elements().get(contact.drivenBy()) instanceof Plan.Threshold threshold && threshold.plus() >= 0
                    && threshold.minus() >= 0) {
                for (SolvedCase solved : context.settled()) {
                    check(context, solved, e, threshold, findings);
                }
            }
        }
        return findings;
    }

    private void check(CheckContext context, SolvedCase solved, int contact, Plan.Threshold threshold, List<Finding> findings) {
        double amps = StrictMath.abs(solved.running().elementA(contact));
        int battery = amps > 0 ? battery(context, solved, threshold) : -1;
        if (battery < 0) {
            return;
        }
        double dropV = lostV(solved, (Plan.Cell) context.plan().elements().get(battery), threshold);
        Practice.Limit limit = context.practice().limit(DROP);
        if (Beyond.above(dropV, limit.value())) {
            findings.add(far(context, solved, contact, threshold, battery, dropV, limit));
        }
        double ownOhm = innerOhm(solved, battery);
        double riseV = StrictMath.max(0, dropV) + amps * ownOhm;
        double gapV = StrictMath.abs(threshold.onAt() - threshold.offAt());
        if (Beyond.above(riseV, gapV)) {
            findings.add(narrow(context, solved, contact, battery, new Rise(riseV, gapV, dropV, amps, ownOhm)));
        }
    }

    private record Rise(double riseV, double gapV, double dropV, double amps, double ownOhm) {
    }

    /** Discharging battery joined with the sense point by closed paths, the one with the least loss between. */
    private static int battery(CheckContext context, SolvedCase solved, Plan.Threshold threshold) {
        LivePaths live = LivePaths.of(context.plan(), solved.running());
        int[] node = solved.running().at().terminalNode();
        int best = -1;
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Cell cell && solved.running().elementA(e) < 0
                    && live.joined(node[threshold.plus()], node[cell.a()]) && live.joined(node[threshold.minus()], node[cell.b()])
                    && (best < 0 || lostV(solved, cell, threshold) < lostV(solved,
                            (Plan.Cell) context.plan().elements().get(best), threshold))) {
                best = e;
            }
        }
        return best;
    }

    private static double lostV(SolvedCase solved, Plan.Cell battery, Plan.Threshold threshold) {
        return solved.running().voltage(battery.a(), battery.b())
                - solved.running().voltage(threshold.plus(), threshold.minus());
    }

    private static double innerOhm(SolvedCase solved, int battery) {
        int item = solved.running().at().elementItem()[battery];
        return solved.running().at().network().items().get(item) instanceof Network.Emf emf ? emf.ohm() : 0;
    }

    private Finding far(CheckContext context, SolvedCase solved, int contact, Plan.Threshold threshold, int battery,
            double dropV, Practice.Limit limit) {
        Quantity is = Quantity.of(dropV, "V");
        Quantity wanted = Quantity.of(limit.value(), "V");
        String id = context.names().element(contact);
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, id, "Cut-out " + context.names().shown(id) + " senses " + is
                + " less than battery " + context.names().shown(context.names().element(battery)) + " has, " + wanted
                + " at most")
                .inCase(solved.state().name()).figures(is, wanted)
                .because("It opens while the battery is still good, the earlier the more current flows.");
        int[] node = solved.running().at().terminalNode();
        DropBreakdown parts = DropBreakdown.between(context.plan(), context.names(), solved.running(),
                CurrentPaths.of(context.plan(), solved.running()), contact, node[threshold.plus()], node[threshold.minus()]);
        DropReasons reasons = new DropReasons(context.plan(), context.names());
        reasons.causes(builder, parts);
        // the way of the current may end at another source, or another point of the return, than the battery sensed
        double restV = dropV - parts.dropV();
        new SectionMends(context.plan(), context.names()).forDrop(parts, restV, limit.value()).ifPresent(builder::mend);
        new ParallelMends(context).forDrop(parts, restV, limit.value()).ifPresent(builder::mend);
        return builder.mend(Mend.inWords("Mount the cut-out at the battery, or sense over a thin pair of its own from the "
                + "battery's posts."))
                .derived(reasons.drop(parts)).build();
    }

    private Finding narrow(CheckContext context, SolvedCase solved, int contact, int battery, Rise rise) {
        Quantity is = Quantity.of(rise.gapV(), "V");
        Quantity wanted = Quantity.of(rise.riseV(), "V");
        String id = context.names().element(contact);
        String batteryId = context.names().element(battery);
        return Finding.of(slug(), Severity.ERROR, id, "Cut-out " + context.names().shown(id) + ": " + is
                + " between its two voltages, but it senses " + wanted + " more once it has opened")
                .inCase(solved.state().name()).figures(is, wanted)
                .because("Having opened it sees the voltage come back and closes again: it chatters.")
                .causedBy(batteryId, "own resistance of the battery", Quantity.of(rise.amps() * rise.ownOhm(), "V"))
                .mend(Mend.inWords("Set its two voltages at least " + wanted + " apart, or sense at the battery."))
                .derived(new Derivation("rise on opening", wanted, "Vfeed + I x Rbattery", List.of(
                        new Derivation.Input("Vfeed", Quantity.of(StrictMath.max(0, rise.dropV()), "V"),
                        "between battery and sense point"),
                        new Derivation.Input("I", Quantity.of(rise.amps(), "A"), id),
                        new Derivation.Input("Rbattery", Quantity.of(1000 * rise.ownOhm(), "mohm"), batteryId)),
                        "Ohm's law; what else the battery feeds goes on")).build();
    }
}
