// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * No load sees more than the largest voltage its maker states, switched on or only connected. Of a case with loads that come
 * and go, both the voltage with them and without them counts.
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
            for (int e = 0; e < context.plan().elements().size(); e++) {
                if (context.plan().elements().get(e) instanceof Plan.Demand load && !Double.isNaN(load.maxV())) {
                    double loadV = highestV(solved, load);
                    if (Beyond.above(loadV, load.maxV())) {
                        findings.add(finding(context, solved, e, load, loadV));
                    }
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    private static double highestV(SolvedCase solved, Plan.Demand load) {
        double running = solved.running().voltage(load.a(), load.b());
        double base = solved.base().voltage(load.a(), load.b());
        return base > running || Double.isNaN(running) ? base : running;
    }

    private Finding finding(CheckContext context, SolvedCase solved, int demand, Plan.Demand load, double loadV) {
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(demand),
                context.names().shownElement(demand) + " sees " + Quantity.of(loadV, "V") + ", its maker permits "
                        + Quantity.of(load.maxV(), "V"))
                .inCase(solved.state().name()).figures(Quantity.of(loadV, "V"), Quantity.of(load.maxV(), "V"));
        double excess = loadV - load.maxV();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            double setV = setV(context.plan().elements().get(e));
            int item = solved.running().at().elementItem()[e];
            if (!Double.isNaN(setV) && item >= 0 && solved.running().point().on()[item] && sameNet(context, e, load)) {
                String id = context.names().element(e);
                builder.because(context.names().shown(id) + " holds " + Quantity.of(setV, "V") + " in this net.")
                        .causedBy(id, "voltage it is set to", Quantity.of(setV, "V"));
                builder.mend(Mend.inWords("Set " + context.names().shown(id) + " lower by " + Quantity.of(excess, "V")
                        + ", or fit a load that permits " + Quantity.of(loadV, "V") + "."));
            }
        }
        return builder.derived(new Derivation("voltage at the load", Quantity.of(loadV, "V"), "V(plus) - V(minus)",
                List.of(new Derivation.Input("V(plus)", Quantity.of(solved.running().terminalV(load.a()), "V"),
                        context.plan().terminals().get(load.a()).id()),
                        new Derivation.Input("V(minus)", Quantity.of(solved.running().terminalV(load.b()), "V"),
                                context.plan().terminals().get(load.b()).id())),
                "operating point of the case")).build();
    }

    private static double setV(Plan.Element element) {
        return element instanceof Plan.Regulated regulated ? regulated.setV()
                : element instanceof Plan.Converter converter ? converter.setV() : Double.NaN;
    }

    private static boolean sameNet(CheckContext context, int source, Plan.Demand load) {
        int plus = PlanGraph.sourceTerminal(context.plan().elements().get(source));
        return context.nets().netOf()[plus] == context.nets().netOf()[load.a()];
    }
}
