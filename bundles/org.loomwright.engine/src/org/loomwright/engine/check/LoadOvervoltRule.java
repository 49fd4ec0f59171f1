// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * No load sees more than the largest voltage its maker states, switched on or only connected. Of each case it is the largest
 * of: the voltage with all loads that are on; the voltage while those that come and go are off; and the voltage that a
 * regulated source or converter joined to it holds, which the net reaches once the batteries are full and take no more current.
 * A source whose voltage follows the temperature counts with what it holds at the lowest (or highest) ambient of its zone.
 */
final class LoadOvervoltRule implements Rule {

    @Override
    public String slug() {
        return "load-overvolt";
    }

    @Override
    public String says() {
        return "No load sees more than the largest voltage its maker states.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (SolvedCase solved : context.settled()) {
            LivePaths live = null;
            for (int e = 0; e < context.plan().elements().size(); e++) {
                if (context.plan().elements().get(e) instanceof Plan.Demand load && !Double.isNaN(load.maxV())) {
                    live = live == null ? LivePaths.of(context.plan(), solved.running()) : live;
                    Highest highest = highest(context, solved, live, load);
                    if (Beyond.above(highest.volts(), load.maxV())) {
                        findings.add(finding(context, solved, e, load, highest));
                    }
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    /**
     * The highest voltage in a case.
     *
     * @param source   element that holds it, -1 when it is the voltage of the operating point
     * @param ambientC ambient at which it does, degrees Celsius, NaN when that of the case
     */
    private record Highest(double volts, int source, double ambientC) {
    }

    private static Highest highest(CheckContext context, SolvedCase solved, LivePaths live, Plan.Demand load) {
        double running = solved.running().voltage(load.a(), load.b());
        double base = solved.base().voltage(load.a(), load.b());
        Highest highest = new Highest(base > running || Double.isNaN(running) ? base : running, -1, Double.NaN);
        int plus = solved.running().at().terminalNode()[load.a()];
        int minus = solved.running().at().terminalNode()[load.b()];
        if (plus < 0 || minus < 0 || !live.supplied(plus, minus)) {
            return highest;
        }
        for (int e = 0; e < context.plan().elements().size(); e++) {
            int item = solved.running().at().elementItem()[e];
            Network.Item it = item < 0 || PlanGraph.sourceTerminal(context.plan().elements().get(e)) < 0 ? null
                    : solved.running().at().network().items().get(item);
            Highest held = null;
            if (it instanceof Network.Regulator r && r.limitA() > 0 && live.joined(plus, r.a()) && live.joined(minus, r.b())) {
                held = held(context.plan(), e, r.setV());
            } else if (it instanceof Network.ConverterItem c && solved.running().point().on()[item]
                    && live.joined(plus, c.outA()) && live.joined(minus, c.outB())) {
                held = new Highest(c.setV(), e, Double.NaN);
            }
            if (held != null && held.volts() > highest.volts()) {
                highest = held;
            }
        }
        return highest;
    }

    /** What a regulated source holds, in the case or at an end of its zone's ambients, whichever is more. */
    private static Highest held(Plan plan, int element, double inCaseV) {
        Plan.Regulated source = (Plan.Regulated) plan.elements().get(element);
        int zone = plan.devices().get(source.device()).zone();
        Highest most = new Highest(inCaseV, element, Double.NaN);
        if (zone >= 0 && !Double.isNaN(source.temperatureVPerK()) && !Double.isNaN(source.referenceC())) {
            for (double ambientC : new double[] {plan.zones().get(zone).ambientMinC(), plan.zones().get(zone).ambientMaxC()}) {
                double volts = source.setV() + source.temperatureVPerK() * (ambientC - source.referenceC());
                most = volts > most.volts() ? new Highest(volts, element, ambientC) : most;
            }
        }
        return most;
    }

    private Finding finding(CheckContext context, SolvedCase solved, int demand, Plan.Demand load, Highest highest) {
        Quantity is = Quantity.of(highest.volts(), "V");
        Quantity wanted = Quantity.of(load.maxV(), "V");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(demand),
                context.names().shownElement(demand) + " sees up to " + is + ", its maker permits " + wanted)
                .inCase(solved.state().name()).figures(is, wanted);
        if (highest.source() >= 0) {
            String id = context.names().element(highest.source());
            String source = context.names().shown(id);
            boolean inCase = Double.isNaN(highest.ambientC());
            String when = inCase ? "in this case" : "at " + Quantity.of(highest.ambientC(), "degC")
                    + ", which its zone may have";
            builder.because(source + " holds " + is + " " + when + "; the load gets it once the batteries are full.")
                    .causedBy(id, "voltage it is set to", is)
                    .mend(Mend.inWords("Set " + source + " to at most " + wanted + ", or fit a load that permits " + is + "."))
                    .derived(new Derivation("highest voltage at the load", is,
                            inCase ? "set voltage of the source in the case" : "set voltage + V/K x (ambient - reference)",
                            List.of(new Derivation.Input("set voltage", is,
                                    context.plan().elements().get(highest.source()).id())),
                            "full batteries take no current, so nothing is lost on the way"));
        } else {
            builder.because("That is the operating point of the case; no source holds more.")
                    .mend(Mend.inWords("Fit a load that permits " + is + ", or a converter before it."))
                    .derived(new Derivation("highest voltage at the load", is, "V(plus) - V(minus)",
                            List.of(new Derivation.Input("with all loads on",
                                    Quantity.of(solved.running().voltage(load.a(), load.b()), "V"), "operating point"),
                                    new Derivation.Input("while loads that come and go are off",
                                            Quantity.of(solved.base().voltage(load.a(), load.b()), "V"), "operating point")),
                            "operating point of the case"));
        }
        return builder.build();
    }
}
