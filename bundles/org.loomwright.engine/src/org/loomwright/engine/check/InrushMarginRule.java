// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * No inrush opens a device: an inrush of so many amperes for so long stays below a share of the current that the fastest curve
 * melts within that time; the charge of input capacitors, C V2 / 2R through the least resistance of the loop, below a share of
 * the smallest melting I2t. What else flows through the device is added to the former. Hottest ambient of the case.
 */
final class InrushMarginRule implements Rule {
    private static final String CURRENT = "inrush-margin.current";
    private static final String I2T = "inrush-margin.i2t";

    @Override
    public String slug() {
        return "inrush-margin";
    }

    @Override
    public String says() {
        return "No inrush opens a protective device or ages it.";
    }

    @Override
    public List<String> limits() {
        return List.of(CURRENT, I2T);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Inherited inherited = new Inherited(context);
        for (int e = 0; e < context.plan().elements().size(); e++) {
            CurvePair curve = context.plan().elements().get(e) instanceof Plan.Protector protector
                    ? CurvePair.of(protector).orElse(null) : null;
            if (curve == null || inherited.device(e)) {
                continue;
            }
            for (int consumer : context.circuits().consumersBelow(e)) {
                if (context.plan().elements().get(consumer) instanceof Plan.Demand load) {
                    current(context, e, curve, consumer, load, findings);
                    charge(context, e, curve, consumer, load, findings);
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    private void current(CheckContext context, int e, CurvePair curve, int consumer, Plan.Demand load, List<Finding> findings) {
        if (!(load.inrushA() > 0) || !(load.inrushS() > 0)) {
            return;
        }
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(e);
        Practice.Limit share = context.practice().limit(CURRENT);
        for (SolvedCase solved : context.settled()) {
            double ownA = solved.running().elementA(consumer);
            if (!(ownA > 0) || "cranking".equals(solved.state().kind())) {
                continue;
            }
            double ambientC = Ambients.ofDevice(context.plan(), solved.state(), protector.device());
            double othersA = StrictMath.max(0, StrictMath.abs(solved.running().elementA(e)) - ownA);
            double totalA = othersA + load.inrushA();
            double meltsA = curve.at(ambientC).meltingA(load.inrushS());
            if (!Beyond.above(totalA, share.value() * meltsA)) {
                continue;
            }
            Quantity is = Quantity.of(totalA, "A");
            Quantity wanted = Quantity.of(share.value() * meltsA, "A");
            String seconds = Quantity.of(load.inrushS(), "s").toString();
            FindingBuilder builder = begin(context, e, protector, consumer, is, wanted, is + " for " + seconds)
                    .inCase(solved.state().name())
                    .because("At " + Quantity.of(ambientC, "degC") + " its fastest curve melts " + Quantity.of(meltsA, "A")
                            + " within " + seconds + "; " + Quantity.of(100 * share.value(), "%") + " of it keep clear of that.")
                    .because(othersA > 0 ? Quantity.of(othersA, "A") + " flow through it besides." : "Nothing else flows.");
            ProtectorMends.atLeast(context, e, protector.ratingA() * totalA / (share.value() * meltsA)).forEach(builder::mend);
            findings.add(builder.derived(new Derivation("current permitted for the inrush's time", wanted, "share x Imelt(t)",
                    List.of(new Input("share", Quantity.of(share.value(), "1"), share.name() + ", " + share.source()),
                            new Input("Imelt", Quantity.of(meltsA, "A"), curve.source()),
                            new Input("t", Quantity.of(load.inrushS(), "s"), context.names().element(consumer)),
                            new Input("inrush", Quantity.of(load.inrushA(), "A"), context.names().element(consumer)),
                            new Input("others", Quantity.of(othersA, "A"), "operating point of the case")),
                    share.source())).build());
        }
    }

    private void charge(CheckContext context, int e, CurvePair curve, int consumer, Plan.Demand load, List<Finding> findings) {
        LoopAtLoad loop = load.inrushFarad() > 0 ? LoopAtLoad.of(context.protection(), load.a()) : null;
        if (loop == null) {
            return;
        }
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(e);
        Practice.Limit share = context.practice().limit(I2T);
        double ambientC = Ambients.hottestOfDevice(context.plan(), protector.device());
        double[] gates = curve.at(ambientC).fastestGatesA();
        double meltsA2s = curve.at(ambientC).fastestA2s(gates[gates.length - 1]);
        double chargeA2s = load.inrushFarad() * loop.openV() * loop.openV() / (2 * loop.ohm());
        if (!Beyond.above(chargeA2s, share.value() * meltsA2s)) {
            return;
        }
        Quantity is = Quantity.of(chargeA2s, "A2s");
        Quantity wanted = Quantity.of(share.value() * meltsA2s, "A2s");
        FindingBuilder builder = begin(context, e, protector, consumer, is, wanted, "a charge of " + is)
                .because("Its capacitors charge through " + Quantity.of(1000 * loop.ohm(), "mohm") + " at least.");
        ProtectorMends.atLeast(context, e, protector.ratingA() * StrictMath.sqrt(chargeA2s / (share.value() * meltsA2s)))
                .forEach(builder::mend);
        findings.add(builder.derived(new Derivation("I2t of the charge", is, "C x V^2 / (2 x R)",
                List.of(new Input("C", Quantity.of(load.inrushFarad(), "F"), context.names().element(consumer)),
                        new Input("V", Quantity.of(loop.openV(), "V"), "all sources, nothing else on"),
                        new Input("R", Quantity.of(loop.ohm(), "ohm"), "loop with the largest fault current at the load"),
                        new Input("melting I2t", Quantity.of(meltsA2s, "A2s"), curve.source()),
                        new Input("share", Quantity.of(share.value(), "1"), share.name() + ", " + share.source())),
                "energy of a capacitor charged through a resistance")).build());
    }

    private FindingBuilder begin(CheckContext context, int e, Plan.Protector protector, int consumer, Quantity is,
            Quantity wanted, String what) {
        String id = context.names().element(e);
        return Finding.of(slug(), Severity.WARNING, id, "The " + Quantity.of(protector.ratingA(), "A") + " " + protector.kind()
                + " " + context.names().shown(id) + " may open when " + context.names().shownElement(consumer)
                + " switches on: " + what + ", permitted are " + wanted)
                .figures(is, wanted).causedBy(context.names().element(consumer), "its inrush", null);
    }
}
