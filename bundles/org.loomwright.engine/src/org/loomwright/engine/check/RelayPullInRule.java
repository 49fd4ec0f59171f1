// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A coil that closed paths connect to a source gets enough voltage to pull in when it is hot; while cranking, enough to hold.
 * A coil works by its current, so the voltages it needs grow with its resistance: times 1 + alpha (T - 20), copper after IEC
 * 60028, T being the ambient and the practice's rise.
 */
final class RelayPullInRule implements Rule {
    private static final String RISE = "relay-pull-in.coil-rise";

    @Override
    public String slug() {
        return "relay-pull-in";
    }

    @Override
    public String says() {
        return "A coil gets enough voltage to pull in when hot, and to hold while cranking.";
    }

    @Override
    public List<String> limits() {
        return List.of(RISE);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Practice.Limit rise = context.practice().limit(RISE);
        for (SolvedCase solved : context.settled()) {
            LivePaths live = null;
            for (int e = 0; e < context.plan().elements().size(); e++) {
                if (context.plan().elements().get(e) instanceof Plan.Coil coil && solved.running().at().elementItem()[e] >= 0) {
                    live = live == null ? LivePaths.of(context.plan(), solved.running()) : live;
                    check(context, solved, live, e, coil, rise, findings);
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    private void check(CheckContext context, SolvedCase solved, LivePaths live, int element, Plan.Coil coil,
            Practice.Limit rise, List<Finding> findings) {
        int a = solved.running().at().terminalNode()[coil.a()];
        int b = solved.running().at().terminalNode()[coil.b()];
        if (!live.supplied(a, b) && !live.supplied(b, a)) {
            return;
        }
        boolean holds = "cranking".equals(solved.state().kind());
        double coldV = holds ? coil.dropOutV() : coil.pickUpV();
        double ambientC = Ambients.ofDevice(context.plan(), solved.state(), coil.device());
        double neededV = coldV * Copper.factor(coilC(solved, ambientC, rise));
        double coilV = StrictMath.abs(solved.running().voltage(coil.a(), coil.b()));
        if (Beyond.below(coilV, neededV)) {
            findings.add(finding(context, solved, element, coil, new Figures(coilV, neededV, coldV, ambientC, holds), rise));
        }
    }

    /** Temperature of the coil: 20 degrees Celsius in a case that looks at everything cold. */
    private static double coilC(SolvedCase solved, double ambientC, Practice.Limit rise) {
        return solved.state().resistancesColdMin() ? 20 : ambientC + rise.value();
    }

    private record Figures(double coilV, double neededV, double coldV, double ambientC, boolean holds) {
    }

    private Finding finding(CheckContext context, SolvedCase solved, int element, Plan.Coil coil, Figures f,
            Practice.Limit rise) {
        double coilC = coilC(solved, f.ambientC(), rise);
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(element),
                "Coil of " + context.names().shown(context.names().element(element)) + " gets "
                        + Quantity.of(f.coilV(), "V") + ", needs " + Quantity.of(f.neededV(), "V")
                        + (f.holds() ? " to hold while cranking" : " to pull in at " + Quantity.of(coilC, "degC")))
                .inCase(solved.state().name()).figures(Quantity.of(f.coilV(), "V"), Quantity.of(f.neededV(), "V"));
        int a = solved.running().at().terminalNode()[coil.a()];
        int b = solved.running().at().terminalNode()[coil.b()];
        boolean forward = solved.running().voltage(coil.a(), coil.b()) >= 0;
        DropBreakdown parts = DropBreakdown.between(context.plan(), context.names(), solved.running(),
                CurrentPaths.of(context.plan(), solved.running()), element, forward ? a : b, forward ? b : a);
        DropReasons reasons = new DropReasons(context.plan(), context.names());
        reasons.tell(builder, parts, f.neededV());
        if (parts.sourceV() >= f.neededV()) {
            new SectionMends(context.plan(), context.names()).forDrop(parts, parts.sourceV() - f.neededV())
                    .ifPresent(builder::mend);
        }
        return builder.derived(new Derivation(f.holds() ? "voltage to hold, hot" : "voltage to pull in, hot",
                Quantity.of(f.neededV(), "V"), "U20 x (1 + alpha x (Tambient + rise - 20))", List.of(
                        new Derivation.Input("U20", Quantity.of(f.coldV(), "V"), coil.id()),
                        new Derivation.Input("alpha", Quantity.of(Copper.ALPHA_PER_K, "1/K"), "IEC 60028"),
                        new Derivation.Input("Tambient", Quantity.of(f.ambientC(), "degC"), "zone of the device in the case"),
                        new Derivation.Input("rise", Quantity.of(rise.value(), "K"), rise.name() + ", " + rise.source())),
                "resistance of copper, IEC 60028")).build();
    }
}
