// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A way carries no more than it is made for, the bar of a box no more than its rating, and the box gets rid of the heat made
 * inside: the sum of I^2 R of its protectors, contacts, joints, shunts and coils (Joule's law). Limits are the part's.
 */
final class WayLimitRule implements Rule {
    @Override
    public String slug() {
        return "way-limit";
    }

    @Override
    public String says() {
        return "Ways, bars and boxes carry no more than they are made for, and their heat goes away.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        List<List<Integer>> elements = ofDevices(context.plan());
        for (SolvedCase solved : context.settled()) {
            for (int d = 0; d < context.plan().devices().size(); d++) {
                if (!"cranking".equals(solved.state().kind())) {
                    device(context, solved, d, elements.get(d), findings);
                }
            }
        }
        return findings;
    }

    private static List<List<Integer>> ofDevices(Plan plan) {
        List<List<Integer>> elements = new ArrayList<>();
        plan.devices().forEach(device -> elements.add(new ArrayList<>()));
        for (int e = 0; e < plan.elements().size(); e++) {
            elements.get(plan.elements().get(e).device()).add(e);
        }
        return elements;
    }

    private void device(CheckContext context, SolvedCase solved, int d, List<Integer> elements, List<Finding> findings) {
        Plan.Device device = context.plan().devices().get(d);
        double barA = 0;
        double heatW = 0;
        List<Derivation.Input> heat = new ArrayList<>();
        int hottest = -1;
        double mostW = 0;
        for (int e : elements) {
            double amps = StrictMath.abs(solved.running().elementA(e));
            Plan.Element element = context.plan().elements().get(e);
            if (element instanceof Plan.Protector protector) {
                barA += amps;
                way(context, solved, e, protector, amps, findings);
            }
            double watts = amps * amps * ohm(element);
            heatW += watts;
            if (watts > 0) {
                heat.add(new Derivation.Input(context.names().shown(element.id()), Quantity.of(watts, "W"),
                        Quantity.of(amps, "A") + " through " + Quantity.of(1000 * ohm(element), "mohm")));
            }
            if (watts > mostW) {
                mostW = watts;
                hottest = e;
            }
        }
        if (Beyond.above(barA, device.barMaxA())) {
            findings.add(limit(context, solved, device, "The bar of " + context.names().shown(device.id()) + " carries ",
                    Quantity.of(barA, "A"), Quantity.of(device.barMaxA(), "A"))
                    .because("That is the sum of its ways' currents in this case.")
                    .derived(new Derivation("current of the bar", Quantity.of(barA, "A"), "sum of the currents of the ways",
                            List.of(), "Kirchhoff's current law")).build());
        }
        if (Beyond.above(heatW, device.dissipationMaxW())) {
            FindingBuilder builder = limit(context, solved, device, context.names().shown(device.id()) + " makes a heat of ",
                    Quantity.of(heatW, "W"), Quantity.of(device.dissipationMaxW(), "W"))
                    .because("It is made in fuses, contacts and joints inside the box.");
            if (hottest >= 0) {
                builder.causedBy(context.names().element(hottest), "makes most of the heat", Quantity.of(mostW, "W"));
            }
            findings.add(builder.derived(new Derivation("heat of the box", Quantity.of(heatW, "W"), "sum of I x I x R", heat,
                    "Joule's law")).build());
        }
    }

    private void way(CheckContext context, SolvedCase solved, int e, Plan.Protector protector, double amps,
            List<Finding> findings) {
        if (Beyond.above(amps, protector.wayMaxA())) {
            String name = context.names().element(e);
            FindingBuilder builder = Finding.of(slug(), Severity.ERROR, name,
                    "Way " + context.names().shown(name) + " carries " + Quantity.of(amps, "A") + ", made for "
                            + Quantity.of(protector.wayMaxA(), "A"))
                    .inCase(solved.state().name())
                    .figures(Quantity.of(amps, "A"), Quantity.of(protector.wayMaxA(), "A"))
                    .because("The seat and its clamps heat up, whatever fuse is in it.");
            new ProtectorLoad(context, e, protector).causes(solved)
                    .forEach(cause -> builder.causedBy(cause.element(), cause.what(), cause.share()));
            findings.add(builder.mend(org.loomwright.engine.result.Mend.inWords(
                    "Part the loads over two ways, or take a box whose ways carry " + Quantity.of(amps, "A") + ".")).build());
        }
    }

    private FindingBuilder limit(CheckContext context, SolvedCase solved, Plan.Device device, String lead, Quantity is,
            Quantity wanted) {
        return Finding.of(slug(), Severity.ERROR, device.id(), lead + is + ", made for " + wanted)
                .inCase(solved.state().name()).figures(is, wanted);
    }

    private static double ohm(Plan.Element element) {
        if (element instanceof Plan.Protector protector) {
            return protector.ohm() + protector.seatOhm();
        }
        return element instanceof Plan.Contact contact ? contact.ohm()
                : element instanceof Plan.Joint joint ? joint.ohm()
                : element instanceof Plan.Shunt shunt ? shunt.ohm()
                : element instanceof Plan.Coil coil ? coil.ohm() : 0;
    }
}
