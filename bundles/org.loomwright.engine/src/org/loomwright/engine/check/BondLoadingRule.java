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
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A strap between structure bodies carries its current within its continuous rating (an error; cranking lasts seconds and is
 * left out) and loses little voltage (a warning), more being permitted while cranking.
 */
final class BondLoadingRule implements Rule {
    private static final String RUNNING = "bond-loading.running";
    private static final String CRANKING = "bond-loading.cranking";

    @Override
    public String slug() {
        return "bond-loading";
    }

    @Override
    public String says() {
        return "A strap carries its current within its rating and loses little voltage.";
    }

    @Override
    public List<String> limits() {
        return List.of(RUNNING, CRANKING);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (SolvedCase solved : context.settled()) {
            boolean cranking = "cranking".equals(solved.state().kind());
            Practice.Limit limit = context.practice().limit(cranking ? CRANKING : RUNNING);
            for (int b = 0; b < context.plan().bonds().size(); b++) {
                Plan.Bond bond = context.plan().bonds().get(b);
                double amps = StrictMath.abs(solved.running().itemA(solved.running().at().bondItem()[b]));
                if (!cranking && Beyond.above(amps, bond.currentMaxA())) {
                    findings.add(overloaded(context, solved, bond, amps));
                }
                double volts = StrictMath.abs(solved.running().voltage(bond.a(), bond.b()));
                if (Beyond.above(volts, limit.value())) {
                    findings.add(lossy(context, solved, bond, amps, volts, limit));
                }
            }
        }
        return findings;
    }

    private Finding overloaded(CheckContext context, SolvedCase solved, Plan.Bond bond, double amps) {
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(bond.currentMaxA(), "A");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, bond.id(),
                "Strap " + context.names().shown(bond.id()) + " carries " + is + ", rated for " + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because("Return currents of the loads behind it and of the charging source add up in it.");
        new StrapMends(context.plan(), context.names()).forVolts(bond, amps, bond.currentMaxA()).ifPresent(builder::mend);
        return builder.derived(current(bond, amps)).build();
    }

    private Finding lossy(CheckContext context, SolvedCase solved, Plan.Bond bond, double amps, double volts,
            Practice.Limit limit) {
        Quantity is = Quantity.of(volts, "V");
        Quantity wanted = Quantity.of(limit.value(), "V");
        FindingBuilder builder = Finding.of(slug(), Severity.WARNING, bond.id(),
                "Strap " + context.names().shown(bond.id()) + " loses " + is + " at " + Quantity.of(amps, "A")
                        + ", permitted are " + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because("Every load that returns through it gets that much less.");
        new StrapMends(context.plan(), context.names()).forVolts(bond, volts, limit.value()).ifPresent(builder::mend);
        return builder.derived(new Derivation("voltage over the strap", is, "I x R",
                List.of(new Derivation.Input("I", Quantity.of(amps, "A"), "operating point of the case"),
                        new Derivation.Input("R", Quantity.of(1000 * bond.ohm(), "mohm"), bond.id()),
                        new Derivation.Input("limit", wanted, limit.name() + ", " + limit.source())),
                limit.source())).build();
    }

    private static Derivation current(Plan.Bond bond, double amps) {
        return new Derivation("current of the strap", Quantity.of(amps, "A"), "operating point", List.of(
                new Derivation.Input("rating", Quantity.of(bond.currentMaxA(), "A"), bond.part() == null ? bond.id()
                        : bond.part())),
                "Kirchhoff's current law");
    }
}
