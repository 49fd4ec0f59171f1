// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
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
 * A terminal carries no more than it is made for; a pin, whose neighbours warm it when they are loaded too, a share of that.
 * What passes from lug to lug on a stud does not pass through the terminal, so only what goes into the device counts; on
 * posts and splices all does.
 */
final class PinLoadRule implements Rule {
    private static final String FACTOR = "pin-load.factor";
    private static final String IGNORE = "pin-load.ignore";

    @Override
    public String slug() {
        return "pin-load";
    }

    @Override
    public String says() {
        return "Pins and other terminals carry no more than they are made for.";
    }

    @Override
    public List<String> limits() {
        return List.of(FACTOR, IGNORE);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        boolean[] passOn = passOn(context.plan());
        for (SolvedCase solved : context.settled()) {
            if (!"cranking".equals(solved.state().kind())) {
                double[] amps = currents(context.plan(), solved, passOn);
                for (int t = 0; t < amps.length; t++) {
                    check(context, solved, t, amps, findings);
                }
            }
        }
        return findings;
    }

    /** Terminals of devices without anything inside that could carry current on: posts and bars without more. */
    private static boolean[] passOn(Plan plan) {
        boolean[] inside = new boolean[plan.devices().size()];
        plan.elements().forEach(element -> inside[element.device()] = true);
        boolean[] passOn = new boolean[plan.terminals().size()];
        for (int t = 0; t < passOn.length; t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            passOn[t] = terminal.device() >= 0 && !inside[terminal.device()] && terminal.bar() == null;
        }
        return passOn;
    }

    private static double[] currents(Plan plan, SolvedCase solved, boolean[] passOn) {
        double[] in = new double[plan.terminals().size()];
        double[] out = new double[in.length];
        for (int c = 0; c < plan.conductors().size(); c++) {
            double amps = solved.running().conductorA(c);
            Plan.Conductor core = plan.conductors().get(c);
            in[amps > 0 ? core.b() : core.a()] += StrictMath.abs(amps);
            out[amps > 0 ? core.a() : core.b()] += StrictMath.abs(amps);
        }
        double[] through = new double[in.length];
        for (int t = 0; t < in.length; t++) {
            through[t] = passOn[t] ? StrictMath.max(in[t], out[t]) : StrictMath.abs(in[t] - out[t]);
        }
        return through;
    }

    private void check(CheckContext context, SolvedCase solved, int t, double[] amps, List<Finding> findings) {
        Plan.Terminal terminal = context.plan().terminals().get(t);
        boolean derated = "pin".equals(terminal.form()) && neighbourLoaded(context, t, amps);
        Practice.Limit factor = context.practice().limit(FACTOR);
        double limitA = terminal.currentMaxA() * (derated ? factor.value() : 1);
        if (!Beyond.above(amps[t], limitA)) {
            return;
        }
        Quantity is = Quantity.of(amps[t], "A");
        Quantity wanted = Quantity.of(limitA, "A");
        String what = ("pin".equals(terminal.form()) ? "Pin " : "Terminal ") + context.names().shown(terminal.id());
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, terminal.id(), what + " carries " + is + ", it may carry "
                + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because(derated ? "It is rated for " + Quantity.of(terminal.currentMaxA(), "A")
                        + " alone; other pins of the connector are loaded too and warm it."
                        : "The joint heats up and loosens.");
        int most = largest(context, solved, t);
        if (most >= 0) {
            builder.causedBy(context.names().conductor(most), "current of the conductor",
                    Quantity.of(StrictMath.abs(solved.running().conductorA(most)), "A"));
        }
        builder.mend(Mend.inWords(derated ? "Share the current over two pins, or use a connector with pins for at least "
                + Quantity.of(amps[t] / factor.value(), "A") + "." : "Use a part with a terminal for at least " + is + "."));
        findings.add(builder.derived(new Derivation("current the terminal may carry", wanted, derated ? "Imax x factor" : "Imax",
                List.of(new Derivation.Input("Imax", Quantity.of(terminal.currentMaxA(), "A"), terminal.id()),
                        new Derivation.Input("factor", Quantity.of(derated ? factor.value() : 1, "1"),
                                derated ? factor.name() + ", " + factor.source() : "no pin beside it is loaded")),
                derated ? factor.source() : "maker's figure")).build());
    }

    private static boolean neighbourLoaded(CheckContext context, int terminal, double[] amps) {
        int device = context.plan().terminals().get(terminal).device();
        double share = context.practice().value(IGNORE);
        for (int t = 0; t < amps.length; t++) {
            Plan.Terminal other = context.plan().terminals().get(t);
            if (t != terminal && other.device() == device && "pin".equals(other.form()) && !opposite(context.plan(), terminal, t)
                    && Beyond.above(amps[t], share * other.currentMaxA())) {
                return true;
            }
        }
        return false;
    }

    /** The other half of the same pin in a connector drawn as a pair. */
    private static boolean opposite(Plan plan, int a, int b) {
        return plan.elements().stream().anyMatch(element -> element instanceof Plan.Joint joint
                && (joint.a() == a && joint.b() == b || joint.a() == b && joint.b() == a));
    }

    private static int largest(CheckContext context, SolvedCase solved, int terminal) {
        int most = -1;
        double amps = 0;
        for (int c = 0; c < context.plan().conductors().size(); c++) {
            Plan.Conductor core = context.plan().conductors().get(c);
            double here = StrictMath.abs(solved.running().conductorA(c));
            if ((core.a() == terminal || core.b() == terminal) && here > amps) {
                amps = here;
                most = c;
            }
        }
        return most;
    }
}
