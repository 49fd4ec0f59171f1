// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.nets.Nets;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Nothing joins plus with minus or two voltages, terminals with a polarity are on their side, and loads and converters are in
 * a domain of their voltage. Terminals of switches, connectors and fuse holders may lie on either side; so may posts, splices
 * and pins (role signal).
 */
final class WrongNetRule implements Rule {
    @Override
    public String slug() {
        return "wrong-net";
    }

    @Override
    public String says() {
        return "Plus is connected to plus, minus to minus, and everything to its own voltage.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (int net = 0; net < context.nets().nets().size(); net++) {
            if (context.nets().nets().get(net).kind() == Nets.Kind.MIXED) {
                findings.add(mixed(context, net));
            }
        }
        roles(context, findings);
        DomainVolts volts = new DomainVolts(context);
        for (int e = 0; e < context.plan().elements().size(); e++) {
            voltage(context, e, volts, findings);
        }
        return findings;
    }

    private Finding mixed(CheckContext context, int net) {
        MixedNet mixed = MixedNet.of(context, net);
        int culprit = mixed.culprit();
        String element = culprit >= 0 ? context.names().conductor(culprit) : mixed.anyElement();
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, element,
                (culprit >= 0 ? context.names().shownConductor(culprit) : context.names().shown(element))
                        + (mixed.twoVoltages() ? " joins two voltages" : " joins plus with minus"));
        builder.because(mixed.twoVoltages() ? "Sources of different voltage meet there without a converter between."
                : "The plus and the minus of a source meet there: a short circuit as soon as every contact on the way is "
                + "closed.");
        if (culprit < 0) {
            builder.because("No single conductor is to blame; look at the sources named.");
        }
        mixed.others().forEach(other -> builder.causedBy(other, "lies on the same way", null));
        mixed.sources().forEach(source -> builder.causedBy(source, "source at the net", null));
        return builder.mend(Mend.inWords("Connect it to the side, or the voltage, that it is meant for.")).build();
    }

    private void roles(CheckContext context, List<Finding> findings) {
        Plan plan = context.plan();
        Set<Integer> eitherSide = eitherSide(context);
        boolean[] wired = new boolean[plan.terminals().size()];
        plan.conductors().forEach(core -> {
            wired[core.a()] = true;
            wired[core.b()] = true;
        });
        for (int t = 0; t < wired.length; t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            Nets.Kind kind = context.nets().nets().get(context.nets().netOf()[t]).kind();
            boolean plusOnMinus = "plus".equals(terminal.role()) && kind == Nets.Kind.MINUS;
            boolean minusOnPlus = "minus".equals(terminal.role()) && kind == Nets.Kind.PLUS;
            if (wired[t] && (plusOnMinus || minusOnPlus) && !eitherSide.contains(t)) {
                String at = context.names().shown(terminal.id());
                FindingBuilder builder = Finding.of(slug(), Severity.ERROR, terminal.id(),
                        "Terminal " + at + " is for " + terminal.role() + ", it is connected to "
                                + (plusOnMinus ? "minus" : "plus"))
                        .because("Its part wants " + terminal.role() + " there; polarised parts are damaged when reversed.");
                for (int c = 0; c < plan.conductors().size(); c++) {
                    if (plan.conductors().get(c).a() == t || plan.conductors().get(c).b() == t) {
                        builder.causedBy(context.names().conductor(c), "connects it", null);
                    }
                }
                findings.add(builder.mend(Mend.inWords("Exchange the two conductors of the device.")).build());
            }
        }
    }

    /**
     * Terminals where only something hangs that works either way round, and those of motors that are reversed by change-over
     * contacts.
     */
    private static Set<Integer> eitherSide(CheckContext context) {
        Plan plan = context.plan();
        Set<Integer> passing = new HashSet<>();
        Set<Integer> polarised = new HashSet<>();
        for (Plan.Element element : plan.elements()) {
            int[] ends = Wiring.ends(element);
            if (ends != null && !(element instanceof Plan.Diode)) {
                passing.add(ends[0]);
                passing.add(ends[1]);
            } else {
                polarised.addAll(Polarised.terminals(element));
            }
        }
        passing.removeAll(polarised);
        passing.addAll(Polarised.reversed(context));
        return passing;
    }

    private void voltage(CheckContext context, int e, DomainVolts volts, List<Finding> findings) {
        Plan.Element element = context.plan().elements().get(e);
        if (element instanceof Plan.Demand load) {
            double nominalV = volts.nominalAt(load.a());
            boolean apart = context.nets().netOf()[load.a()] != context.nets().netOf()[load.b()];
            boolean plain = apart && kind(context, load.a()) == Nets.Kind.PLUS && kind(context, load.b()) == Nets.Kind.MINUS;
            if (plain && Beyond.below(load.maxV(), nominalV)) {
                findings.add(voltage(context, e, "bears at most ", load.maxV(), nominalV, "It is destroyed when switched on."));
            } else if (plain && Beyond.above(load.minV(), volts.highestAt(load.a()))) {
                findings.add(voltage(context, e, "needs at least ", load.minV(), nominalV, "It never works there."));
            } else if (plain && Double.isNaN(load.maxV()) && Double.isNaN(load.minV()) && anotherLevel(load.refV(), nominalV)) {
                findings.add(voltage(context, e, "is stated at ", load.refV(), nominalV,
                        "Its part states no voltage range; the voltage of its figures is that of another level."));
            }
        } else if (element instanceof Plan.Converter converter
                && Beyond.above(converter.offV(), volts.highestAt(converter.inA()))) {
            findings.add(voltage(context, e, "switches off below ", converter.offV(), volts.nominalAt(converter.inA()),
                    "It never works there."));
        }
    }

    private static Nets.Kind kind(CheckContext context, int terminal) {
        return context.nets().nets().get(context.nets().netOf()[terminal]).kind();
    }

    /** More than half the way to the double or the half, which then is another level. */
    private static boolean anotherLevel(double volts, double nominalV) {
        double ratio = volts / nominalV;
        return ratio > StrictMath.sqrt(2) || ratio < StrictMath.sqrt(0.5);
    }

    private Finding voltage(CheckContext context, int e, String bound, double volts, double nominalV, String why) {
        Quantity is = Quantity.of(nominalV, "V");
        Quantity wanted = Quantity.of(volts, "V");
        return Finding.of(slug(), Severity.ERROR, context.names().element(e), context.names().shownElement(e) + " " + bound
                + wanted
                + " and is connected to a domain of " + is).figures(is, wanted).because(why)
                .mend(Mend.inWords("Feed it from a domain of its voltage, over a converter, or take a part made for " + is + "."))
                .build();
    }
}
