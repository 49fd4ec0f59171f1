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
 * The heating current of a protective device stays below its rating at its ambient (an error), and of a fuse below the share
 * at which it ages (a warning). A device's time constant is seconds, so the current with everything on counts, not the mean of
 * a duty; the ripple of loads with a form factor adds to it. Cranking lasts seconds and is left out.
 */
final class DeviceLoadingRule implements Rule {
    private static final String WARNING = "device-loading.warning";
    private static final String ERROR = "device-loading.error";

    @Override
    public String slug() {
        return "device-loading";
    }

    @Override
    public String says() {
        return "A protective device carries its current without ageing or opening at its ambient.";
    }

    @Override
    public List<String> limits() {
        return List.of(WARNING, ERROR);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Protector protector) {
                ProtectorLoad load = new ProtectorLoad(context, e, protector);
                for (SolvedCase solved : context.settled()) {
                    if (!"cranking".equals(solved.state().kind())) {
                        check(context, solved, load, findings);
                    }
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    private void check(CheckContext context, SolvedCase solved, ProtectorLoad load, List<Finding> findings) {
        double amps = load.heatingA(solved);
        double usableA = load.protector().ratingA() * load.ambientFactor(solved);
        Practice.Limit error = context.practice().limit(ERROR);
        Practice.Limit warning = context.practice().limit(WARNING);
        if (Beyond.above(amps, error.value() * usableA)) {
            findings.add(finding(context, solved, load, amps, error, Severity.ERROR));
        } else if ("fuse".equals(load.protector().kind()) && Beyond.above(amps, warning.value() * usableA)) {
            findings.add(finding(context, solved, load, amps, warning, Severity.WARNING));
        }
    }

    private Finding finding(CheckContext context, SolvedCase solved, ProtectorLoad load, double amps, Practice.Limit limit,
            Severity severity) {
        Plan.Protector protector = load.protector();
        double limitA = limit.value() * protector.ratingA() * load.ambientFactor(solved);
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(limitA, "A");
        String name = "The " + Quantity.of(protector.ratingA(), "A") + " " + protector.kind() + " "
                + context.names().shown(context.names().element(load.element()));
        FindingBuilder builder = Finding.of(slug(), severity, context.names().element(load.element()),
                severity == Severity.ERROR
                        ? name + " carries " + is + " and will open: at " + Quantity.of(load.ambientC(solved), "degC")
                                + " it bears "
                                + wanted
                        : name + " carries " + is + ": above " + wanted + " it ages at "
                                + Quantity.of(load.ambientC(solved), "degC"))
                .inCase(solved.state().name()).figures(is, wanted);
        builder.because(load.ambientFactor(solved) == 1 ? "The rating holds at its ambient."
                : "Its ambient of " + Quantity.of(load.ambientC(solved), "degC") + " changes its rating by the factor "
                        + Quantity.of(load.ambientFactor(solved), "1") + ".");
        load.causes(solved).forEach(cause -> builder.causedBy(cause.element(), cause.what(), cause.share()));
        double ratingA = amps / context.practice().value(WARNING) / load.ambientFactor(solved);
        ProtectorMends.atLeast(context, load.element(), ratingA).forEach(builder::mend);
        return builder.derived(load.derivation(solved)).derived(new Derivation("current it bears", wanted, "share x In x f(T)",
                List.of(new Derivation.Input("share", Quantity.of(limit.value(), "1"), limit.name() + ", " + limit.source()),
                        new Derivation.Input("In", Quantity.of(protector.ratingA(), "A"), String.valueOf(protector.part())),
                        new Derivation.Input("f(T)", Quantity.of(load.ambientFactor(solved), "1"),
                                protector.curve() == null ? "no ambient factors given" : protector.curve().source())),
                limit.source())).build();
    }
}
